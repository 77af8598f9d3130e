import Fraction from 'fraction.js';
import { unitByWord, type Unit } from './units.ts';

/**
 * How ages are counted everywhere: in years, on a sixteenth of a day, so that years (365.25 d), months (30.4375 d), weeks
 * and days all fall on it. A year is 5844 steps, a month 487, a day 16.
 */
export const ageScale: { readonly unit: Unit; readonly stepsPerUnit: Fraction } = Object.freeze({
  unit: unitByWord('y') as Unit,
  stepsPerUnit: new Fraction(5844),
});
