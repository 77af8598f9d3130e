import type { Operator } from '../../logic/operators.ts';

/**
 * Works one operator out over numbers that stand in slots. Its parts are the slots that `places` names, from `at` up to `end`,
 * the end excluded; a truth is 1 or 0.
 */
export type Operation = (slots: Float64Array, places: Int32Array, at: number, end: number) => number;

const slot = (slots: Float64Array, places: Int32Array, at: number): number =>
  slots[places[at] as number] as number;

/** Each operator. One that is forgotten does not compile. */
export const operations: { readonly [O in Operator]: Operation } = {
  '+': (slots, places, at, end) => {
    let total = slot(slots, places, at);
    for (let part = at + 1; part < end; part += 1) total += slot(slots, places, part);
    return total;
  },
  '-': (slots, places, at, end) => {
    const first = slot(slots, places, at);
    return end - at === 1 ? -first : first - slot(slots, places, at + 1);
  },
  '*': (slots, places, at) => slot(slots, places, at) * slot(slots, places, at + 1),
  min: (slots, places, at, end) => {
    let least = slot(slots, places, at);
    for (let part = at + 1; part < end; part += 1) {
      const value = slot(slots, places, part);
      if (value < least) least = value;
    }
    return least;
  },
  max: (slots, places, at, end) => {
    let most = slot(slots, places, at);
    for (let part = at + 1; part < end; part += 1) {
      const value = slot(slots, places, part);
      if (value > most) most = value;
    }
    return most;
  },
  '<': (slots, places, at) => (slot(slots, places, at) < slot(slots, places, at + 1) ? 1 : 0),
  '<=': (slots, places, at) => (slot(slots, places, at) <= slot(slots, places, at + 1) ? 1 : 0),
  and: (slots, places, at, end) => {
    for (let part = at; part < end; part += 1) if (slot(slots, places, part) === 0) return 0;
    return 1;
  },
  or: (slots, places, at, end) => {
    for (let part = at; part < end; part += 1) if (slot(slots, places, part) !== 0) return 1;
    return 0;
  },
  '!': (slots, places, at) => (slot(slots, places, at) === 0 ? 1 : 0),
  if: (slots, places, at, end) => {
    const last = end - 1;
    for (let part = at; part < last; part += 2) {
      if (slot(slots, places, part) !== 0) return slot(slots, places, part + 1);
    }
    return slot(slots, places, last);
  },
};
