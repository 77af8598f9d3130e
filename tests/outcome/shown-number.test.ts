import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compare, minus, over, zero } from '../../src/outcome/exact.ts';
import { fromDecimal } from '../../src/outcome/decimal.ts';
import { beside, difference, formatOf } from '../../src/outcome/shown-number.ts';
import { unitByWord } from '../../src/vocabulary/units.ts';

const plain = formatOf(null);
const years = formatOf(unitByWord('y') ?? null);
const age = (steps: number): ReturnType<typeof over> => over(steps, 5844);

test.each([
  [over(194, 3), over(65, 1), '64.67', '65', '0.33'],
  [over(64_996, 1000), over(65, 1), '64.996', '65', '0.004'],
  [over(650_000_001, 10_000_000), over(65, 1), '65.0000001', '65', '0.0000001'],
  [over(65, 1), over(65, 1), '65', '65', '0'],
  [over(905, 1000), over(904, 1000), '0.91', '0.904', '0.001'],
  [over(2, 3), over(666_667, 1_000_000), '0.6666667', '0.666667', '0.0000003'],
])('%o beside %o', (value, to, shown, edge, gap) => {
  expect(beside([value], to, plain)).toEqual({ values: [shown], to: edge });
  expect(difference(value, to, plain)).toBe(gap);
});

test('rounding never hides on which side a number lies, nor that two numbers differ', () => {
  const number = fc.tuple(fc.integer({ min: -9000, max: 9000 }), fc.integer({ min: 1, max: 9000 }));
  const near = fc.tuple(number, fc.constantFrom(0, 1, 3, 1000, 999_999, 10 ** 9)).map(([[n, d], apart]) => {
    const value = over(n, d);
    return [value, apart === 0 ? value : minus(value, over(1, apart))] as const;
  });
  const any = fc.tuple(number, number).map(([[a, b], [c, d]]) => [over(a, b), over(c, d)] as const);
  fc.assert(
    fc.property(fc.oneof(near, any), ([value, to]) => {
      const { values, to: edge } = beside([value], to, plain);
      const shown = compare(fromDecimal(values[0] ?? ''), fromDecimal(edge));
      expect(Math.sign(shown)).toBe(Math.sign(compare(value, to)));
      const gap = fromDecimal(difference(value, to, plain));
      expect(compare(gap, zero) === 0).toBe(compare(value, to) === 0);
    }),
    { numRuns: 500 },
  );
});

test.each([
  [5844 * 58, '58 y'],
  [487 * 7, '7 mo'],
  [487 * 18, '18 mo'],
  [487 * 191, '15 y 11 mo'],
  [16 * 12, '12 d'],
  [16 * 12 + 8, '12.5 d'],
  [0, '0 d'],
  [5844 * 3 + 1000, '3.17 y'],
  [487 * 7 + 100, '7.21 mo'],
])('an age of %i steps is %s', (steps, text) => {
  expect(years.write(age(steps), 2).text).toBe(text);
});

test('one step below the sixteenth birthday does not seem to be sixteen years', () => {
  const { values, to } = beside([age(16 * 5844 - 1)], over(16, 1), years);
  expect([values[0], to]).toEqual(['15.9998 y', '16 y']);
  expect(difference(age(16 * 5844 - 1), over(16, 1), years)).toBe('0.06 d');
});
