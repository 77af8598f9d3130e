import type { LevelAnswer } from '../../outcome/answers.ts';
import type { Ladder } from '../../protocol/protocol.ts';

/** A level as it is told: `Call the doctor`; `at least Look again, not settled, and could be as high as Call the doctor`. */
export function levelInWords(level: LevelAnswer | null, { levels }: Ladder): string {
  if (!level) return 'not for this patient: no level';
  const title = (index: number): string => levels[index]?.title ?? '';
  if (level.settled) return title(level.atLeast ?? 0);
  const could = `could be as high as ${title(level.couldBe)}`;
  return level.atLeast === null
    ? `not settled, and ${could}`
    : `at least ${title(level.atLeast)}, not settled, and ${could}`;
}
