import type { Fault } from '../../protocol/protocol.ts';
import { html, type Html } from '../html.ts';
import { mapOf } from './maps.ts';
import { faultsOf, forWhom, limitsOf, measuresOf, partitionsOf } from './numbers.ts';
import { rulesOf } from './rules.ts';
import type { Contents, Part, Section } from './section.ts';
import { sourcesOf } from './sources.ts';

/** Everything of each protocol. */
export const protocols: Section = (contents) =>
  html`${contents.parts.map((part) => protocolOf(part, contents))}`;

function protocolOf(part: Part, { parts, ward }: Contents): Html {
  const { title, about, name, edition, basedOn } = part.compiled.protocol;
  const parents = basedOn.map((parent) => `${parent.title} (${parent.name}, edition ${parent.edition})`);
  return html`<section class="protocol">
    <h2>${title}</h2>
    <p>
      <code>${name}</code>, edition
      ${edition}.${parents.length > 0 ? ` Based on ${parents.join(', ')}.` : null} ${ward ? about : null}
    </p>
    ${forWhom(part)} ${rulesOf(part)} ${limitsOf(part)} ${measuresOf(part)}
    ${faultsOf(faultsIn(part, parts), part)} ${partitionsOf(part)} ${mapOf(part)} ${sourcesOf(part)}
  </section>`;
}

/** The faults of technique of a ward are those of all of its protocols; each stands once, where its sources are. */
function faultsIn(part: Part, parts: readonly Part[]): Fault[] {
  const cites = ({ compiled }: Part, { sources }: Fault): boolean =>
    sources.every((name) => compiled.protocol.sources.has(name));
  return part.compiled.protocol.faults.filter(
    (fault) => (parts.find((each) => cites(each, fault)) ?? parts[0]) === part,
  );
}
