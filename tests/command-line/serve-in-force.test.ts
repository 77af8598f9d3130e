import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import type { Terminal } from '../../src/command-line/terminal.ts';
import { readEdition } from '../../src/index.ts';
import { inForce, place, steps, twoInForce, type Place } from './policy.ts';

// What the rooms get of a ward with a record: what is in force, beside the draft.

const terminalAt = (now: string, seenFolder: string | null = null): Terminal => ({
  out: () => undefined,
  err: () => undefined,
  stdin: () => Promise.resolve(''),
  width: 80,
  colour: false,
  today: now.slice(0, 10),
  now,
  seenFolder,
});

const tuesday = '2026-03-03T12:00:00Z';

async function inForceAt({ protocols }: Place, now: string, seenFolder: string | null = null) {
  const { protocols: all } = await siteBelow(protocols, true, terminalAt(now, seenFolder));
  return all.find(({ id }) => id === 'small_ward')?.in_force;
}

test('what is in force comes as the sealed edition, with since when; the draft stays beside it', async () => {
  const made = await twoInForce();
  const found = await inForceAt(made, '2026-03-10T07:59:59Z');
  expect(found).toMatchObject({
    kind: 'policy',
    says: 'Edition 1 is in force since 2026-03-03 08:00 UTC.',
    warnings: [],
  });
  const text = found?.kind === 'policy' ? found.text : '';
  expect(text).toBe(await readFile(join(made.ward, 'editions', '1.yaml'), 'utf8'));
  expect(readEdition('1.yaml', text).reader).not.toBe(null);
  expect(readEdition('1.yaml', text.replace('at_most: 90', 'at_most: 80')).reader).toBe(null);
});

test('a ward without a record is read from its text, and so is a site of files alone', async () => {
  const made = await place();
  expect(await inForceAt(made, tuesday)).toBe(undefined);
  const { protocols } = await siteBelow((await inForce()).protocols, false);
  expect(protocols.find(({ id }) => id === 'small_ward')?.in_force).toBe(undefined);
});

test('nothing in force: the paper policy, and what applies instead', async () => {
  const made = await inForce();
  expect(await inForceAt(made, '2026-03-03T07:59:59Z')).toEqual({
    kind: 'none',
    says: ['No policy in force: use the paper policy.'],
  });
  await steps(tuesday, [
    'withdraw',
    made.ward,
    '--by',
    'Dr Ash',
    '--because',
    'Wrong.',
    '--instead',
    'The red folder.',
  ]);
  expect(await inForceAt(made, tuesday)).toEqual({
    kind: 'none',
    says: [
      'No policy in force: use the paper policy.',
      'It was withdrawn: Wrong.',
      'Instead: The red folder.',
    ],
  });
});

test('an edition that was changed is not given out; what was checked before is, with a warning', async () => {
  const made = await inForce();
  const before = await inForceAt(made, tuesday, made.seen);
  const path = join(made.ward, 'editions', '1.yaml');
  await writeFile(path, (await readFile(path, 'utf8')).replace('at_most: 90', 'at_most: 80'));
  const after = await inForceAt(made, tuesday, made.seen);
  expect(after).toMatchObject({ ...before, warnings: [expect.stringContaining('is damaged or gone')] });
  expect(await inForceAt(made, tuesday)).toMatchObject({ kind: 'none' });
});
