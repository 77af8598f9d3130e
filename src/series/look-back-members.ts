import type { Asked } from './asked.ts';
import type { Verdict } from './judge.ts';
import { spanFor, type Span } from './ranges.ts';
import type { Resolution } from './resolution.ts';
import type { Resolved } from './resolve.ts';
import { asRead, valueOf } from './write-inputs.ts';
import type { ReadObservation, Value } from './read-observation.ts';
import type { ReadLookBack } from './reader.ts';
import type { SetAt } from './slot.ts';

/**
 * What is known of the sets that count in a look back, in steps and milliseconds. Without members only the
 * counts mean anything.
 */
export interface Members {
  all: number;
  sure: number;
  /** The lowest low and the highest high of all members. */
  lowest: number;
  highest: number;
  /** The highest low and the lowest high of the sure members. */
  highestSureLow: number;
  lowestSureHigh: number;
  sumOfLows: number;
  sumOfHighs: number;
  first: Span;
  last: Span;
  /** The time of the latest member, and of the latest sure one. */
  latest: number | null;
  latestSure: number | null;
}

const none: Span = { low: 0, high: 0 };

/**
 * Goes through the sets of the window (t − over, t] that have a value of the observation and for which
 * `where` may hold.
 */
export function gatherMembers(
  lookBack: ReadLookBack,
  of: ReadObservation,
  resolved: Resolved,
  asked: Asked,
  wide: boolean,
): Members {
  const members: Members = {
    all: 0,
    sure: 0,
    lowest: Infinity,
    highest: -Infinity,
    highestSureLow: -Infinity,
    lowestSureHigh: Infinity,
    sumOfLows: 0,
    sumOfHighs: 0,
    first: none,
    last: none,
    latest: null,
    latestSure: null,
  };
  const after = asked.time - lookBack.over;
  for (const set of asked.sets) {
    if (set.time <= after || (lookBack.leftOut && set === asked.present)) continue;
    const slot = set.slots[of.index];
    const value =
      slot?.state === 'value'
        ? wide
          ? slot
          : asRead(slot)
        : insteadOfMissing(set, of, resolved, asked, wide);
    if (!value) continue;
    const yes = lookBack.asksYes ? saysYes(value, of) : 2;
    if (yes === 0) continue;
    const where = lookBack.where ? lookBack.where(set, asked) : 2;
    add(members, value, set.time, Math.min(yes, where));
  }
  return members;
}

/** The present set counts also when it lacks a need: with what stands in for it, or everything that it could be. */
function insteadOfMissing(
  set: SetAt,
  of: ReadObservation,
  resolved: Resolved,
  asked: Asked,
  wide: boolean,
): Value | null {
  if (set !== asked.present || of.role === 'helps' || of.role === null) return null;
  const value = valueOf(resolved.all[of.index] as Resolution, wide);
  if (value) return value;
  const range = of.possible ? spanFor(of.possible, wide ? resolved.sureAge : resolved.age) : none;
  return { ...range, asRead: null, picked: of.everyChoice };
}

/** Whether it surely says yes (2), may say yes (1), or says no (0). */
function saysYes({ picked }: Value, { choices }: ReadObservation): Verdict {
  if (!picked.includes(choices.get('yes') ?? -1)) return 0;
  return picked.length === 1 ? 2 : 1;
}

function add(members: Members, value: Value, time: number, verdict: number): void {
  if (verdict === 0) return;
  const { low, high } = value;
  if (members.all === 0) members.first = value;
  members.last = value;
  members.all += 1;
  members.latest = time;
  members.lowest = Math.min(members.lowest, low);
  members.highest = Math.max(members.highest, high);
  members.sumOfLows += low;
  members.sumOfHighs += high;
  if (verdict !== 2) return;
  members.sure += 1;
  members.latestSure = time;
  members.highestSureLow = Math.max(members.highestSureLow, low);
  members.lowestSureHigh = Math.min(members.lowestSureHigh, high);
}
