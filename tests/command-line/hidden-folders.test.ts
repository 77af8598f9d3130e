import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import { ask } from './ask.ts';

const top = mkdtempSync(join(tmpdir(), 'hidden-'));
afterAll(() => rmSync(top, { recursive: true, force: true }));

/** A folder that itself stands below a hidden one and below packages, with what a killed `new` left in it. */
const served = join(top, '.hidden', 'node_modules', 'protocols');
for (const name of ['one_threshold', '.new-a1B2c3', 'node_modules/of_others', 'deeper/.new-x/inside']) {
  mkdirSync(join(served, name), { recursive: true });
  cpSync('protocols/lessons/one_threshold', join(served, name), { recursive: true });
}
cpSync('protocols/alder_ladder', join(served, 'alder_ladder'), { recursive: true });

test('what a killed call left in a hidden folder is not listed in the rooms', async () => {
  const { protocols } = await siteBelow(served, true);
  expect(protocols.map(({ id }) => id)).toEqual(['one_threshold']);
});

test('nor is it checked; where the folder itself stands does not matter', async () => {
  const { exit, out } = await ask(['check', served, '--json']);
  expect(exit).toBe(0);
  const { files } = JSON.parse(out) as { files: { name: string }[] };
  expect(files.map(({ name }) => name)).toEqual(['alder_ladder', 'one_threshold']);
});

test('a hidden folder that is named itself is read', async () => {
  const { exit, out } = await ask(['check', join(served, '.new-a1B2c3'), '--json']);
  expect([exit, out]).toEqual([0, expect.stringContaining('one_threshold')]);
});
