import { never } from '../logic/inputs.ts';
import type { Asked } from './asked.ts';
import { heldFor } from './held.ts';
import { gatherMembers, type Members } from './look-back-members.ts';
import { spanFor, type Span } from './ranges.ts';
import type { Resolved } from './resolve.ts';
import type { ReadObservation } from './read-observation.ts';
import type { ReadLookBack } from './reader.ts';

/** Writes every look back as logic reads it. Wide: an earlier value of the present set counts as missing. */
export function writeLookBacks(inputs: Float64Array, resolved: Resolved, asked: Asked, wide: boolean): void {
  for (const lookBack of asked.reader.lookBacks) {
    const { kind, of, places } = lookBack;
    if (places.count !== -1) inputs[places.count] = 1;
    if (places.open !== -1) inputs[places.open] = isOpenNow(lookBack, asked) ? 1 : 0;
    if (kind === 'held' || !of) {
      writeAlways(inputs, lookBack, heldFor(lookBack, asked));
      continue;
    }
    const members = gatherMembers(lookBack, of, resolved, asked, wide);
    if (kind === 'count') writeAlways(inputs, lookBack, { low: members.sure, high: members.all });
    else if (kind === 'minutes_since') writeAlways(inputs, lookBack, sinceLatest(members, asked.time));
    else {
      const needed = kind === 'change' ? 2 : 1;
      inputs[places.sure] = members.sure >= needed ? 1 : 0;
      inputs[places.maybe] = members.all >= needed ? 1 : 0;
      if (members.all >= needed) writeValue(inputs, lookBack, kind, members);
      else writeEnds(inputs, lookBack, whole(of, kind, wide ? resolved.sureAge : resolved.age));
    }
  }
}

/**
 * Whether it is still open which sets count: taking a need could tell of the present one, and of what any of them knows only as a range the
 * truth is one of several values. What only helps, or was not taken earlier, and is missing keeps nothing open.
 */
function isOpenNow({ whereReads, over, leftOut }: ReadLookBack, asked: Asked): boolean {
  const { sets, present, time } = asked;
  const inside = sets.filter((set) => set.time > time - over && !(leftOut && set === present));
  return inside.some((set) =>
    whereReads.some((read) => {
      const value = asked.valueIn(set, read);
      return value ? value.low < value.high : set === present && read.role !== 'helps' && read.role !== null;
    }),
  );
}

function writeEnds(inputs: Float64Array, { places }: ReadLookBack, { low, high }: Span): void {
  inputs[places.low] = low;
  inputs[places.high] = high;
}

/** Of what always has a value. */
function writeAlways(inputs: Float64Array, lookBack: ReadLookBack, span: Span): void {
  writeEnds(inputs, lookBack, span);
  inputs[lookBack.places.sure] = 1;
  inputs[lookBack.places.maybe] = 1;
}

/** Milliseconds to the evaluation time: from the latest member, and from the latest sure one; `never` without. */
function sinceLatest({ latest, latestSure }: Members, time: number): Span {
  return {
    low: latest === null ? never : time - latest,
    high: latestSure === null ? never : time - latestSure,
  };
}

/** Without enough members: everything that the value could be. */
function whole({ possible }: ReadObservation, kind: ReadLookBack['kind'], age: Span | null): Span {
  if (!possible) throw new TypeError('only numbers have a highest, a lowest or an average');
  const { low, high } = spanFor(possible, age);
  return kind === 'change' ? { low: low - high, high: high - low } : { low, high };
}

type ValueKind = Exclude<ReadLookBack['kind'], 'count' | 'minutes_since' | 'held'>;

/**
 * An average's ends are sums, to be divided by its count; where a member is unsure, an end is one value, and
 * the count is 1.
 */
function writeValue(inputs: Float64Array, lookBack: ReadLookBack, kind: ValueKind, members: Members): void {
  writeEnds(inputs, lookBack, valueOfMembers(kind, members));
  if (kind === 'average' && members.all === members.sure) inputs[lookBack.places.count] = members.all;
}

function valueOfMembers(kind: ValueKind, members: Members): Span {
  const { first, last, lowest, highest } = members;
  const exact = members.all === members.sure;
  const hull = { low: lowest, high: highest };
  switch (kind) {
    case 'highest':
      return members.sure > 0 ? { low: members.highestSureLow, high: highest } : hull;
    case 'lowest':
      return members.sure > 0 ? { low: lowest, high: members.lowestSureHigh } : hull;
    case 'average':
      return exact ? { low: members.sumOfLows, high: members.sumOfHighs } : hull;
    case 'earliest':
      return exact ? first : hull;
    case 'latest':
      return exact ? last : hull;
    case 'change':
      if (exact) return { low: last.low - first.high, high: last.high - first.low };
      return { low: lowest - highest, high: highest - lowest };
  }
}
