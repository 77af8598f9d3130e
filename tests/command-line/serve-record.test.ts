import { readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { siteAssets } from '../../src/command-line/site-assets.ts';
import { editionAt } from '../../src/command-line/site-editions.ts';
import { siteBelow, type SiteProtocol } from '../../src/command-line/site-protocols.ts';
import { readEdition, type SiteRecord } from '../../src/index.ts';
import { approval, at, inForce, place, steps, twoInForce, type Place } from './policy.ts';
import { terminalAt } from './terminal-at.ts';

// What a room in which is decided gets: the sealed editions, and what the record says of this moment.

const tuesday = '2026-03-03T12:00:00Z';

async function wardAt({ protocols }: Place, now: string, seen: string | null = null): Promise<SiteProtocol> {
  const { protocols: all } = await siteBelow(protocols, true, terminalAt(now, seen));
  const ward = all.find(({ id }) => id === 'small_ward');
  if (!ward) throw new Error('the ward is not there');
  return ward;
}

const recordAt = async (made: Place, now: string, seen: string | null = null): Promise<SiteRecord> => {
  const { record } = await wardAt(made, now, seen);
  if (!record) throw new Error('the ward has no record');
  return record;
};

const withdrawing = (ward: string, ...more: readonly string[]): readonly string[] =>
  ['withdraw', ward, '--by', 'Sister Birch', '--because', 'Wrong.', '--instead', 'Paper.'].concat(more);

test('sealed editions come with what their heads say, and their texts by their addresses', async () => {
  const made = await twoInForce();
  const { editions = [] } = await wardAt(made, tuesday);
  const texts = await Promise.all(editions.map(({ address }) => editionAt(made.protocols, address)));
  const files = ['1.yaml', '2.yaml'].map((name) => readFile(join(made.ward, 'editions', name), 'utf8'));
  expect(texts).toEqual(await Promise.all(files));
  const digests = texts
    .map((text) => readEdition('edition', text ?? '').reader)
    .map((reader) => reader && 'members' in reader && reader.digest);
  expect(editions).toEqual(
    [1, 2].map((edition, index) => ({
      edition,
      digest: digests[index],
      logic_digest: expect.stringMatching(/^sha256:[0-9a-f]{64}$/),
      sealed_on: ['2026-03-02', '2026-03-09'][index],
      authors: ['Dr Elm'],
      file: `small_ward/editions/${edition}.yaml`,
      address: `editions/small_ward/${edition}.yaml`,
    })),
  );
});

test('without a sealed edition and without a record, neither is told', async () => {
  const ward = await wardAt(await place(), tuesday);
  expect([Object.hasOwn(ward, 'editions'), Object.hasOwn(ward, 'record')]).toEqual([false, false]);
});

test.each([
  'editions/small_ward/2.yaml',
  'editions/small_ward/01.yaml',
  'editions/small_ward/1.yaml/',
  'editions/small_ward/../small_ward/1.yaml',
  'editions/small_ward',
  'small_ward/editions/1.yaml',
  'editions/small_ward/ward.yaml',
  'editions/small_ward/3.yaml',
])('%s is no sealed edition', async (address) => {
  const made = await inForce();
  await symlink(join(made.ward, 'editions', '1.yaml'), join(made.ward, 'editions', '3.yaml'));
  expect(await editionAt(made.protocols, 'editions/small_ward/1.yaml')).not.toBe(null);
  expect(await editionAt(made.protocols, address)).toBe(null);
});

test('the record says what is in force, who may approve, how far each edition is approved, and every entry', async () => {
  const made = await inForce();
  await steps(tuesday, withdrawing(made.ward, '--from', '2026-03-05T08:00:00Z'));
  const record = await recordAt(made, tuesday);
  expect(record).toMatchObject({
    holds: true,
    problems: [],
    in_force: { edition: 1, since: '2026-03-03 08:00 UTC', by: 'Dr Ash', because: 'Agreed by the council.' },
    withdrawn: null,
    planned: [],
    ends: { since: '2026-03-05 08:00 UTC', instead: 'Paper.' },
    approvers: {
      signing: false,
      needs: [
        { role: 'Doctor', people: 1 },
        { role: 'Nurse', people: 1 },
      ],
    },
    editions: [
      {
        edition: 1,
        kind: 'ward',
        is_approved: true,
        lacking: [],
        approved: [
          { by: 'Dr Ash', role: 'Doctor' },
          { by: 'Sister Birch', role: 'Nurse' },
        ],
      },
    ],
  });
  expect(record.entries.map(({ says, reasons }) => [says, ...reasons])).toEqual([
    [
      'Dr Ash and Sister Birch agreed who may approve: Dr Ash (Doctor), Sister Birch (Nurse) and Dr Elm (Doctor).',
      'Minute 1, of 2026-03-02.',
    ],
    ['Dr Ash (Doctor) approved edition 1.', 'Minute 2, of 2026-03-02.'],
    ['Sister Birch (Nurse) approved edition 1.', 'Minute 2, of 2026-03-02.'],
    ['Dr Ash put edition 1 in force, from 2026-03-03 08:00 UTC.', 'Why: Agreed by the council.'],
    ['Sister Birch withdrew the policy, from 2026-03-05 08:00 UTC.', 'Why: Wrong.', 'Instead: Paper.'],
  ]);
  const after = await recordAt(made, '2026-03-05T08:00:00Z');
  expect(after).toMatchObject({ in_force: null, ends: null, withdrawn: { instead: 'Paper.' } });
});

test('what is put in force for later is planned, until it has begun or is withdrawn before', async () => {
  const made = await twoInForce();
  const sunday = '2026-03-09T12:00:00Z';
  expect(await recordAt(made, sunday)).toMatchObject({ in_force: { edition: 1 }, planned: [{ edition: 2 }] });
  expect(await recordAt(made, '2026-03-10T08:00:00Z')).toMatchObject({
    in_force: { edition: 2 },
    planned: [],
  });
  await steps('2026-03-10T09:00:00Z', withdrawing(made.ward));
  expect(await recordAt(made, '2026-03-10T08:59:00Z')).toMatchObject({ in_force: { edition: 2 } });
  expect(await recordAt(made, '2026-03-09T12:00:00Z')).toMatchObject({ planned: [{ edition: 2 }] });
});

test('an edition that still needs approvals says which; one that was changed can be neither approved nor put in force', async () => {
  const made = await inForce();
  const path = join(made.ward, 'editions', '2.yaml');
  await writeFile(
    join(made.ward, 'ward.yaml'),
    (await readFile(join(made.ward, 'ward.yaml'), 'utf8')).replace('edition: 1\n', 'edition: 2\n'),
  );
  await steps(tuesday, ['seal', made.ward, '--author', 'Dr Elm']);
  await steps(tuesday, approval(made.ward, 2, 'Dr Ash', 'Doctor'));
  expect((await recordAt(made, tuesday)).editions[1]).toMatchObject({
    kind: 'ward',
    is_approved: false,
    lacking: [{ role: 'Nurse', people: 1 }],
    says: 'Approvals still needed: 1 × Nurse.',
  });
  await writeFile(path, (await readFile(path, 'utf8')).replace('A small ward', 'A smaller ward'));
  expect((await recordAt(made, tuesday)).editions[1]).toMatchObject({
    kind: null,
    is_approved: false,
    approved: [],
    says: expect.stringContaining('changed'),
  });
});

test('of a record that does not hold nothing is told but why', async () => {
  const made = await inForce();
  await recordAt(made, tuesday, made.seen);
  await rm(join(made.ward, 'record', '4.json'));
  expect(await recordAt(made, tuesday, made.seen)).toMatchObject({
    holds: false,
    head: null,
    in_force: null,
    entries: [],
    problems: [
      expect.stringContaining('4 entries of this record have been read here before; now there are 3.'),
    ],
  });
  expect((await at(tuesday, ['check', made.ward], made.seen)).exit).toBe(1);
});

test('a site of files alone holds each sealed edition at its address', async () => {
  const made = await twoInForce();
  const assets = await siteAssets(made.protocols, terminalAt(tuesday));
  expect(assets.map(({ fileName }) => fileName)).toEqual([
    'protocols.json',
    'editions/small_ward/1.yaml',
    'editions/small_ward/2.yaml',
    'editions/one_threshold/1.yaml',
  ]);
  for (const { fileName, source } of assets.slice(1))
    expect(source).toBe(await editionAt(made.protocols, fileName));
});
