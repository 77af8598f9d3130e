import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { decimal, fromDecimal, inJson } from '../../src/outcome/decimal.ts';
import { asFraction, compare, minus, never, over, times, type Exact } from '../../src/outcome/exact.ts';

/** Small numbers, and such as plain numbers no longer hold when they are multiplied. */
const whole = fc.oneof(
  fc.integer({ min: -2000, max: 2000 }),
  fc.maxSafeInteger(),
  fc.constantFrom(0, 1, -1, Number.MAX_SAFE_INTEGER),
);
const bottom = fc.oneof(
  fc.integer({ min: 1, max: 400 }),
  fc.integer({ min: 1, max: Number.MAX_SAFE_INTEGER }),
);
const exact = fc.tuple(whole, bottom).map(([n, d]) => over(n, d));
const asOther = ({ n, d }: Exact): Fraction => new Fraction(BigInt(n), BigInt(d));
const fractionOf = (value: Fraction): string => `${value.s * value.n}/${value.d}`;

test('sums, products and comparisons are those of exact fractions, also beyond plain numbers', () => {
  fc.assert(
    fc.property(exact, exact, (left, right) => {
      expect(asFraction(minus(left, right))).toBe(fractionOf(asOther(left).sub(asOther(right))));
      expect(asFraction(times(left, right))).toBe(fractionOf(asOther(left).mul(asOther(right))));
      expect(Math.sign(compare(left, right))).toBe(asOther(left).compare(asOther(right)));
    }),
  );
});

test('a difference that no plain number holds is exact all the same', () => {
  const far = over(Number.MAX_SAFE_INTEGER, 2);
  expect(asFraction(minus(far, over(-Number.MAX_SAFE_INTEGER + 1, 2)))).toBe('18014398509481981/2');
});

test('never is above every number and the same as itself', () => {
  expect(compare(never, over(10 ** 15, 1))).toBeGreaterThan(0);
  expect(compare(over(10 ** 15, 1), never)).toBeLessThan(0);
  expect(compare(never, never)).toBe(0);
});

test.each([
  [200, 3, 2, '66.67'],
  [65, 1, 2, '65'],
  [1, 200, 2, '0.01'],
  [-1, 200, 2, '-0.01'],
  [-1, 201, 2, '0'],
  [480, 10, 2, '48'],
  [999_999, 1_000_000, 2, '1'],
  [5, 2, 0, '3'],
  [-5, 2, 0, '-3'],
])('%i/%i to %i decimals is %s: halves away from zero', (n, d, places, text) => {
  expect(decimal(over(n, d), places)).toBe(text);
});

test('a decimal is as near as its places allow, whatever the number', () => {
  fc.assert(
    fc.property(exact, fc.integer({ min: 0, max: 14 }), (value, places) => {
      const far = asOther(value)
        .sub(asOther(fromDecimal(decimal(value, places))))
        .abs();
      expect(far.compare(new Fraction(1n, 2n * 10n ** BigInt(places)))).toBeLessThanOrEqual(0);
    }),
  );
});

test('JSON says what was rounded away', () => {
  expect(inJson(over(200, 3))).toEqual({ number: 66.666667, exact: '200/3' });
  expect(inJson(over(367, 10))).toEqual({ number: 36.7, exact: null });
  expect(inJson(over(1, 8_000_000))).toEqual({ number: 0, exact: '1/8000000' });
});
