import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { digestOfText } from '../../src/protocol/digest.ts';
import { canonicalText } from '../../src/editions/canonical.ts';
import { sealed } from '../../src/editions/seal.ts';
import { textToEdition } from '../../src/editions/text-to-edition.ts';
import { textsToRecord, type EntryText } from '../../src/editions/texts-to-record.ts';
import type { RecordEntry } from '../../src/shape/generated/types.ts';
import { recordName } from '../../src/command-line/record-files.ts';
import {
  approval,
  at,
  draft,
  inForce,
  list,
  people,
  place,
  putting,
  reading,
  steps,
  type Place,
} from './policy.ts';

// Each is refused. What only a reader can see who has seen more is asked of such a reader, and of one that has not.

const monday = '2026-03-16T08:00:00Z';

const entriesOf = async (ward: string): Promise<EntryText[]> =>
  Promise.all(
    (await readdir(join(ward, 'record'))).sort().map(async (name) => ({
      file: name,
      text: await readFile(join(ward, 'record', name), 'utf8'),
    })),
  );

const parsed = ({ text }: EntryText): RecordEntry => JSON.parse(text) as RecordEntry;

/** An entry with its digest made anew: what somebody would do who knows how the record is made. */
function remade({ digest: _, ...entry }: RecordEntry): EntryText {
  const text = canonicalText({ ...entry, digest: digestOfText(canonicalText(entry)) });
  return { file: `${entry.entry}.json`, text: `${text}\n` };
}

const holds = async (ward: string, texts: readonly EntryText[]): Promise<readonly string[]> => {
  const { record, problems } = await textsToRecord(recordName(ward), texts);
  return record ? [] : problems.map(({ code }) => code);
};

const flipped = (bytes: Buffer, which: number): Buffer => {
  const other = Buffer.from(bytes);
  other[which] = (bytes[which] ?? 0) ^ 1;
  return other;
};

/** A ward whose entries are signed, with the private keys of its people, edition 1 in force. */
let signedWard: Place & { readonly keys: Readonly<Record<'ash' | 'birch' | 'oak', string>> };

async function newKey(file: string): Promise<string> {
  const { out } = await at(monday, ['key', 'new', file]);
  return out.trim().split('\n').at(-1) ?? '';
}

beforeAll(async () => {
  const root = await mkdtemp(join(tmpdir(), 'vitalwright-signed-'));
  const made = await place(root);
  const { ward } = made;
  const keys = { ash: join(root, 'ash.jwk'), birch: join(root, 'birch.jwk'), oak: join(root, 'oak.jwk') };
  const [ash, birch] = [await newKey(keys.ash), await newKey(keys.birch)];
  await newKey(keys.oak);
  await writeFile(join(ward, 'approvers.yaml'), list(signers(ash, birch), 'yes'));
  const now = '2026-03-02T08:00:00Z';
  await steps(
    now,
    [
      'approvers',
      ward,
      '--agreed-by',
      'Dr Ash',
      '--agreed-by',
      'Sister Birch',
      '--minute',
      'Minute 1',
      '--key',
      keys.ash,
      '--key',
      keys.birch,
    ],
    ['seal', join(root, 'protocols', 'one_threshold')],
    ['seal', ward, '--author', 'Dr Elm'],
    [...approval(ward, 1, 'Dr Ash', 'Doctor'), '--key', keys.ash],
    [...approval(ward, 1, 'Sister Birch', 'Nurse'), '--key', keys.birch],
    [...putting(ward, 1), '--key', keys.ash],
  );
  signedWard = { ...made, keys };
  return async () => rm(root, { recursive: true, force: true });
}, 60_000);

const signers = (ash: string, birch: string, more = ''): string =>
  `people:\n  - { name: Dr Ash, roles: [Doctor], key: ${ash} }\n  - { name: Sister Birch, roles: [Nurse], key: ${birch} }\n${more}`;

test('a signed policy is read with', async () => {
  const { exit, err } = await at(monday, reading(signedWard.ward));
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
});

test('each byte of a sealed edition', async () => {
  const bytes = await readFile(join(signedWard.ward, 'editions', '1.yaml'));
  const whole = textToEdition('1.yaml', bytes.toString('utf8'), { name: 'small_ward', edition: 1 });
  expect(whole.problems).toEqual([]);
  const accepted: number[] = [];
  for (let index = 0; index < bytes.length; index += 1) {
    const text = flipped(bytes, index).toString('utf8');
    if (textToEdition('1.yaml', text, null).edition) accepted.push(index);
  }
  expect(bytes.length).toBeGreaterThan(5000);
  expect(accepted).toEqual([]);
});

test('a byte more or less at the end of a sealed edition', async () => {
  const text = await readFile(join(signedWard.ward, 'editions', '1.yaml'), 'utf8');
  for (const other of [
    `${text}\n`,
    text.slice(0, -1),
    `${text}# x\n`,
    text.slice(0, text.lastIndexOf('seal: ')),
  ])
    expect(textToEdition('1.yaml', other, null).edition).toBe(null);
});

test('a sealed edition that was changed is refused everywhere', async () => {
  const { ward, protocols } = await inForce();
  const path = join(ward, 'editions', '1.yaml');
  await writeFile(path, flipped(await readFile(path), 300));
  for (const call of [
    ['check', protocols],
    ['check', `${ward}@1`],
    ['read', `${ward}@1`, '--set', '{}'],
    ['read', path, '--set', '{}'],
    approval(ward, 1, 'Dr Elm', 'Doctor'),
    putting(ward, 1),
    ['seal', ward, '--author', 'Dr Elm'],
  ]) {
    const { exit, out, err } = await at(monday, call);
    expect({
      call: call[0],
      exit: exit !== 0,
      says: `${out}${err}`.includes('This edition was changed after it was sealed'),
    }).toEqual({ call: call[0], exit: true, says: true });
  }
});

test('an edition that was changed and sealed anew is not the one that was approved', async () => {
  const { ward } = await inForce();
  const path = join(ward, 'editions', '1.yaml');
  const text = await readFile(path, 'utf8');
  await writeFile(
    path,
    sealed(
      text.slice(0, text.lastIndexOf('seal: ')).replace('sealed_on: 2026-03-02', 'sealed_on: 2026-03-01'),
    ),
  );
  const { exit, err } = await at(monday, reading(ward));
  expect(exit).toBe(2);
  expect(err).toContain('is another file than the one that was meant');
});

test.each([
  [
    'an answer',
    'at_least: call_doctor, could_be: call_doctor',
    'at_least: usual_round, could_be: call_doctor',
    'This kit reads it otherwise: in the case "Low"',
  ],
  [
    'a rule',
    'systolic: { at_most: 90 }',
    'systolic: { at_most: 80 }',
    'This kit reads it otherwise: what it reads here has the digest',
  ],
  ['the language', 'language: 1\nkit', 'language: 2\nkit', 'This edition was sealed in language 2'],
  [
    'the number',
    'edition: 1\ntitle: A small',
    'edition: 3\ntitle: A small',
    'stands where edition 1 of "small_ward" belongs',
  ],
  [
    'a range of the dictionary',
    'possible:\n        - 1\n        - 500',
    'possible:\n        - 1\n        - 400',
    'This kit reads it otherwise',
  ],
])('%s changed in an edition that was sealed anew', async (_, from, to, says) => {
  const text = await readFile(join(signedWard.ward, 'editions', '1.yaml'), 'utf8');
  const body = text.slice(0, text.lastIndexOf('seal: '));
  expect(body).toContain(from);
  const { edition, problems } = textToEdition('1.yaml', sealed(body.replace(from, to)), {
    name: 'small_ward',
    edition: 1,
  });
  expect(edition).toBe(null);
  expect(problems.map((problem) => problem.says).join('\n')).toContain(says);
});

test('each byte of the record', async () => {
  const texts = await entriesOf(signedWard.ward);
  expect(await holds(signedWard.ward, texts)).toEqual([]);
  const accepted: string[] = [];
  for (const [which, { file, text }] of texts.entries()) {
    const bytes = Buffer.from(text);
    for (let index = 0; index < bytes.length; index += 1) {
      const other = texts.with(which, { file, text: flipped(bytes, index).toString('utf8') });
      // Up to this entry: the later ones stand on it anyway.
      if ((await holds(signedWard.ward, other.slice(0, which + 1))).length === 0)
        accepted.push(`${file}:${index}`);
    }
  }
  expect(accepted).toEqual([]);
});

test('each byte of a signature, with the digest of the entry made anew', async () => {
  const texts = await entriesOf(signedWard.ward);
  const approved = parsed(texts[1] as EntryText);
  const [signature] = approved.signatures ?? [];
  const bytes = Buffer.from(signature?.jws ?? '');
  expect(bytes.length).toBeGreaterThan(80);
  for (let index = 0; index < bytes.length; index += 1) {
    const jws = flipped(bytes, index).toString('utf8');
    const entry = remade({ ...approved, signatures: [{ by: signature?.by ?? '', jws }] });
    expect((await holds(signedWard.ward, [texts[0] as EntryText, entry])).length, jws).toBeGreaterThan(0);
  }
});

test.each([1, 2, 3])('the last %i entries cut: seen by a reader who has read them', async (count) => {
  const { ward, seen } = await inForce();
  expect((await at(monday, reading(ward), seen)).exit).toBe(0);
  for (let entry = 4; entry > 4 - count; entry -= 1) await rm(join(ward, 'record', `${entry}.json`));
  const again = await at(monday, reading(ward), seen);
  expect(again.exit).toBe(1);
  expect(again.err).toContain(
    `4 entries of this record have been read here before; now there are ${4 - count}`,
  );
  // What was cut is whole in itself, so that a reader who comes anew cannot see it.
  expect(await holds(ward, await entriesOf(ward))).toEqual([]);
});

test("last week's record restored: seen by a reader who has read this week's", async () => {
  const { ward, seen } = await inForce();
  const backup = `${seen}-backup`;
  await cp(join(ward, 'record'), backup, { recursive: true });
  await steps(monday, ['withdraw', ward, '--by', 'Dr Ash', '--because', 'Wrong.', '--instead', 'Paper.']);
  expect((await at(monday, reading(ward), seen)).exit).toBe(2);
  await rm(join(ward, 'record'), { recursive: true });
  await cp(backup, join(ward, 'record'), { recursive: true });
  const restored = await at(monday, reading(ward), seen);
  expect(restored.exit).toBe(2);
  expect(restored.err).toContain('or this is an older copy');
  expect((await at(monday, ['check', ward], seen)).exit).toBe(1);
  expect((await at(monday, putting(ward, 1), seen)).exit).toBe(1);
});

test('another record written in its place: the first entry is pinned', async () => {
  const { ward, seen } = await inForce();
  expect((await at(monday, reading(ward), seen)).exit).toBe(0);
  await rm(join(ward, 'record'), { recursive: true });
  await steps(monday, [
    'approvers',
    ward,
    '--agreed-by',
    'Dr Elm',
    '--agreed-by',
    'Sister Birch',
    '--minute',
    'None',
  ]);
  const { exit, err } = await at(monday, reading(ward), seen);
  expect(exit).toBe(1);
  expect(err).toContain('Entry 1 of this record was read here before and was another one');
});

test('a person added and approving in one change', async () => {
  const { ward } = await inForce();
  await draft({ protocols: '', ward, seen: '' }, 2);
  await steps(monday, ['seal', ward, '--author', 'Dr Elm']);
  await writeFile(join(ward, 'approvers.yaml'), list(`${people}  - { name: Dr Oak, roles: [Doctor] }\n`));
  // Not entered, the file says nothing.
  const asFile = await at(monday, approval(ward, 2, 'Dr Oak', 'Doctor'));
  expect(asFile.exit).toBe(1);
  // Nobody adds herself.
  const alone = await at(monday, ['approvers', ward, '--agreed-by', 'Dr Oak', '--minute', 'None']);
  expect(alone.exit).toBe(1);
  expect(alone.err).toContain('"Dr Oak" is not on the list of approvers');
  const oneOnly = await at(monday, ['approvers', ward, '--agreed-by', 'Dr Ash', '--minute', 'None']);
  expect(oneOnly.err).toContain('1 in the role "Nurse" more would be needed');
  // Added by those who may, she still cannot approve what was sealed before.
  await steps(monday, [
    'approvers',
    ward,
    '--agreed-by',
    'Dr Ash',
    '--agreed-by',
    'Sister Birch',
    '--minute',
    'Minute 3',
  ]);
  const since = await at(monday, approval(ward, 2, 'Dr Oak', 'Doctor'));
  expect(since.exit).toBe(1);
  expect(since.err).toContain('was not on the list in this role when edition 2 was sealed');
  // What is sealed after she was added, she can approve.
  await draft({ protocols: '', ward, seen: '' }, 3);
  await steps(monday, ['seal', ward, '--author', 'Dr Elm'], approval(ward, 3, 'Dr Oak', 'Doctor'));
});

test('a person added to a signed record without the signatures of those who could approve', async () => {
  const { ward, keys } = signedWard;
  const texts = await entriesOf(ward);
  const first = parsed(texts[0] as EntryText);
  const added = remade({
    ...first,
    entry: texts.length + 1,
    before: parsed(texts.at(-1) as EntryText).digest,
    at: monday,
  });
  expect(await holds(ward, [...texts, added])).toEqual(['record_signature_wrong', 'record_signature_wrong']);
  const { exit, err } = await at(monday, [
    'withdraw',
    ward,
    '--by',
    'Dr Ash',
    '--because',
    'x',
    '--instead',
    'y',
    '--key',
    keys.oak,
  ]);
  expect(exit).toBe(1);
  expect(err).toContain('the signature of "Dr Ash" is missing');
});

test('a withdrawn key', async () => {
  const { keys, protocols } = signedWard;
  const copy = join(`${protocols}-withdrawn`, 'small_ward');
  await cp(protocols, `${protocols}-withdrawn`, { recursive: true });
  const [ash, birch, oak] = await Promise.all(
    [keys.ash, keys.birch, keys.oak].map(
      async (file) => (JSON.parse(await readFile(file, 'utf8')) as { x: string }).x,
    ),
  );
  await writeFile(join(copy, 'approvers.yaml'), list(signers(oak ?? '', birch ?? ''), 'yes'));
  await steps(monday, [
    'approvers',
    copy,
    '--agreed-by',
    'Dr Ash',
    '--agreed-by',
    'Sister Birch',
    '--minute',
    'Minute 9',
    '--key',
    keys.ash,
    '--key',
    keys.birch,
  ]);
  const call = ['withdraw', copy, '--by', 'Dr Ash', '--because', 'x', '--instead', 'y', '--key'];
  expect((await at(monday, [...call, keys.ash])).err).toContain('is missing');
  // Signed by hand with the old key, it does not hold.
  const texts = await entriesOf(copy);
  const { signatureOf } = await import('../../src/editions/signatures.ts');
  const { draftOf } = await import('../../src/editions/entry.ts');
  const body = { ...draftOf(parsed(texts.at(-1) as EntryText)), approvers: undefined };
  const byHand = {
    ...JSON.parse(JSON.stringify(body)),
    entry: texts.length + 1,
    before: parsed(texts.at(-1) as EntryText).digest,
    withdrawn: { by: 'Dr Ash', because: 'x', instead: 'y', from: monday },
  } as RecordEntry;
  const old = JSON.parse(await readFile(keys.ash, 'utf8')) as Parameters<typeof signatureOf>[2];
  expect(old.x).toBe(ash);
  const entry = remade({ ...byHand, signatures: [await signatureOf(byHand, 'Dr Ash', old)] });
  expect(await holds(copy, [...texts, entry])).toEqual(['record_signature_wrong']);
  expect((await at(monday, [...call, keys.oak])).exit).toBe(0);
});

test('one person twice', async () => {
  const { ward } = await inForce();
  await draft({ protocols: '', ward, seen: '' }, 2);
  await steps(monday, ['seal', ward, '--author', 'Dr Elm'], approval(ward, 2, 'Dr Ash', 'Doctor'));
  for (const name of ['Dr Ash', 'dr  ash', 'DR ASH']) {
    const { exit, err } = await at(monday, approval(ward, 2, name, 'Doctor'));
    expect(exit).toBe(1);
    expect(err).toContain('one person counts once');
  }
  await writeFile(join(ward, 'approvers.yaml'), list(`${people}  - { name: dr ash, roles: [Nurse] }\n`));
  const twice = await at(monday, [
    'approvers',
    ward,
    '--agreed-by',
    'Dr Ash',
    '--agreed-by',
    'Sister Birch',
    '--minute',
    'Minute 3',
  ]);
  expect(twice.exit).toBe(1);
  expect(twice.err).toContain('stands on the list twice');
});

test('whoever wrote it does not approve it', async () => {
  const { ward } = await inForce();
  await draft({ protocols: '', ward, seen: '' }, 2);
  await steps(monday, ['seal', ward, '--author', 'Dr Elm']);
  const { exit, err } = await at(monday, approval(ward, 2, 'dr elm', 'Doctor'));
  expect(exit).toBe(1);
  expect(err).toContain('whoever wrote it cannot approve it');
});

test('a signature, an entry, or a whole record moved to another policy or ward', async () => {
  const { ward } = signedWard;
  const texts = await entriesOf(ward);
  expect((await textsToRecord('other_ward', texts)).problems.map(({ code }) => code)).toEqual([
    'record_of_another',
  ]);
  // With the name changed and every digest made anew, no signature fits.
  const [first] = texts;
  const moved = remade({ ...parsed(first as EntryText), record: 'other_ward' });
  expect((await textsToRecord('other_ward', [moved])).problems.map(({ code }) => code)).toContain(
    'record_signature_wrong',
  );
  // An approval of edition 1 made into one of edition 2, or entered a second time.
  const approved = parsed(texts[1] as EntryText);
  const other = remade({
    ...approved,
    approved: { ...(approved.approved as NonNullable<RecordEntry['approved']>), edition: 2 },
  });
  expect(await holds(ward, [first as EntryText, other])).toEqual(['record_signature_wrong']);
  const put = parsed(texts[3] as EntryText);
  const again = remade({ ...put, entry: 5, before: put.digest });
  expect(await holds(ward, [...texts, again])).toEqual(['record_signature_wrong']);
});

test('a private key is not written where it would be shared, and only its owner may read it', async () => {
  const inside = await at(monday, ['key', 'new', 'tests/secret.jwk']);
  expect(inside.exit).toBe(2);
  expect(inside.err).toContain('is kept with git');
  const below = await at(monday, ['key', 'new', join(signedWard.protocols, 'secret.jwk')]);
  expect(below.exit).toBe(2);
  expect(below.err).toContain('holds protocols');
  const { stat } = await import('node:fs/promises');
  expect((await stat(signedWard.keys.ash)).mode & 0o777).toBe(0o600);
  const taken = await at(monday, ['key', 'new', signedWard.keys.ash]);
  expect(taken.exit).toBe(2);
});
