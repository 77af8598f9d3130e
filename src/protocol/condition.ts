import type Fraction from 'fraction.js';
import type { Path } from '../problems/place.ts';
import type { Unit } from '../vocabulary/units.ts';

/** What a comparison or a formula can be about. */
export type Operand = NumberOperand | NamedOperand;

export interface NumberOperand {
  readonly kind: 'number';
  readonly value: Fraction;
  /** The unit that the value is in; null for a plain number, which takes the unit of what it meets. */
  readonly unit: Unit | null;
}

export interface NamedOperand {
  readonly kind: 'observation' | 'limit' | 'measure';
  readonly name: string;
}

export type Condition =
  | { readonly kind: 'all' | 'any' | 'none'; readonly of: readonly Condition[]; readonly path: Path }
  | {
      readonly kind: 'at_least_of';
      readonly count: number;
      readonly of: readonly Condition[];
      readonly path: Path;
    }
  | { readonly kind: 'rule'; readonly rule: string; readonly path: Path }
  | Comparison;

export type Comparison = NumberComparison | ChoiceComparison | FactComparison;

/** `between` is two of these. */
export interface NumberComparison {
  readonly kind: 'compare';
  readonly subject: NamedOperand & { readonly kind: 'observation' | 'measure' };
  readonly how: 'below' | 'above' | 'at_most' | 'at_least';
  readonly to: Operand;
  readonly path: Path;
}

/** Holds when the observation is one of the choices; of several: when at least one of them is in. */
export interface ChoiceComparison {
  readonly kind: 'one_of';
  readonly observation: string;
  readonly choices: readonly string[];
  readonly path: Path;
}

export interface FactComparison {
  readonly kind: 'known' | 'unobtainable';
  readonly observation: string;
  /** What is asked for. */
  readonly is: boolean;
  readonly path: Path;
}
