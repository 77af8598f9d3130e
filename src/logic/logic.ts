import type { Path } from '../problems/place.ts';
import type { NumberComparison } from '../protocol/protocol.ts';
import type { Input } from './inputs.ts';
import type { Logical } from './operators.ts';

/**
 * A protocol as logic: an ordered list of named steps over inputs, each step over inputs and earlier steps.
 *
 * Its steps say what is certain and what is possible; see schema/reference/language.md.
 */
export interface Logic {
  readonly protocol: string;
  readonly edition: number;
  readonly digest: string;
  readonly inputs: readonly Input[];
  readonly steps: readonly Step[];
  readonly applies: { readonly certain: Logical; readonly possible: Logical };
  readonly rules: readonly RuleLogic[];
  readonly measures: readonly MeasureLogic[];
  /** Indices on the ladder; −1 where no rule calls for any. */
  readonly levels: { readonly raised: Logical; readonly could: Logical; readonly floor: Logical };
  /** How each comparison and each condition with parts stands, by the path of the condition. */
  readonly conditions: ReadonlyMap<string, { readonly certain: Logical; readonly possible: Logical }>;
  readonly partitions: readonly {
    readonly name: string;
    readonly of: readonly { readonly certain: Logical; readonly possible: Logical }[];
  }[];
  readonly divisors: readonly Divisor[];
  readonly fixed: readonly FixedComparison[];
}

/** A comparison that holds for every possible set, or for none. */
export interface FixedComparison {
  readonly comparison: NumberComparison;
  readonly holds: boolean;
}

export interface Step {
  readonly name: string;
  readonly is: Logical;
}

/** Where each answer about a rule stands. */
export interface RuleLogic {
  readonly rule: string;
  readonly certain: Logical;
  readonly possible: Logical;
  readonly counts: Logical;
  readonly could: Logical;
  readonly explained: { readonly certain: Logical; readonly possible: Logical };
  /** Certain only: nothing is said while it is merely possible. */
  readonly notReliable: Logical;
}

/** Where a measure's value stands: the top over its scale, divided by the bottom over its own. The bottom is 1 unless the measure is a quotient. */
export interface MeasureLogic {
  readonly measure: string;
  readonly low: Logical;
  readonly high: Logical;
  readonly bottomLow: Logical;
  readonly bottomHigh: Logical;
  readonly topScale: bigint;
  readonly bottomScale: bigint;
  readonly sure: Logical;
  readonly maybe: Logical;
}

/** A divisor that must be above zero, where its least possible value alone does not show it. */
export interface Divisor {
  readonly measure: string;
  readonly path: Path;
  /** Whether it is surely, and whether it may be, zero or less. */
  readonly certain: Logical;
  readonly possible: Logical;
}

/** The path of a part as the name of its steps: `rules/0/when/systolic/below`. */
export const stepName = (path: Path): string => path.join('/');
