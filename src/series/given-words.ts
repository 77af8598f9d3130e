import type Fraction from 'fraction.js';

/** Something counted in steps. */
export interface Stepped {
  readonly stepsPerUnit: Fraction;
}

/**
 * Steps as a decimal number in their unit: exact where that needs at most six decimals, else rounded to six.
 *
 * `stepsAsText(367, temperature)` is `36.7` with ten steps in a degree.
 */
export function stepsAsText(steps: number, { stepsPerUnit }: Stepped): string {
  const value = (steps * Number(stepsPerUnit.d)) / Number(stepsPerUnit.n);
  return Number.isInteger(value) ? String(value) : value.toFixed(6).replace(/\.?0+$/, '');
}

/**
 * The words for a range: `96 to 104`; `104, from 96`; `at least 96`. A part that was not said is null.
 */
export function rangeAsText(value: string | null, low: string | null, high: string | null): string {
  if (value === null) {
    if (low !== null && high !== null) return `${low} to ${high}`;
    return low === null ? `at most ${high ?? ''}` : `at least ${low}`;
  }
  const ends = [low === null ? '' : ` from ${low}`, high === null ? '' : ` to ${high}`].join('');
  return ends === '' ? value : `${value},${ends}`;
}

/** A number's words with its unit after them, where one is said. */
export const withUnit = (words: string, unit: string | null): string =>
  unit === null || unit === '' ? words : `${words} ${unit}`;
