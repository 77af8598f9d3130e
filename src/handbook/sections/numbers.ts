import type { Fault } from '../../protocol/protocol.ts';
import { html, type Html } from '../html.ts';
import { list, logic } from './logic.ts';
import { actionOf } from './rules.ts';
import { numbersOf } from './sources.ts';
import type { Part } from './section.ts';

/** For whom a protocol is, and what to use for everybody else. */
export const forWhom = ({ compiled, spoken }: Part): Html =>
  html`<h3>For whom</h3>
    ${logic([spoken.applies])}
    ${compiled.protocol.otherwise === null ? null : html`<p><b>For others:</b> ${compiled.protocol.otherwise}</p>`}`;

/** Named numbers, and who may change them for one patient. */
export const limitsOf = ({ spoken }: Part): Html | null =>
  spoken.limits.size === 0
    ? null
    : html`<h3>Limits, and who may change them</h3>
        ${logic([...spoken.limits.values()])}`;

/** How each number that rules read is worked out. */
export function measuresOf({ compiled, spoken }: Part): Html | null {
  const { measures } = compiled.protocol;
  if (measures.size === 0) return null;
  return html`<h3>Numbers that are worked out</h3>
    ${[...measures.values()].map(
      ({ name, title, meaning }) =>
        html`<article class="measure">
          <h4>${title} <code>${name}</code></h4>
          ${logic(spoken.measures.get(name) ?? [])} ${meaning === null ? null : html`<p>${meaning}</p>`}
        </article>`,
    )}`;
}

/** Faults of technique: what makes a reading unsure, and how far. */
export function faultsOf(faults: readonly Fault[], part: Part): Html | null {
  if (faults.length === 0) return null;
  return html`<h3>Faults of technique</h3>
    <p>
      A fault that is known to be there makes a reading unsure. It raises what the level could be, and never
      lowers a level.
    </p>
    ${faults.map(
      (fault) =>
        html`<article class="rule">
          <h4>${fault.title} <code>${fault.name}</code></h4>
          ${logic(part.spoken.faults.get(fault.name) ?? [])}
          <p>${fault.says} ${citesOf(fault.sources, part)}</p>
          ${list(fault.do.map(actionOf), 'Do')}
        </article>`,
    )}`;
}

const citesOf = (names: readonly string[], part: Part): Html | null => {
  const numbers = numbersOf(names, part);
  return numbers.length === 0 ? null : html`<span class="cites">Sources ${numbers.join(', ')}.</span>`;
};

/** What was checked to have neither a hole nor an overlap. */
export const partitionsOf = ({ spoken }: Part): Html | null =>
  spoken.partitions.size === 0
    ? null
    : html`<h3>Divided without a hole and without an overlap</h3>
        ${logic([...spoken.partitions.values()])}`;
