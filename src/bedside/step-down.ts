import { levelOf } from '../outcome/answers.ts';
import type { Compiled } from '../outcome/compile.ts';
import { durationInWords } from '../outcome/time-in-words.ts';
import type { Level } from '../protocol/protocol.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { GivenSet, Series } from '../series/series.ts';
import { parseDuration } from '../vocabulary/quantity.ts';

/** How far a patient has come down from a level that was reached before. */
export interface StepDown {
  /** As an index on the ladder. */
  readonly level: number;
  /** When the latest set called for it, as written. */
  readonly since: string | null;
  /** Sets in a row below it so far, and how many the ladder asks for. */
  readonly counted: number;
  readonly wanted: number;
  /** Milliseconds from the first of them to the latest, and how long the ladder asks for. */
  readonly spans: number;
  readonly over: number;
  readonly agreedBy: string;
  /** Whether as many sets and as much time have been counted as the ladder asks for; then somebody may agree to it. */
  readonly complete: boolean;
}

/**
 * Counts the sets in a row below the highest level that was called for earlier in a series. A set that is not settled below it, or
 * that could still be as high, breaks the row: missing is never normal. Nobody steps down by counting alone: the ladder says who agrees.
 *
 * Null when no earlier set called for more than the present one, or the level has no way down on the ladder.
 */
export function stepDownOf(compiled: Compiled, series: Series): StepDown | null {
  let reached: { level: number; since: string | null } | null = null;
  let row: GivenSet[] = [];
  for (const set of momentsOf(series)) {
    const found = levelAt(compiled, series, set);
    const level = found?.atLeast ?? 0;
    if (found && level > 0 && level >= (reached?.level ?? 0)) {
      reached = { level, since: set.atText };
      row = [];
    } else if (reached) row = found?.settled && found.couldBe < reached.level ? [...row, set] : [];
  }
  if (!reached) return null;
  const { ladder } = compiled.protocol;
  const stepDown = ladder.levels[reached.level]?.stepDown ?? null;
  const isNow = levelAt(compiled, series, momentsOf(series).at(-1))?.atLeast === reached.level;
  return stepDown && !isNow ? counted(reached, row, stepDown) : null;
}

function counted(
  { level, since }: { readonly level: number; readonly since: string | null },
  row: readonly GivenSet[],
  { setsInARow, over, agreedBy }: NonNullable<Level['stepDown']>,
): StepDown {
  const spans = (row.at(-1)?.at ?? 0) - (row[0]?.at ?? 0);
  const asked = parseDuration(over) ?? 0;
  return {
    level,
    since,
    counted: row.length,
    wanted: setsInARow,
    spans,
    over: asked,
    agreedBy,
    complete: row.length >= setsInARow && spans >= asked,
  };
}

/** One set for each time, in the order of time, up to the time that is asked about; sets without a time tell of no course. */
function momentsOf({ sets, at }: Series): readonly GivenSet[] {
  const timed = sets.filter((set) => set.at !== null && (at === null || set.at <= at));
  const byTime = new Map(timed.map((set) => [set.at, set]));
  return [...byTime.values()].sort((left, right) => (left.at ?? 0) - (right.at ?? 0));
}

function levelAt(compiled: Compiled, series: Series, set: GivenSet | undefined): ReturnType<typeof levelOf> {
  if (!set) return null;
  const until = series.sets.filter((each) => (each.at ?? 0) <= (set.at ?? 0));
  const then = { ...series, sets: until, at: set.at, atText: set.atText };
  return levelOf(compiled, seriesToBounds(compiled.protocol, then));
}

/** `1 of 2 sets in a row below it, over 30 min of 2 h`. */
export const countInWords = ({ counted: row, wanted, spans, over }: StepDown): string =>
  `${row} of ${wanted} ${wanted === 1 ? 'set' : 'sets in a row'} below it, over ${durationInWords(spans)} of ${durationInWords(over)}`;
