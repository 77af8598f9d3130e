import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { faults } from './faults.ts';

// `npm run faults` puts each fault in and runs the tests; here it is only seen that each still has its place.

const source = (file: string): string => readFileSync(new URL(`../../src/${file}`, import.meta.url), 'utf8');

test('there are at least forty faults, each with a name of its own', () => {
  expect(new Set(faults.map(({ name }) => name)).size).toBe(faults.length);
  expect(faults.length).toBeGreaterThanOrEqual(40);
});

test.each(faults)('$name: its place stands once in src/$file', ({ file, find, put }) => {
  expect(source(file).split(find)).toHaveLength(2);
  expect(put).not.toBe(find);
});
