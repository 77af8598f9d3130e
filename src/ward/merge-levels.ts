import type { LevelAnswer } from '../outcome/answers.ts';

/**
 * The one level of several protocols: the highest of theirs, on the one ladder. It is settled when every one of them is that is for
 * this patient. Null when none of them is.
 *
 * Of one protocol that calls the doctor and one that is not settled, the level is to call the doctor at least.
 */
export function mergeLevels(levels: readonly (LevelAnswer | null)[]): LevelAnswer | null {
  const asked = levels.filter((level) => level !== null);
  if (asked.length === 0) return null;
  const raised = Math.max(...asked.map(({ atLeast }) => atLeast ?? 0));
  const couldBe = Math.max(...asked.map((level) => level.couldBe));
  // A lower protocol that is not settled can no longer change what a higher one has settled.
  const settled = asked.every((level) => level.settled || level.couldBe < raised) && couldBe === raised;
  return { atLeast: raised > 0 || settled ? raised : null, couldBe, settled };
}
