import type { Outcome, OutcomeRule } from '../shape/generated/types.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Page } from './page.ts';
import { numberInWords, titleOf } from './show-words.ts';

/** Of a rule that stands in a protocol that this one is based on: which. */
export function showFrom({ from }: OutcomeRule, page: Page): void {
  if (from) page.text(`From ${from.protocol}, edition ${from.edition}.`, 2);
}

/** What a protocol is based on, and what it changes of it: other values of limits, and rules withdrawn, each with the reason. */
export function showBasedOn({ based_on: parents = [] }: Outcome, protocol: Protocol, page: Page): void {
  if (parents.length > 0) page.heading('Based on');
  for (const { protocol: name, edition, title, limits, withdrawn } of parents) {
    page.item(`${name}, edition ${edition}: ${title}`);
    for (const { limit, value, instead_of: before, unit, because } of limits) {
      const changed = `${numberInWords(value, unit)} instead of ${numberInWords(before, unit)}`;
      page.item(`Changed: ${titleOf(limit, protocol)}: ${changed}, because: ${because}`, 2);
    }
    for (const rule of withdrawn) page.item(`Withdrawn: ${rule.title}, because: ${rule.because}`, 2);
  }
}
