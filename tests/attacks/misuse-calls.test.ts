import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { callNames } from '../../src/command-line/calls.ts';

const tables = ['misuse.test.ts', 'misuse-record.test.ts'].map((file) =>
  readFileSync(new URL(file, import.meta.url), 'utf8'),
);

/** How many rows the two tables of misuse have for a call: what stands at the beginning of a row is `call: what is wrong`. */
const rowsOf = (call: string): number =>
  tables.reduce((sum, text) => sum + (text.split(`'${call}: `).length - 1), 0);

test.each(callNames)('the tables of misuse have rows for %s', (call) => {
  expect(rowsOf(call)).toBeGreaterThanOrEqual(3);
});

test('a call that is not in them has none', () => {
  expect(callNames.length).toBeGreaterThan(10);
  expect(rowsOf('no-such-call')).toBe(0);
});
