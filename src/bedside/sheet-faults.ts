import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Outcome, OutcomeFault } from '../shape/generated/types.ts';
import type { SheetFaults } from './sheet.ts';
import { levelTitle, numberInWords, rangeInWords, rankOf, titleOf } from './words.ts';

/** So many rules that the truth could meet are named. */
const mostRules = 4;

/** Faults of technique: each with how to take it again without it; then what all of them together leave open, and whether it matters. */
export function sheetFaults({ faults = [] }: Outcome, protocol: Protocol): SheetFaults | null {
  if (faults.length === 0) return null;
  return {
    heading: 'How it was taken: take it again, and delay no call for it',
    faults: faults.map(({ title, says, do: actions }) => ({ title, says, do: actions })),
    openHeading: faults.length === 1 ? 'What that leaves open' : 'What they leave open together',
    open: [...new Set(faults.flatMap((fault) => unsure(fault, protocol)))],
    matters: matters(faults, protocol),
  };
}

/** Whether a fault of technique puts a rule in doubt. */
export const isInDoubt = ({ faults = [] }: Outcome): boolean =>
  faults.some(({ changes }) => changes.length > 0);

const unsure = ({ readings }: OutcomeFault, protocol: Protocol): string[] =>
  readings.map(({ observation, read, low, high, unit }) => {
    const title = titleOf(observation, protocol);
    const range = rangeInWords(low, high, unit);
    if (read === undefined) return `${title}: the truth may be ${range}`;
    return `${title} was read as ${numberInWords(read, unit)}; the truth may be ${range}`;
  });

/** The rules that would answer otherwise, those of the highest level first; a rule that several protocols have is named once. */
function matters(faults: readonly OutcomeFault[], protocol: Protocol): string {
  const doubted = faults
    .flatMap(({ changes }) => changes)
    .toSorted((left, right) => rankOf(right.level, protocol) - rankOf(left.level, protocol));
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
