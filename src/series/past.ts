import type { ReadObservation } from './read-observation.ts';
import type { Reader } from './reader.ts';
import { givesValue } from './set-at.ts';
import { type SetAt, states, type Said } from './slot.ts';

/**
 * What sets before the present one can still be asked for, beside the windows of look backs: the latest value
 * of each observation, the latest set that gives a value of each group, the latest refusal, and standing
 * statements. No more is kept.
 */
export class Past {
  readonly #reader: Reader;
  readonly #values: (SetAt | undefined)[] = [];
  readonly #groups: (SetAt | undefined)[] = [];
  readonly #refusals: (SetAt | undefined)[] = [];
  /** By index, in the order of time. */
  readonly #statements: (Said[] | undefined)[] = [];

  constructor(reader: Reader) {
    this.#reader = reader;
  }

  /** Takes in a checked set that is no longer the present one. Sets come in the order of time. */
  take(set: SetAt): void {
    for (const read of this.#reader.observations) {
      const slot = set.slots[read.index];
      if (!slot) continue;
      if (read.entry.standing) {
        if (states(slot)) (this.#statements[read.index] ??= []).push({ slot, moment: momentOf(set) });
      } else if (slot.state === 'value') this.#values[read.index] = set;
      else if (slot.state === 'refused') this.#refusals[read.index] = set;
    }
    for (let group = 0; group < this.#reader.groups.length; group += 1) {
      if (givesValue(set, group, this.#reader)) this.#groups[group] = set;
    }
  }

  /** Forgets what no question about `since` or later can need. */
  forget(since: number): void {
    for (const statements of this.#statements) {
      if (!statements) continue;
      let old = 0;
      while ((statements[old + 1]?.moment.time ?? Infinity) <= since) old += 1;
      if (old > 0) statements.splice(0, old);
    }
  }

  /**
   * The set whose value of the observation would stand in, whatever its age; of a group, the latest that
   * gives any of it.
   */
  candidate(read: ReadObservation): SetAt | undefined {
    return read.group === -1 ? this.#values[read.index] : this.#groups[read.group];
  }

  latestRefusal(read: ReadObservation): SetAt | undefined {
    return this.#refusals[read.index];
  }

  /** The latest statement of a standing observation at a time or before it. */
  latestStatement(read: ReadObservation, time: number): Said | null {
    const statements = this.#statements[read.index];
    if (!statements) return null;
    let [from, to] = [0, statements.length];
    while (from < to) {
      const middle = (from + to) >>> 1;
      if ((statements[middle]?.moment.time ?? Infinity) <= time) from = middle + 1;
      else to = middle;
    }
    return statements[from - 1] ?? null;
  }

  /** Every set and statement that is kept, each once. */
  kept(): ReadonlySet<object> {
    const sets = [...this.#values, ...this.#groups, ...this.#refusals].filter((each) => each !== undefined);
    return new Set<object>([...sets, ...this.#statements.flatMap((each) => each ?? [])]);
  }
}

/** A set's time without the set, so that a statement does not keep all of it. */
const momentOf = ({ time, at, text }: SetAt): Said['moment'] => ({ time, at, text });
