import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { siteBelow } from '../../src/command-line/site-protocols.ts';
import type { SiteInForce } from '../../src/command-line/site-in-force.ts';
import { readEdition } from '../../src/index.ts';
import { terminalAt } from './terminal-at.ts';
import { inForce, place, steps, twoInForce, type Place } from './policy.ts';

// What the rooms get of a ward with a record: what is in force, beside the draft.

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

test('a ward without a record is read from its text', async () => {
  expect(await inForceAt(await place(), tuesday)).toBe(undefined);
});

test('a site of files alone reads with what was in force when it was made, and says that it knows nothing since', async () => {
  const made = await inForce();
  const onFiles = async (now: string): Promise<SiteInForce | undefined> => {
    const { protocols } = await siteBelow(made.protocols, false, terminalAt(now));
    return protocols.find(({ id }) => id === 'small_ward')?.in_force;
  };
  const since = /made at 2026-03-03 12:00 UTC\. They cannot know what was put in force or withdrawn since/;
  expect(await onFiles(tuesday)).toMatchObject({
    ...(await inForceAt(made, tuesday)),
    warnings: [expect.stringMatching(since)],
  });
  expect(await onFiles('2026-03-03T07:59:59Z')).toEqual({
    kind: 'none',
    says: [
      'No policy in force: use the paper policy.',
      expect.stringContaining('made at 2026-03-03 07:59:59 UTC'),
    ],
  });
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
