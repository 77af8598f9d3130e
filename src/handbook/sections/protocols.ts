import { html, type Html } from '../html.ts';
import { mapOf } from './maps.ts';
import { faultsOf, forWhom, limitsOf, measuresOf, partitionsOf } from './numbers.ts';
import { rulesOf } from './rules.ts';
import type { Part, Section } from './section.ts';
import { sourcesOf } from './sources.ts';

/** Everything of each protocol. The faults of technique of a ward are those of all of its protocols, and stand once. */
export const protocols: Section = (contents) =>
  html`${contents.parts.map((part, index) => protocolOf(part, index === 0, contents.ward !== null))}`;

function protocolOf(part: Part, hasFaults: boolean, isOfWard: boolean): Html {
  const { title, about, name, edition, basedOn } = part.compiled.protocol;
  const parents = basedOn.map((parent) => `${parent.title} (${parent.name}, edition ${parent.edition})`);
  return html`<section class="protocol">
    <h2>${title}</h2>
    <p>
      <code>${name}</code>, edition
      ${edition}.${parents.length > 0 ? ` Based on ${parents.join(', ')}.` : null} ${isOfWard ? about : null}
    </p>
    ${forWhom(part)} ${rulesOf(part)} ${limitsOf(part)} ${measuresOf(part)}
    ${hasFaults ? faultsOf(part) : null} ${partitionsOf(part)} ${mapOf(part)} ${sourcesOf(part)}
  </section>`;
}
