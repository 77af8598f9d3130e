import type { ObservationEntry, Role } from '../protocol/protocol.ts';
import type { Range, Span } from './ranges.ts';

/** What a value is to logic: a range of steps, or which of the choices it may be (of a several: which are in). */
export interface Value {
  readonly low: number;
  readonly high: number;
  /** The value as it was read, where its error makes it a range; null where the range is all that was said. */
  readonly asRead: Span | null;
  /** Positions among the observation's choices; empty for a number. */
  readonly picked: readonly number[];
}

/** Where the parts of an observation stand among the inputs; -1 for a part that it has not. */
export interface Places {
  readonly low: number;
  readonly high: number;
  /** Of the first choice; the others follow. */
  readonly may: number;
  readonly sure: number;
  readonly known: number;
  readonly unobtainable: number;
  readonly missing: number;
}

/** How one observation is read: everything that can be worked out before the first set. */
export interface ReadObservation {
  readonly index: number;
  readonly name: string;
  readonly entry: ObservationEntry;
  /** Null for an age that only the ranges ask for, and for what only faults of technique ask for. */
  readonly role: Role | null;
  readonly places: Places;
  /** In milliseconds; 0: only at the time at which it was taken. */
  readonly goodFor: number;
  /** -1 without a group. */
  readonly group: number;
  readonly choices: ReadonlyMap<string, number>;
  readonly everyChoice: readonly number[];
  /** Null for anything but a number. */
  readonly possible: Range | null;
  /** Null when nothing is questioned. */
  readonly plausible: Range | null;
  /** What it counts as while nobody has stated it. */
  readonly assumed: Value | null;
  /** The longest window of a look back that reads it, in milliseconds; 0 when none does. */
  readonly watched: number;
}
