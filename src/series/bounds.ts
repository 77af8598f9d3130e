import type { Doubt } from './ranges.ts';

/**
 * What is known of a patient at one time, as the flat numbers that logic reads, and what an outcome tells about them.
 */
export interface Bounds {
  /** In the order of `inputsOf(protocol)`. Earlier values stand in. */
  readonly narrow: Float64Array;
  /** The same with earlier values counted as missing. The very same array when none stands in. */
  readonly wide: Float64Array;
  readonly facts: SeriesFacts;
}

export interface SeriesFacts {
  /** Evaluation time as written; null when there is none. */
  readonly at: string | null;
  /** What each observation of the protocol is at that time. */
  readonly present: ReadonlyMap<string, Present>;
  /** Each limit's steps, and who changed it, when someone did. */
  readonly limits: ReadonlyMap<string, LimitInForce>;
  /** Converted or moved values that are used now, those of the present set first. */
  readonly taken: readonly Taken[];
  /** Values that are not used, and why: those of the present set first, sets after the evaluation time last. */
  readonly refused: readonly Remark[];
  /** Values that are used and outside what is plausible. */
  readonly questioned: readonly Remark[];
  /** How far the faults of the present set would make each observation read wrong, by its name. */
  readonly doubts: ReadonlyMap<string, Doubt>;
  /** Faults of technique that are known to be there, and what each makes unsure. */
  readonly faults: readonly FoundFault[];
  /** Observations that were given and that the protocol does not read, in the order of the alphabet. */
  readonly unused: readonly string[];
}

/** A fault of technique that is known to be there. */
export interface FoundFault {
  readonly fault: string;
  readonly readings: readonly UnsureReading[];
}

/** What was read, and from where to where the truth may lie with all faults of the set together; steps, both ends included. */
export interface UnsureReading {
  readonly observation: string;
  readonly read: readonly [number, number];
  readonly truth: readonly [number, number];
}

export interface LimitInForce {
  readonly steps: number;
  readonly by: string | null;
  readonly reason: string | null;
  /** In milliseconds, itself excluded. */
  readonly until: number | null;
}

/** A value that was converted, or moved to its step. */
export interface Taken {
  /** The observation, or the limit. */
  readonly observation: string;
  /** As written. */
  readonly given: string;
  /** As it is used, with the UCUM code of its unit: `36.7 Cel`. */
  readonly as: string;
}

/** A value and what is to be said of it, in a sentence. */
export interface Remark {
  /** The observation, or the limit. */
  readonly observation: string;
  /** As written. */
  readonly given: string;
  readonly because: string;
}

/** How one observation stands. */
export interface Present {
  readonly state:
    'given' | 'earlier' | 'standing' | 'assumed' | 'unobtainable' | 'declined' | 'refused' | 'missing';
  /** In steps, both included; the whole possible range when missing. Null for anything but a number. */
  readonly range: readonly [number, number] | null;
  /** The choices that it may be; of a several, those that are in, all of them when missing. Null for a number. */
  readonly choices: readonly string[] | null;
  /** When it was taken, in milliseconds; null without a time. */
  readonly at: number | null;
  /** As written, for an earlier value; null else. */
  readonly atText: string | null;
  /** Of a standing fact: who stated it. Of an unobtainable or declined one: why. Null else. */
  readonly note: string | null;
  /** What the present set says in place of a value while an earlier value or a standing fact is used; null else. */
  readonly instead: 'unobtainable' | 'declined' | 'refused' | null;
}
