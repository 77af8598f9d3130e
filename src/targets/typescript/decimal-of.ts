import Fraction from 'fraction.js';

/** Steps as a number of their unit, for a comment: at most six decimals. */
export function decimalOf(steps: number, stepsPerUnit: Fraction | null): string {
  return String(
    Number(
      new Fraction(steps)
        .div(stepsPerUnit ?? 1)
        .valueOf()
        .toFixed(6),
    ),
  );
}
