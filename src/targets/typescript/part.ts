import type { Operator } from '../../logic/operators.ts';
import type { Cases, Value } from './cases.ts';
import type { Code } from './code.ts';

/**
 * One part of a calculation. Equal parts are one and the same node, so that two that are equal can be seen to be: where what is certain
 * and what is possible meet, only one of them is written.
 */
export interface Part {
  readonly id: number;
  readonly type: 'number' | 'truth';
  readonly is:
    | { readonly kind: 'constant'; readonly value: Value }
    /** Code that reads an input. */
    | { readonly kind: 'input'; readonly code: Code }
    | { readonly kind: 'operation'; readonly operator: Operator; readonly of: readonly Part[] }
    /** An answer by where one whole number lies. */
    | { readonly kind: 'cases'; readonly of: Part; readonly cases: Cases };
}
