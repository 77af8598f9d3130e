import Fraction from 'fraction.js';
import type { ObservationEntry } from './observation.ts';
import { convert } from './units.ts';

/** Two observations side by side in whole numbers: `scale × lower` stands beside `factor × higher + shift`. */
export interface WholePair {
  readonly scale: number;
  readonly factor: number;
  readonly shift: number;
}

type Stepped = Pick<ObservationEntry, 'unit' | 'stepsPerUnit'>;

/**
 * Brings the steps of two observations to whole numbers of one size, so that a comparison of them is exact.
 *
 * Of two in mmHg with a step of 1 all is as it is: `{ scale: 1, factor: 1, shift: 0 }`.
 */
export function wholePair(lower: Stepped, higher: Stepped): WholePair {
  const inLower = (steps: number): Fraction => {
    const value = new Fraction(steps).div(higher.stepsPerUnit);
    const [from, to] = [higher.unit, lower.unit];
    const own = from && to && from !== to ? convert(value, from, to) : value;
    return own.mul(lower.stepsPerUnit);
  };
  const shift = inLower(0);
  const factor = inLower(1).sub(shift);
  const scale = new Fraction(shift.d).lcm(new Fraction(factor.d));
  const whole = (part: Fraction): number => part.mul(scale).valueOf();
  return { scale: whole(new Fraction(1)), factor: whole(factor), shift: whole(shift) };
}
