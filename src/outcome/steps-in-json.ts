import type { Unit } from '../vocabulary/units.ts';
import type Fraction from 'fraction.js';
import { inJson } from './decimal.ts';
import { over } from './exact.ts';

/** Something counted in steps. */
interface Stepped {
  readonly unit: Unit | null;
  readonly stepsPerUnit: Fraction;
}

/** Steps as a number in their unit, of at most six decimals: read again, it is the same step. */
export const stepsInJson = (steps: number, { stepsPerUnit: { n, d } }: Stepped): number =>
  inJson(over(steps * Number(d), n)).number;

export const unitInJson = ({ unit }: Stepped): { readonly unit?: string } =>
  unit ? { unit: unit.ucum } : {};
