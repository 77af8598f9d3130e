/**
 * A patient's series as it was given, with exact values, before it is read by any protocol.
 */
export interface Series {
  /** Evaluation time in milliseconds; null for a single set without a time, and for a series without sets and time. */
  readonly at: number | null;
  /** As written. */
  readonly atText: string | null;
  readonly sets: readonly GivenSet[];
  readonly standing: ReadonlyMap<string, Stated>;
  readonly limits: ReadonlyMap<string, Stated>;
}

export interface GivenSet {
  /** In milliseconds since 1970; null for a single set without a time. */
  readonly at: number | null;
  readonly atText: string | null;
  readonly observed: ReadonlyMap<string, Observed>;
}

/** What a set says of one observation, in whole steps. */
export type Observed = ObservedNumber | ObservedChoice | ObservedSeveral | BeyondDevice | Nothing;

export interface ObservedNumber {
  readonly kind: 'number';
  /** Null: it reaches to the end of the possible range. */
  readonly low: number | null;
  /** Null: it reaches to the end of the possible range. */
  readonly high: number | null;
  /** The stated value, when one was; else null. */
  readonly value: number | null;
  readonly given: Given;
}

export interface ObservedChoice {
  readonly kind: 'choice';
  /** For yes/no: `yes` or `no`. */
  readonly choice: string;
  readonly given: Given;
}

export interface ObservedSeveral {
  readonly kind: 'several';
  readonly choices: readonly string[];
  readonly given: Given;
}

/** The device showed only that the value lies beyond its bound. */
export interface BeyondDevice {
  readonly kind: 'above_device' | 'below_device';
  /** The device's bound, itself excluded; between two steps, the step on the near side of it. */
  readonly bound: number;
  readonly given: Given;
}

/** It was tried, and there is no value. */
export interface Nothing {
  readonly kind: 'unobtainable' | 'declined';
  /** Null when only yes was said. */
  readonly reason: string | null;
  readonly given: Given;
}

/** What was written, for `taken`, `refused` and `questioned`. */
export interface Given {
  /** The words: `98.1 [degF]`. */
  readonly text: string;
  /** Whether the value was converted, or moved to its step. */
  readonly moved: boolean;
}

export interface Stated {
  /** In steps of its observation or limit, or the choice, or the choices. */
  readonly value: number | string | readonly string[];
  readonly by: string;
  readonly reason: string | null;
  /** In milliseconds; null when it has always held. */
  readonly from: number | null;
  /** In milliseconds, itself excluded; null for no end. */
  readonly until: number | null;
  readonly given: Given;
}
