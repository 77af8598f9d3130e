import type { State } from '../../outcome/answers.ts';

/**
 * What a protocol says of every set with two numbers on the axes and everything else held: plain data, so that a worker can post it.
 *
 * Numbers on the axes are whole steps; `valueAt` gives them in the unit of the axis.
 */
export interface Plane {
  readonly protocol: {
    readonly name: string;
    readonly title: string;
    readonly edition: number;
    readonly digest: string;
  };
  /** Lowest first. */
  readonly levels: readonly Named[];
  /** In the order of the file. */
  readonly rules: readonly Named[];
  readonly x: Axis;
  readonly y: Axis;
  /** Everything that is no axis, in words: `heart rate: 80 /min`, `temperature: not taken`. */
  readonly held: readonly string[];
  /** Each answer that some cell has, once. */
  readonly answers: readonly PlaneAnswer[];
  /** Every point of the plane lies in one of them. */
  readonly cells: readonly Cell[];
}

export interface Named {
  readonly name: string;
  readonly title: string;
}

/** An observation that is a number, as an axis. */
export interface Axis extends Named {
  /** The unit's word; null for a plain number. */
  readonly unit: string | null;
  /** One step is `unitsPerStep[0] / unitsPerStep[1]` units. */
  readonly unitsPerStep: readonly [number, number];
  /** The lowest and the highest step of any age, both included. */
  readonly possible: readonly [number, number];
  /** Outside it a value is used and questioned; the possible range where nothing is questioned. */
  readonly plausible: readonly [number, number];
  /** An ordinary value; null where there is none. */
  readonly ordinary: number | null;
}

/** What is said of all points of a cell. */
export interface PlaneAnswer {
  /** Axes whose value is refused there: no body has it, or it contradicts another. It then counts as missing. */
  readonly refused: readonly string[];
  readonly applies: 'yes' | 'no' | 'unsure';
  /** Null where the protocol is not for this patient. */
  readonly level: {
    /** Index on the ladder; null: not settled, and nothing calls for more than the lowest. */
    readonly atLeast: number | null;
    readonly couldBe: number;
    readonly settled: boolean;
  } | null;
  /** In the order of the rules; empty where the protocol is not for this patient. */
  readonly states: readonly State[];
}

/** A rectangle of whole steps, all ends included. */
export interface Cell {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  /** Index among the answers. */
  readonly answer: number;
}

/** A step of an axis in its unit: `valueAt(axis, 367)` is 36.7. */
export const valueAt = ({ unitsPerStep: [units, steps] }: Axis, step: number): number =>
  (step * units) / steps;
