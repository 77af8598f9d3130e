import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));

/** Every file that is loaded at once with a file of the bundle, and how many characters of code they are. */
function loadedWith(file: string, found = new Map<string, number>()): ReadonlyMap<string, number> {
  if (found.has(file)) return found;
  const code = readFileSync(join(dist, file), 'utf8');
  found.set(file, code.length);
  for (const [, name = ''] of code.matchAll(/\b(?:from|import)\s*["'](\.[^"']+)["']/g))
    loadedWith(join(dirname(file), name), found);
  return found;
}

const size = (files: ReadonlyMap<string, number>): number =>
  [...files.values()].reduce((sum, each) => sum + each, 0);

const chunk = (name: RegExp): string =>
  join('chunks', readdirSync(join(dist, 'chunks')).find((file) => name.test(file)) ?? 'none');

// How long the command line takes to start is mostly how much code it reads; `npm run speed` measures the time itself.

test('help is told from little code', () => {
  const files = loadedWith('main.js');
  expect([...files.keys()]).toContain('main.js');
  expect(files.size).toBeGreaterThan(1);
  expect(size(files)).toBeLessThan(30_000);
});

test('a reading loads neither the rooms nor the other calls, and comes in few files', () => {
  const files = loadedWith(chunk(/^read-[\w-]{8}\.js$/));
  expect([...files.keys()].some((file) => file.startsWith('chunks/reading-'))).toBe(true);
  expect([...files.keys()].filter((file) => /(check|serve|seal|build|ward-policy)-/.test(file))).toEqual([]);
  expect(files.size).toBeLessThan(25);
  expect(size(files)).toBeLessThan(1_300_000);
});
