import type { Limit, LookBackKind } from '../protocol/protocol.ts';
import type { ReadFault } from './apply-faults.ts';
import type { LimitInForce, Remark, Taken } from './bounds.ts';
import type { Judge } from './judge.ts';
import type { ReadObservation } from './read-observation.ts';

/** How one protocol reads series: everything that can be worked out before the first set. */
export interface Reader {
  /** How many inputs logic has. */
  readonly size: number;
  /** Those that logic reads, in the protocol's order; then age, when only the ranges ask for it, and what only faults ask for. */
  readonly observations: readonly ReadObservation[];
  readonly byName: ReadonlyMap<string, ReadObservation>;
  /** The observations of each `taken_with` group. */
  readonly groups: readonly (readonly ReadObservation[])[];
  /** The group of each observation that has one of these, and that the protocol does not read. */
  readonly foreignGroups: ReadonlyMap<string, number>;
  /** Null when no range changes with age. */
  readonly age: ReadObservation | null;
  readonly contradictions: readonly Pair[];
  readonly faults: readonly ReadFault[];
  readonly limits: readonly ReadLimit[];
  /** The protocol's own values: what is in force while nobody has changed any. */
  readonly ownLimits: LimitsInForce;
  readonly lookBacks: readonly ReadLookBack[];
  /** The longest of the look backs, in milliseconds; 0 without any. */
  readonly longest: number;
}

/** Two observations of which `lower` must be lower: `scale * lower < factor * higher + shift`, in steps. */
export interface Pair {
  readonly lower: ReadObservation;
  readonly higher: ReadObservation;
  readonly mayBeEqual: boolean;
  readonly says: string;
  readonly scale: number;
  readonly factor: number;
  readonly shift: number;
}

/** The limits at one time, and what is to be told of those that someone changed. */
export interface LimitsInForce {
  /** In the reader's order. */
  readonly steps: readonly number[];
  readonly facts: ReadonlyMap<string, LimitInForce>;
  readonly taken: readonly Taken[];
  readonly refused: readonly Remark[];
}

export interface ReadLimit {
  readonly limit: Limit;
  readonly place: number;
}

export interface ReadLookBack {
  readonly kind: LookBackKind;
  /** Null for `held`. */
  readonly of: ReadObservation | null;
  readonly where: Judge | null;
  /** What `where` reads: while the present set lacks a need of it, or a set knows it only as a range, whether that set counts is open. */
  readonly whereReads: readonly ReadObservation[];
  /** Only for `held`. */
  readonly condition: Judge | null;
  /** In milliseconds. */
  readonly over: number;
  readonly leftOut: boolean;
  /** In milliseconds; null: no gap is too long. */
  readonly longestGap: number | null;
  /** Whether only sets that say yes count. */
  readonly asksYes: boolean;
  readonly places: {
    readonly low: number;
    readonly high: number;
    readonly sure: number;
    readonly maybe: number;
    readonly open: number;
    readonly count: number;
  };
}
