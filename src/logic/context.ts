import type { Condition, Operand, Protocol } from '../protocol/protocol.ts';
import type { Arithmetic } from './arithmetic.ts';
import type { Divisor, FixedComparison } from './logic.ts';
import type { NumberForm, Presence } from './number-form.ts';
import type { Logical } from './operators.ts';
import type { StepWriter } from './step-writer.ts';

/**
 * One condition in each of its logics. `certain` and `possible` are each other's opposites under *not*; so are `could` and `couldNot`'s
 * negation: `couldNot` is whether the opposite could hold.
 */
export interface Rails {
  readonly certain: Logical;
  readonly possible: Logical;
  /** As certain, but exceptions that are not certain are left aside. */
  readonly counts: Logical;
  /** Whether values of what is needed could make it hold while what only helps stays as it is. */
  readonly could: Logical;
  readonly couldNot: Logical;
  /** What the condition reads, in case it is undecided. */
  readonly presence: Presence;
}

/** What the parts of logic are written with. */
export interface Context {
  readonly protocol: Protocol;
  readonly writer: StepWriter;
  readonly arithmetic: Arithmetic;
  readonly divisors: Divisor[];
  readonly fixed: FixedComparison[];
  /** The number that an operand stands for. */
  form(operand: Operand): NumberForm;
  /** A condition, each of its parts as steps under its path. */
  rails(condition: Condition): Rails;
  /** What is missing for an observation. */
  presenceOf(observation: string): Presence;
}
