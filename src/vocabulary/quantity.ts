import Fraction from 'fraction.js';
import type { Facts } from '../problems/catalogue.ts';
import type { ObservationEntry } from './observation.ts';
import { nearestUnit } from './unit-names.ts';
import { convert, roundAwayFromZero, sameDimension, unitByWord, type Unit } from './units.ts';

/** A number as it was written, exact, with its unit; without one it takes the unit of what it meets. */
export interface Quantity {
  readonly value: Fraction;
  readonly unit: Unit | null;
}

/** Why a text is no quantity: a code of the catalogue with its facts, ready to be reported. */
export type QuantityProblem =
  | {
      readonly code: 'not_a_quantity';
      readonly facts: Facts<'not_a_quantity'>;
      readonly nearMiss: string | null;
    }
  | { readonly code: 'too_many_digits'; readonly facts: Facts<'too_many_digits'>; readonly nearMiss: null }
  | {
      readonly code: 'unknown_unit';
      readonly facts: Facts<'unknown_unit'>;
      readonly nearMiss: string | null;
    };

const longest = 60;
const mostDigits = 15;
const pattern = /^(-?[0-9]+(?:\.[0-9]+)?)(?: ([^\s]+))?$/;

/**
 * Reads a number with, perhaps, a unit in the trade's words: decimal text of at most 15 significant digits, one space, the
 * unit. No exponent, no `+`, no decimal comma; a `-` may stand in front.
 *
 * `parseQuantity('38.3 °C')` is 383/10 with °C; `parseQuantity(90)` and `parseQuantity('90')` are 90 without a unit;
 * `parseQuantity('1e3')` is a problem, and so is `parseQuantity('16 years')`, with the near miss `y`.
 */
export function parseQuantity(text: string | number): Quantity | { readonly problem: QuantityProblem } {
  const written = String(text);
  const [, digits, word] = (written.length <= longest && pattern.exec(written)) || [];
  if (digits === undefined) {
    const facts = { written: written.length <= longest ? written : `${written.slice(0, longest)}…` };
    return { problem: { code: 'not_a_quantity', facts, nearMiss: mended(written) } };
  }
  if (significant(digits) > mostDigits) {
    return {
      problem: { code: 'too_many_digits', facts: { written: digits, most: mostDigits }, nearMiss: null },
    };
  }
  const unit = word === undefined ? null : unitByWord(word);
  if (unit === undefined) {
    const wanted = word ?? '';
    return { problem: { code: 'unknown_unit', facts: { unit: wanted }, nearMiss: nearestUnit(wanted) } };
  }
  return { value: new Fraction(digits), unit };
}

/** Digits after leading zeros. `significant('0.050')` is 2. */
const significant = (digits: string): number => digits.replace(/[-.]/g, '').replace(/^0+/, '').length;

/**
 * The quantity that was probably meant, where only its spelling is wrong; null when it could be read in two ways.
 *
 * `16y` is `16 y`, `37,5` is `37.5`; `1,200` stays unanswered.
 */
function mended(written: string): string | null {
  if (written.length > longest) return null;
  const spaced = written
    .trim()
    .replace(/^\+/, '')
    .replace(/^[−–]/, '-')
    .replace(/^(-?[0-9]+),([0-9]{1,2})(?![0-9])/, '$1.$2')
    .replace(/^(-?)\./, '$10.')
    .replace(/^(-?[0-9]+(?:\.[0-9]+)?)\s*(?=[^\s.,0-9])/, '$1 ')
    .replace(/\s+/g, ' ');
  const read = pattern.exec(spaced);
  if (!read || spaced === written) return null;
  return read[2] === undefined || unitByWord(read[2]) ? spaced : null;
}

const duration = /^([0-9]+(?:\.[0-9]+)?) (s|min|h|d|wk|mo|y)$/;
const perMinute = 60_000;

/**
 * A duration in whole milliseconds, exact; null when the text is none, or comes to no whole number of them.
 *
 * d is 24 h, wk 7 d, mo 30.4375 d, y 365.25 d: `parseDuration('15 min')` is 900000, `parseDuration('1 mo')` is 2629800000.
 */
export function parseDuration(text: string): number | null {
  const [, digits, word] = (text.length <= longest && duration.exec(text)) || [];
  const unit = unitByWord(word ?? '');
  if (digits === undefined || !unit || significant(digits) > mostDigits) return null;
  const milliseconds = new Fraction(digits).mul(unit.factor).mul(perMinute);
  return milliseconds.d === 1n && milliseconds.n <= Number.MAX_SAFE_INTEGER ? Number(milliseconds.n) : null;
}

/**
 * A value in whole steps of an observation (or a limit), rounded once to the nearest, ties away from zero. Without a unit
 * it is in the observation's own. Both units must measure the same.
 *
 * With a step of 0.1 °C: 38.35 is 384 steps, not exact; 98.1 °F is 367 steps, not exact; 38.3 is 383 steps, exact. A value
 * of more than 2^53 − 1 steps, far outside every possible range, becomes that many steps, not exact.
 */
export function toSteps(
  value: Fraction,
  from: Unit | null,
  { unit, stepsPerUnit }: Pick<ObservationEntry, 'unit' | 'stepsPerUnit'>,
): { steps: number; exact: boolean } {
  const inSteps = inUnit(value, from, unit).mul(stepsPerUnit);
  const rounded = roundAwayFromZero(inSteps);
  const most = BigInt(Number.MAX_SAFE_INTEGER);
  if (rounded > most) return { steps: Number.MAX_SAFE_INTEGER, exact: false };
  if (rounded < -most) return { steps: -Number.MAX_SAFE_INTEGER, exact: false };
  return { steps: Number(rounded), exact: inSteps.d === 1n };
}

function inUnit(value: Fraction, from: Unit | null, unit: Unit | null): Fraction {
  if (!from || from === unit) return value;
  if (!sameDimension(from.dimension, unit?.dimension ?? {})) {
    throw new Error(`${from.word} does not measure what ${unit?.word ?? 'a plain number'} measures`);
  }
  return unit ? convert(value, from, unit) : value.mul(from.factor);
}
