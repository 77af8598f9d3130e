import type { LevelAnswer } from '../outcome/answers.ts';

/**
 * The one level of several protocols: the highest of theirs, on the one ladder. It is settled when nothing that any of them lacks
 * could change it. Null when none of them is for this patient.
 *
 * Of one protocol that calls the doctor and one that is not settled, the level is to call the doctor at least.
 */
export function mergeLevels(levels: readonly (LevelAnswer | null)[]): LevelAnswer | null {
  const asked = levels.filter((level) => level !== null);
  if (asked.length === 0) return null;
  const raised = Math.max(...asked.map(({ atLeast }) => atLeast ?? 0));
  const couldBe = Math.max(...asked.map((level) => level.couldBe));
  // What one protocol has settled at the highest level that any could reach, no other can change. The lowest takes all of them.
  const isSettledThere = (level: LevelAnswer): boolean => level.settled && (level.atLeast ?? 0) === raised;
  const settled =
    couldBe === raised && (raised > 0 ? asked.some(isSettledThere) : asked.every(isSettledThere));
  return { atLeast: raised > 0 || settled ? raised : null, couldBe, settled };
}
