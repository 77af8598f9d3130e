import type { WardOutcome } from '../shape/generated/types.ts';
import type { Ward } from '../ward/ward.ts';
import { levelInWords } from './document-to-cases-report.ts';

/** What a ward policy says of a case, in one sentence: the level in words, and whom to tell. */
export function wardLevelSays({ level, response }: WardOutcome, { ladder }: Ward): string {
  const place = (name: string | null): number => ladder.levels.findIndex((each) => each.name === name);
  const says = levelInWords(
    {
      applies: level === null ? 'no' : 'yes',
      level: level && {
        atLeast: level.at_least === null ? null : place(level.at_least),
        couldBe: place(level.could_be),
        settled: level.settled,
      },
    },
    ladder,
  );
  const tell = response?.tell.map(({ who }) => who).join(', ') ?? '';
  return tell === '' ? says : `${says} Tell: ${tell}.`;
}
