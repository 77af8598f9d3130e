import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { SiteProtocol } from '../../src/command-line/site-protocols.ts';
import type { StoredResults } from '../../src/index.ts';
import { digestOfText } from '../../src/protocol/digest.ts';
import { at, draft, inForce, type Place } from './policy.ts';

// The rooms as files, with what was worked out about the drafts.

const tuesday = '2026-03-03T12:00:00Z';

let made: Place;
let out: string;
let site: { saves: boolean; stored: boolean; protocols: SiteProtocol[] };
let stored: StoredResults;

/** Edition 1 in force, and a draft beside it whose protocol calls at another number. */
async function changedWard(): Promise<Place> {
  const before = await inForce();
  // What is made for a test is gone after the first of them.
  const root = await mkdtemp(join(tmpdir(), 'vitalwright-build-site-'));
  await cp(dirname(before.protocols), root, { recursive: true });
  const protocols = join(root, 'protocols');
  const place = { protocols, ward: join(protocols, 'small_ward'), seen: join(root, 'seen') };
  const path = join(place.protocols, 'one_threshold', 'protocol.yaml');
  const text = await readFile(path, 'utf8');
  await writeFile(path, text.replace('edition: 1', 'edition: 2').replaceAll('at_most: 90', 'at_most: 92'));
  await draft(place, 2);
  const ward = join(place.ward, 'ward.yaml');
  await writeFile(
    ward,
    (await readFile(ward, 'utf8')).replace('one_threshold, edition: 1', 'one_threshold, edition: 2'),
  );
  return place;
}

beforeAll(async () => {
  made = await changedWard();
  out = join(dirname(made.protocols), 'rooms');
  const answer = await at(tuesday, ['build', made.protocols, '--to', 'site', '--out', out], made.seen);
  if (answer.exit !== 0) throw new Error(answer.err);
  site = JSON.parse(await readFile(join(out, 'protocols.json'), 'utf8')) as typeof site;
  stored = JSON.parse(await readFile(join(out, 'stored.json'), 'utf8')) as StoredResults;
  return async () => rm(dirname(made.protocols), { recursive: true, force: true });
}, 120_000);

test('the rooms stand there with the protocols of the folder and no others, and can save nothing', async () => {
  expect((await readdir(out)).toSorted()).toEqual([
    'assets',
    'editions',
    'index.html',
    'protocols.json',
    'stored.json',
  ]);
  expect({ saves: site.saves, stored: site.stored }).toEqual({ saves: false, stored: true });
  expect(site.protocols.map(({ id }) => id)).toEqual(['small_ward', 'one_threshold']);
  expect((await readdir(join(out, 'editions'), { recursive: true })).toSorted()).toEqual([
    'one_threshold',
    'one_threshold/1.yaml',
    'small_ward',
    'small_ward/1.yaml',
  ]);
  expect((await readdir(dirname(out))).filter((name) => name.startsWith('.'))).toEqual([]);
});

test('each draft is compared with the edition in force, or the latest sealed, in the words of the command line', async () => {
  const [ward] = stored.drafts['small_ward']?.parts ?? [];
  const [alone] = stored.drafts['one_threshold']?.parts ?? [];
  const { out: said } = await at(tuesday, ['compare', `${made.ward}@1`, made.ward, '--json'], made.seen);
  expect(ward).toMatchObject({
    title: 'Compared with edition 1',
    says: (JSON.parse(said) as { says: string }).says,
  });
  const lines = alone?.lines.map(({ says }) => says) ?? [];
  expect(lines).toContainEqual(expect.stringMatching(/^Higher: “.*” becomes “.*”\.$/));
  expect(alone?.lines.flatMap(({ more }) => more)).toContainEqual(
    expect.stringMatching(/^For example: .*9[12]/),
  );
});

test('a protocol comes with its requirements, its findings and its unguarded changes; a ward policy says where they are asked', () => {
  const titlesOf = (id: string): string[] | undefined => stored.drafts[id]?.parts.map(({ title }) => title);
  expect(titlesOf('one_threshold')).toEqual([
    'Compared with edition 1',
    'What must always hold',
    'What the rules do together',
    'Small changes that no case notices',
  ]);
  expect(stored.drafts['one_threshold']?.parts[1]?.says).toMatch(/^\d of \d are proven\./);
  expect(titlesOf('small_ward')).toHaveLength(3);
});

test('each result names every text that it is of, and their digests are those of what stands beside it', async () => {
  const { of = [], digest } = stored.drafts['small_ward'] ?? {};
  expect(of.map(({ file }) => file)).toEqual([
    'small_ward/ward.yaml',
    'small_ward/cases.yaml',
    'alder_ladder/ladder.yaml',
    'one_threshold/protocol.yaml',
    'small_ward/editions/1.yaml',
  ]);
  expect(digest).toBe(digestOfText(JSON.stringify(of)));
  const edition = await readFile(join(out, 'editions', 'small_ward', '1.yaml'), 'utf8');
  expect(of.at(-1)?.digest).toBe(digestOfText(edition));
  expect(of[0]?.digest).toBe(digestOfText(site.protocols[0]?.text ?? ''));
  expect(stored.drafts['one_threshold']?.of.map(({ file }) => file)).toEqual([
    'one_threshold/protocol.yaml',
    'one_threshold/cases.yaml',
    'alder_ladder/ladder.yaml',
    'one_threshold/editions/1.yaml',
  ]);
});

test('nothing that stands somewhere is written over, and what cannot be asked is said', async () => {
  const around = dirname(out);
  await writeFile(join(around, 'a_file'), 'mine');
  await mkdir(join(around, 'full'), { recursive: true });
  await writeFile(join(around, 'full', 'mine.txt'), 'mine');
  const rows: readonly (readonly [readonly string[], RegExp])[] = [
    [[made.protocols], /--out FOLDER/],
    [[made.protocols, '--out', ''], /--out FOLDER/],
    [[made.protocols, '--out', join(around, 'a_file')], /is a file: name a new folder/],
    [[made.protocols, '--out', join(around, 'full')], /is not empty: name a new folder/],
    [[made.protocols, '--out', join(around, 'no', 'where')], /There is no folder ".*no" to write into/],
    [[join(around, 'nothing'), '--out', join(around, 'new')], /There is no folder ".*nothing"/],
    [[join(around, 'a_file'), '--out', join(around, 'new')], /There is no folder ".*a_file"/],
    [[made.protocols, made.ward, '--out', join(around, 'new')], /At most one folder/],
    [[made.protocols, '--out', join(around, 'new'), '--ask', 'rule:x'], /--ask is for --to smt-lib alone/],
  ];
  for (const [args, says] of rows) {
    const { exit, out: said, err } = await at(tuesday, ['build', ...args, '--to', 'site']);
    expect({ exit, said }).toEqual({ exit: 2, said: '' });
    expect(err).toMatch(says);
  }
  expect(await readFile(join(around, 'a_file'), 'utf8')).toBe('mine');
  expect((await readdir(around)).toSorted()).toEqual(['a_file', 'full', 'protocols', 'rooms', 'seen']);
});

test('an empty folder that is there is taken', async () => {
  const empty = join(dirname(out), 'empty');
  await mkdir(empty);
  const { exit } = await at(tuesday, [
    'build',
    join(made.protocols, 'one_threshold'),
    '--to',
    'site',
    '--out',
    empty,
  ]);
  expect(exit).toBe(0);
  const body = JSON.parse(await readFile(join(empty, 'protocols.json'), 'utf8')) as typeof site;
  expect(body.protocols.map(({ id }) => id)).toEqual(['one_threshold']);
  const own = JSON.parse(await readFile(join(empty, 'stored.json'), 'utf8')) as StoredResults;
  expect(own.drafts['one_threshold']?.parts).toHaveLength(4);
});
