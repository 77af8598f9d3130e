import type { Outcome, OutcomeFault } from '../shape/generated/types.ts';
import { listed } from '../protocol/words.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Page } from './page.ts';
import { levelTitle, numberInWords, rangeInWords, titleOf } from './show-words.ts';

/** Faults of technique: what was read, what the truth may be, whether that matters here, and how to take it again. */
export function showFaults({ faults = [] }: Outcome, protocol: Protocol, page: Page): void {
  if (faults.length === 0) return;
  page.heading('How it was taken: take it again, and delay no call for it');
  const told = new Set<string>();
  for (const fault of faults) {
    page.gap();
    page.title(fault.title);
    page.text(fault.says, 2);
    for (const each of unsure(fault, protocol).filter((line) => !told.has(line) && told.add(line)))
      page.item(each, 2);
    page.text(matters(fault, protocol), 2);
    for (const action of fault.do) page.item(action, 2);
  }
}

const unsure = ({ readings }: OutcomeFault, protocol: Protocol): string[] =>
  readings.map(({ observation, read, low, high, unit }) => {
    const title = titleOf(observation, protocol);
    const range = rangeInWords(low, high, unit);
    if (read === undefined) return `${title}: the truth may be ${range}`;
    return `${title} was read as ${numberInWords(read, unit)}; the truth may be ${range}`;
  });

function matters({ changes }: OutcomeFault, protocol: Protocol): string {
  if (changes.length === 0) return 'Anywhere in that range every rule answers the same.';
  const rules = changes.map(({ title, level }) =>
    level === undefined ? `"${title}"` : `"${title}" (${levelTitle(level, protocol)})`,
  );
  return `It may answer otherwise: ${listed(rules)}. The level that the numbers call for stands.`;
}
