import { parseDuration } from '../vocabulary/quantity.ts';
import type { Ladder } from '../protocol/protocol.ts';
import type { LevelAnswer } from './answers.ts';

/** How the level was at one set. */
export interface LevelAt {
  /** In milliseconds; null for a set without a time. */
  readonly at: number | null;
  readonly atText: string | null;
  /** Null when nothing was for this patient. */
  readonly level: LevelAnswer | null;
}

/** A level that an earlier set reached and that nobody has been able to step down from by what the sets show. */
export interface InForce {
  /** Index on the ladder. */
  readonly level: number;
  /** When it was first reached, and when it was last called for. */
  readonly since: string;
  readonly lastAt: string;
  /** Sets in a row below it up to now, and how many are asked for; null where the ladder says nothing of stepping down. */
  readonly setsBelow: number;
  readonly setsAsked: number | null;
  /** From the first to the latest of these sets, in milliseconds, and how long it has to be. */
  readonly time: number;
  readonly timeAsked: number | null;
  readonly agreedBy: string | null;
  /** Whether the sets show what the ladder asks for. The role still has to agree. */
  readonly mayStepDown: boolean;
}

/**
 * Which level is in force above what the latest set calls for. Sets come in the order of time.
 *
 * A set counts as below a level only when nothing that it lacks could still reach it; any other set starts the row anew. Once the row
 * is as long as the ladder asks, and has lasted as long, the role may agree to step down; nobody can see from sets alone that it did.
 */
export function inForce(
  levels: readonly LevelAt[],
  now: LevelAnswer | null,
  { levels: rungs }: Ladder,
): InForce | null {
  let held = 0;
  let [since, last]: [LevelAt | null, LevelAt | null] = [null, null];
  let below: LevelAt[] = [];
  for (const each of levels) {
    if (!each.level) continue;
    const called = each.level.atLeast ?? 0;
    if (called >= held) {
      if (called > held) since = each;
      [held, last, below] = [called, each, []];
    } else if (each.level.couldBe < held) below.push(each);
    else below = [];
  }
  if (!since || !last || !now || held <= (now.atLeast ?? 0)) return null;
  const stepDown = rungs[held]?.stepDown ?? null;
  const time = (below.at(-1)?.at ?? 0) - (below[0]?.at ?? 0);
  const timeAsked = stepDown && parseDuration(stepDown.over);
  return {
    level: held,
    since: since.atText ?? '',
    lastAt: last.atText ?? '',
    setsBelow: below.length,
    setsAsked: stepDown?.setsInARow ?? null,
    time,
    timeAsked,
    agreedBy: stepDown?.agreedBy ?? null,
    mayStepDown: stepDown !== null && below.length >= stepDown.setsInARow && time >= (timeAsked ?? Infinity),
  };
}
