import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { compare, nearest, never, over, read, show, work } from './fraction.ts';

const files = ['fraction.ts', 'series.ts', 'oracle.ts'];
/** Lines that say something to the machine: neither empty nor a comment. */
const codeOf = (file: string): string[] => {
  const text = readFileSync(new URL(file, import.meta.url), 'utf8');
  return text.split('\n').filter((line) => !/^\s*(?:\/\/.*|\/?\*.*)?$/.test(line));
};

test('the judge stays small enough to be read in one sitting: at most 300 lines of code', () => {
  const counted = files.map((file) => codeOf(file).length);
  expect(counted.every((count) => count > 0)).toBe(true);
  expect(counted.reduce((sum, count) => sum + count)).toBeLessThanOrEqual(300);
});

test('a comment is not counted, and code beside one is', () => {
  expect(codeOf('judge.test.ts')).toContain("const files = ['fraction.ts', 'series.ts', 'oracle.ts'];");
  expect(codeOf('judge.test.ts').filter((line) => line.startsWith('/**'))).toEqual([]);
});

test.each([
  ['1 + 2 * 3', '7'],
  ['(1 + 2) * 3', '9'],
  ['7 - 4 - 2', '1'],
  ['12 / 2 / 3', '2'],
  ['-2 * -3', '6'],
  ['-(2 - 5) + -1', '2'],
  ['1 / 3 + 1 / 6', '1/2'],
  ['0.1 + 0.2', '3/10'],
  ['2 * (x - 0.5) / x', '3/2'],
  ['-x', '-2'],
  ['2.5-x', '1/2'],
  ['x - none', 'no value'],
])('%s comes to %s', (formula, expected) => {
  const found = work(formula, (name) => (name === 'x' ? read(2) : null));
  expect(found ? show(found) : 'no value').toBe(expected);
});

test.each([
  ['36.5', '73/2'],
  ['-0.5', '-1/2'],
  ['38.3 °C', '383/10'],
  ['0', '0'],
])('%s is read as %s', (text, expected) => {
  expect(show(read(text))).toBe(expected);
});

test('what is no number is not read as one', () => {
  expect(() => read('alert')).toThrow('alert');
});

test.each([
  ['2.5', 3],
  ['-2.5', -3],
  ['2.4', 2],
  ['-2.6', -3],
  ['0.5', 1],
  ['0', 0],
])('%s is nearest to %d', (text, expected) => {
  expect(nearest(read(text)) - expected).toBe(0);
});

test('never is above every number, and equal to itself', () => {
  expect(compare(never, read(999_999_999))).toBeGreaterThan(0);
  expect(compare(read(0), never)).toBeLessThan(0);
  expect(compare(never, never)).toBe(0);
  expect(compare(over(read(1), read(3)), over(read(2), read(6)))).toBe(0);
});
