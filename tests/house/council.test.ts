import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ask } from '../command-line/ask.ts';
import { allExamples, commandsOf } from './pages.ts';

// The examples of how a policy is agreed are made in a copy of the protocols in which nothing is agreed yet, one after the other.

const before = process.cwd();
let copy = '';

beforeAll(async () => {
  copy = await mkdtemp(join(tmpdir(), 'vitalwright-council-'));
  const isAgreed = (path: string): boolean =>
    /alder_wing/.test(path) && ['editions', 'record'].includes(basename(path));
  await cp('protocols', join(copy, 'protocols'), { recursive: true, filter: (path) => !isAgreed(path) });
  process.chdir(copy);
});

afterAll(async () => {
  process.chdir(before);
  await rm(copy, { recursive: true, force: true });
});

/** The words of a command, without the quotation marks around them. */
const wordsOf = (command: string): string[] =>
  [...command.matchAll(/"([^"]*)"|'([^']*)'|(\S+)/g)].map(
    ([, double, single, bare]) => double ?? single ?? bare ?? '',
  );

test('the words of a command are found', () => {
  expect(wordsOf(`npx vitalwright read a --set '{ "b": 1 }' --as "Dr Ash"`)).toEqual([
    'npx',
    'vitalwright',
    'read',
    'a',
    '--set',
    '{ "b": 1 }',
    '--as',
    'Dr Ash',
  ]);
});

test('the calls of a page print what it shows', async () => {
  const shown = allExamples()
    .filter(({ language, about }) => language === 'console' && about.get('in') === 'copy')
    .flatMap(commandsOf);
  expect(shown.length).toBeGreaterThan(0);
  // Each is made a day after the one before.
  for (const [index, { command, output }] of shown.entries()) {
    const today = `2026-03-${String(index + 2).padStart(2, '0')}`;
    const { out, err } = await ask(wordsOf(command).slice(2), '', { today, now: `${today}T08:00:00Z` });
    expect(`${out}${err}`.trimEnd(), command).toBe(output);
  }
}, 180_000);
