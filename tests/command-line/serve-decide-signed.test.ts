import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { refusals } from '../../src/command-line/deciding/refusals.ts';
import { loadRecord } from '../../src/command-line/record-files.ts';
import { newKey, signatureOf, type Draft, type PrivateKey } from '../../src/editions/signatures.ts';
import { openDeciding, type DecidingSite } from './decide-site.ts';
import { enterList, list, place, steps, type Place } from './policy.ts';

// Where entries are signed, the page signs: the server gets the signature, never a key.

const monday = '2026-03-02T08:00:00Z';
const tuesday = '2026-03-03T12:00:00Z';

const open: DecidingSite[] = [];
afterEach(async () => {
  for (const each of open.splice(0)) await each.site.close();
});

interface Signed {
  readonly made: Place;
  readonly page: DecidingSite;
  readonly ash: PrivateKey;
  readonly birch: PrivateKey;
}

/** A ward whose entries are signed, with a sealed edition that nobody has approved. */
async function signedWard(): Promise<Signed> {
  const made = await place();
  const [ash, birch] = [await newKey(), await newKey()];
  const people = `people:
  - { name: Dr Ash, roles: [Doctor], key: ${ash.x} }
  - { name: Sister Birch, roles: [Nurse], key: ${birch.x} }
`;
  await writeFile(join(made.ward, 'approvers.yaml'), list(people, 'yes'));
  const files = await Promise.all(
    [ash, birch].map(async (key, index) => {
      const file = join(made.protocols, '..', `${index}.key`);
      await writeFile(file, JSON.stringify(key));
      return file;
    }),
  );
  await steps(
    monday,
    [...enterList(made.ward), ...files.flatMap((file) => ['--key', file])],
    ['seal', join(made.protocols, 'one_threshold')],
    ['seal', made.ward, '--author', 'Dr Elm'],
  );
  const page = await openDeciding(made, tuesday);
  open.push(page);
  return { made, page, ash, birch };
}

const approve = { what: 'approve', by: 'Dr Ash', role: 'Doctor', minute: 'Minute 2', on: '2026-03-02' };

async function toSign(page: DecidingSite, more: object = {}): Promise<Draft> {
  const { status, body } = await page.decide({ ...approve, ...more });
  expect(status).toBe(200);
  return (body as { sign: Draft }).sign;
}

const entries = async ({ made }: Signed): Promise<number> =>
  (await readdir(join(made.ward, 'record'))).length;

test('first comes what is to be signed, and nothing is entered; with the signature it is, and the key was never sent', async () => {
  const ward = await signedWard();
  const { page, ash, made } = ward;
  const draft = await toSign(page);
  expect(draft).toMatchObject({
    record: 'small_ward',
    entry: 2,
    at: tuesday,
    approved: { edition: 1, by: 'Dr Ash', role: 'Doctor', minute: 'Minute 2', on: '2026-03-02' },
  });
  expect(await entries(ward)).toBe(1);
  page.setNow('2026-03-03T12:09:59Z');
  const { jws } = await signatureOf(draft, 'Dr Ash', ash);
  expect(await page.decide({ ...approve, at: draft.at, jws })).toMatchObject({ status: 200 });
  const { record } = await loadRecord(made.ward);
  expect(record?.entries[1]).toMatchObject({ at: tuesday, signatures: [{ by: 'Dr Ash', jws }] });
});

test('nobody is asked to sign what would not be entered', async () => {
  const ward = await signedWard();
  const { status, body } = await ward.page.decide({ ...approve, minute: 'm'.repeat(201) });
  expect({ status, body }).toMatchObject({ status: 422, body: { problems: [{ field: 'minute' }] } });
  expect(await entries(ward)).toBe(1);
});

test('a signature by another key, or over anything else, does not hold', async () => {
  const ward = await signedWard();
  const { page, ash, birch } = ward;
  const draft = await toSign(page);
  const others = [
    (await signatureOf(draft, 'Dr Ash', birch)).jws,
    (await signatureOf({ ...draft, entry: 3 }, 'Dr Ash', ash)).jws,
    (await signatureOf({ ...draft, at: monday }, 'Dr Ash', ash)).jws,
    'e30..AA',
    '',
  ];
  for (const jws of others)
    expect(await page.decide({ ...approve, at: draft.at, jws })).toMatchObject({
      status: 422,
      body: { problems: [{ says: expect.any(String) }] },
    });
  const { jws } = await signatureOf(draft, 'Dr Ash', ash);
  expect(await page.decide({ ...approve, minute: 'Minute 3', at: draft.at, jws })).toMatchObject({
    status: 422,
    body: { problems: [{ field: 'jws', says: expect.stringContaining('does not hold') }] },
  });
  expect(await entries(ward)).toBe(1);
});

test('a signature that took longer than ten minutes, or is for a moment to come, is refused', async () => {
  const ward = await signedWard();
  const { page, ash } = ward;
  const draft = await toSign(page);
  const { jws } = await signatureOf(draft, 'Dr Ash', ash);
  for (const now of ['2026-03-03T12:10:01Z', '2026-03-03T11:59:59Z']) {
    page.setNow(now);
    expect(await page.decide({ ...approve, at: draft.at, jws })).toMatchObject({
      status: 409,
      body: { says: refusals.signed_late[1] },
    });
  }
  expect(await page.decide({ ...approve, at: 'noon', jws })).toMatchObject({ status: 409 });
  expect(await entries(ward)).toBe(1);
});

test('a signature is unwanted where entries are not signed', async () => {
  const made = await place();
  await steps(
    monday,
    enterList(made.ward),
    ['seal', join(made.protocols, 'one_threshold')],
    ['seal', made.ward, '--author', 'Dr Elm'],
  );
  const page = await openDeciding(made, tuesday);
  open.push(page);
  expect(await page.decide({ ...approve, at: tuesday, jws: 'e30..AA' })).toMatchObject({
    status: 422,
    body: { problems: [{ says: expect.stringContaining('not signed') }] },
  });
});
