import type { Outcome, OutcomeFault } from '../shape/generated/types.ts';
import { listed } from '../protocol/words.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Page } from './page.ts';
import { levelTitle, numberInWords, rangeInWords, titleOf } from './show-words.ts';

/** So many rules that the truth could meet are named. */
const mostRules = 4;

/** Faults of technique: each with how to take it again without it; then what all of them together leave open, and whether it matters. */
export function showFaults({ faults = [] }: Outcome, protocol: Protocol, page: Page): void {
  if (faults.length === 0) return;
  page.heading('How it was taken: take it again, and delay no call for it');
  for (const fault of faults) {
    page.gap();
    page.title(fault.title);
    page.text(fault.says, 2);
    for (const action of fault.do) page.item(action, 2);
  }
  page.gap();
  page.title(faults.length === 1 ? 'What that leaves open' : 'What they leave open together');
  for (const each of new Set(faults.flatMap((fault) => unsure(fault, protocol)))) page.item(each);
  page.text(matters(faults, protocol));
}

const unsure = ({ readings }: OutcomeFault, protocol: Protocol): string[] =>
  readings.map(({ observation, read, low, high, unit }) => {
    const title = titleOf(observation, protocol);
    const range = rangeInWords(low, high, unit);
    if (read === undefined) return `${title}: the truth may be ${range}`;
    return `${title} was read as ${numberInWords(read, unit)}; the truth may be ${range}`;
  });

/** The rules that would answer otherwise, those of the highest level first; a rule that several protocols have is named once. */
function matters(faults: readonly OutcomeFault[], protocol: Protocol): string {
  const rank = (level: string | undefined): number =>
    protocol.ladder.levels.findIndex(({ name }) => name === level);
  const doubted = faults
    .flatMap(({ changes }) => changes)
    .toSorted((left, right) => rank(right.level) - rank(left.level));
  const rules = new Set(
    doubted.map(({ title, level }) =>
      level === undefined ? `"${title}"` : `"${title}" (${levelTitle(level, protocol)})`,
    ),
  );
  if (rules.size === 0) return 'Wherever the truth lies there, every rule answers the same.';
  const more = rules.size > mostRules ? [`${rules.size - mostRules} more`] : [];
  const named = listed([...[...rules].slice(0, mostRules), ...more]);
  return `The level that the numbers call for stands. If the truth lies elsewhere, these may answer otherwise: ${named}.`;
}
