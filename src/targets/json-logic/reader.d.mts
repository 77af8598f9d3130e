import type { LogicExpression, LogicFile } from '../../shape/generated/types.ts';

/** Input values by their names. */
export type Inputs = Readonly<Record<string, number>>;

/** Applies a JSON Logic expression to data, as `apply` of any library does. */
export type Apply = (is: LogicExpression, data: Readonly<Record<string, unknown>>) => unknown;

/** The inputs of a logic file from one set, and the names of the values that were refused. Throws at whatever it cannot read. */
export function setToInputs(
  file: LogicFile,
  apply: Apply,
  set: Readonly<Record<string, unknown>>,
  others?: Inputs,
): { readonly inputs: Inputs; readonly refused: readonly string[] };

export interface LogicAnswer {
  readonly applies: 'yes' | 'no' | 'unsure';
  readonly level: {
    readonly at_least: string | null;
    readonly could_be: string;
    readonly settled: boolean;
  } | null;
  readonly rules: Readonly<Record<string, 'met' | 'not_met' | 'undecided'>>;
  readonly measures: Readonly<Record<string, { readonly low: number; readonly high: number } | null>>;
}

/**
 * What the file answers to inputs. `wide` holds them with earlier values counted as missing; without it only the faults of technique of
 * this one set make it wider.
 */
export function answersOf(file: LogicFile, apply: Apply, inputs: Inputs, wide?: Inputs): LogicAnswer;
