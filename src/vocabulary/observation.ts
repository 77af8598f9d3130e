import type Fraction from 'fraction.js';
import type { Unit } from './units.ts';

/** One band of ages with its range; both ends included, in steps. */
export interface Band {
  /** In steps of age, itself excluded; null for the last band. */
  readonly ageBelow: number | null;
  readonly low: number;
  readonly high: number;
}

/** One of the values of an observation that is no number. */
export interface Choice {
  readonly choice: string;
  readonly title: string;
  /** When to choose it. */
  readonly meaning: string | null;
}

/** An observation as the dictionary, or the protocol itself, declares it. */
export interface ObservationEntry {
  readonly name: string;
  readonly title: string;
  readonly short: string;
  readonly meaning: string | null;
  readonly kind: 'number' | 'choice' | 'several' | 'yes_no';
  /** Null for anything but a number. */
  readonly unit: Unit | null;
  /** Steps in one unit: 10 for a step of 0.1. A value is its steps divided by this. */
  readonly stepsPerUnit: Fraction;
  /** Youngest first; one band where age does not matter. Empty for anything but a number. */
  readonly possible: readonly Band[];
  /** Empty when nothing is questioned. */
  readonly plausible: readonly Band[];
  /** Steps for a number; choices otherwise (`yes` or `no`; none for a several that is ordinarily empty). Null when there is no ordinary value. */
  readonly ordinary: number | readonly string[] | null;
  /** For yes/no: `yes` and `no`. */
  readonly choices: readonly Choice[];
  readonly loinc: string | null;
  /** In milliseconds; null: it counts only at the time at which it was taken. */
  readonly goodFor: number | null;
  readonly takenWith: string | null;
  readonly standing: boolean;
  readonly setBy: string | null;
  /** Steps, or the choice; null when an unstated fact is missing. */
  readonly ifNotStated: number | string | null;
  readonly alsoCalled: readonly string[];
}

/** Two observations that cannot both be right when the first is not lower than the second. */
export interface Contradiction {
  readonly lower: string;
  readonly higher: string;
  readonly mayBeEqual: boolean;
  readonly says: string;
}
