import { inForce, type InForce } from '../../outcome/in-force.ts';
import { levelsOverTime } from '../../outcome/levels-over-time.ts';
import type { Series } from '../../series/series.ts';
import { mergeLevels } from '../../ward/merge-levels.ts';
import { answerOf } from './case-changes.ts';
import type { LevelChange } from './level-question.ts';
import { pointToSet, seriesOf } from './point-to-series.ts';
import type { Side } from './side.ts';
import type { Space } from './space.ts';

const hour = 3_600_000;
/** Any day will do: the day of the change has no part in what is worked out. */
const first = Date.UTC(2026, 0, 5, 8);

/**
 * What happens to a patient in the middle of a series on the day of the change: all sets are read anew, those from before it too. Worked out
 * by reading two series: one that ends with the witness, and one in which an ordinary set comes after it.
 */
export function courseOf(
  { from, to }: LevelChange,
  witness: Float64Array,
  space: Space,
  [before, after]: readonly [Side, Side],
): string[] {
  const usual = Float64Array.from(space.dimensions, ({ usual: value }) => value);
  const sets = [pointToSet(witness, space, first), pointToSet(usual, space, first + 4 * hour)];
  const [was, is] = [before, after].map((side) => heldIn(side, seriesOf(sets)));
  return [
    lastSet(from?.atLeast ?? null, to?.atLeast ?? null, [before, after]),
    `With an ordinary set four hours after it: before, ${heldInWords(was ?? null, before)}; from the change on, ${heldInWords(is ?? null, after)}.`,
  ];
}

function lastSet(from: number | null, to: number | null, [before, after]: readonly [Side, Side]): string {
  const title = ({ ladder }: Side, level: number | null): string =>
    ladder.levels[level ?? -1]?.title ?? 'no settled level';
  const now = `A patient whose last set is one of these has "${title(before, from)}" until the change and "${title(after, to)}" from then on, without a new set`;
  if ((to ?? -1) >= (from ?? -1)) return `${now}: look at these patients when the change comes into force.`;
  return `${now}: nobody is asked to agree that the patient steps down, because the earlier sets are read by the new rules too. Ask them before the change comes into force.`;
}

function heldIn({ members, ladder }: Side, series: Series): InForce | null {
  const over = members.map((member) => levelsOverTime(member, series));
  const together = (over[0] ?? []).map((each, index) => ({
    ...each,
    level: mergeLevels(over.map((levels) => levels[index]?.level ?? null)),
  }));
  return inForce(together, answerOf({ members }, series).level, ladder);
}

function heldInWords(held: InForce | null, { ladder }: Side): string {
  if (!held) return 'no earlier level is held';
  const title = ladder.levels[held.level]?.title ?? '';
  const asked = held.setsAsked === null ? '' : `, after ${held.setsBelow} of ${held.setsAsked} sets below it`;
  return `"${title}" is still in force${asked}`;
}
