import type { Protocol } from '../protocol/protocol.ts';
import { judgeOf, type Judge, type JudgeNames, type SetWorld } from './judge.ts';
import { spanFor, type Doubt } from './ranges.ts';
import type { ReadObservation } from './read-observation.ts';
import type { SetAt } from './slot.ts';

/** A fault of technique as it is looked for in a set. */
export interface ReadFault {
  readonly name: string;
  readonly isThere: Judge;
  readonly amounts: readonly Amount[];
}

interface Amount extends Doubt {
  readonly of: ReadObservation;
}

/** The faults of a protocol; what a fault makes unsure and the protocol does not read is left out. */
export function readFaults(
  { faults }: Pick<Protocol, 'faults'>,
  byName: ReadonlyMap<string, ReadObservation>,
  names: JudgeNames,
): readonly ReadFault[] {
  return faults.map(({ name, when, readsHigh, readsLow }) => ({
    name,
    isThere: judgeOf(when, names),
    amounts: [...new Set([...readsHigh.keys(), ...readsLow.keys()])].flatMap((observation): Amount[] => {
      const of = byName.get(observation);
      return of ? [{ of, high: readsHigh.get(observation) ?? 0, low: readsLow.get(observation) ?? 0 }] : [];
    }),
  }));
}

/**
 * Makes room for the truth around the values of a checked set: by the amounts of every fault that is known to be there, together,
 * inside what is possible. What was read is kept beside it. A fault that nobody can tell of makes nothing unsure.
 */
export function applyFaults(set: SetAt, faults: readonly ReadFault[], world: SetWorld): void {
  set.doubts.clear();
  for (const { name, isThere, amounts } of faults) {
    if (isThere(set, world) !== 2) continue;
    for (const { of, high, low } of amounts) {
      const before = set.doubts.get(of.name) ?? { high: 0, low: 0 };
      set.doubts.set(of.name, { high: before.high + high, low: before.low + low });
      const slot = set.slots[of.index];
      if (slot?.state !== 'value' || !of.possible) continue;
      slot.asRead ??= { low: slot.low, high: slot.high };
      (slot.faults ??= []).push(name);
      const possible = spanFor(of.possible, set.age);
      slot.low = Math.max(Math.min(possible.low, slot.low), slot.low - high);
      slot.high = Math.min(Math.max(possible.high, slot.high), slot.high + low);
    }
  }
}
