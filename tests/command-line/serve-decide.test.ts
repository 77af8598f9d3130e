import { readdir, readFile, rename, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { refusals } from '../../src/command-line/deciding/refusals.ts';
import { digestOf } from '../../src/command-line/saving/compare-and-swap.ts';
import { loadRecord } from '../../src/command-line/record-files.ts';
import { openDeciding, type DecidingSite } from './decide-site.ts';
import { approval, at, draft, enterList, inForce, place, reading, steps, type Place } from './policy.ts';
import { everything } from './save-site.ts';

// Approving, putting in force and withdrawing as a page of the rooms asks for it, over a real socket.

const monday = '2026-03-02T08:00:00Z';
const tuesday = '2026-03-03T12:00:00Z';

const open: DecidingSite[] = [];
afterEach(async () => {
  for (const each of open.splice(0)) await each.site.close();
});

async function served(made: Place, now: string): Promise<DecidingSite> {
  const site = await openDeciding(made, now);
  open.push(site);
  return site;
}

/** Sealed, and approved by nobody. */
async function sealed(): Promise<Place> {
  const made = await place();
  await steps(
    monday,
    enterList(made.ward),
    ['seal', join(made.protocols, 'one_threshold')],
    ['seal', made.ward, '--author', 'Dr Elm'],
  );
  return made;
}

const entries = async ({ ward }: Place): Promise<number> =>
  (await loadRecord(ward)).record?.entries.length ?? -1;

test('approve, put in force and withdraw make the very entries that the command line makes', async () => {
  const [byPage, byLine] = [await sealed(), await sealed()];
  const page = await served(byPage, monday);
  const approvals = [
    { by: 'Dr Ash', role: 'Doctor' },
    { by: ' Sister Birch ', role: 'Nurse' },
  ];
  const heard = [];
  for (const each of approvals) heard.push(await page.decide({ what: 'approve', ...each }));
  page.setNow(tuesday);
  heard.push(await page.decide({ what: 'put_in_force' }));
  heard.push(await page.decide({ what: 'withdraw', from: '2026-03-04T12:00:00Z' }));
  expect(heard.map(({ status }) => status)).toEqual([200, 200, 200, 200]);
  expect(heard.map(({ body }) => (body as { entered: string }).entered)).toEqual([
    expect.stringMatching(
      /^Approved: small_ward, edition 1, .* by Dr Ash \(Doctor\)\. Still needed: 1 × Nurse\.$/,
    ),
    expect.stringMatching(/by Sister Birch \(Nurse\)\. It has all approvals that it needs\.$/),
    expect.stringMatching(/^In force from 2026-03-03 12:00 UTC: small_ward, edition 1, sha256:/),
    'Withdrawn from 2026-03-04 12:00 UTC: small_ward. Instead: Paper.',
  ]);
  await steps(
    monday,
    approval(byLine.ward, 1, 'Dr Ash', 'Doctor'),
    approval(byLine.ward, 1, 'Sister Birch', 'Nurse'),
  );
  await steps(
    tuesday,
    ['put-in-force', `${byLine.ward}@1`, '--by', 'Dr Ash', '--because', 'Agreed by the council.'],
    [
      'withdraw',
      byLine.ward,
      '--by',
      'Dr Ash',
      '--because',
      'Wrong.',
      '--instead',
      'Paper.',
      '--from',
      '2026-03-04T12:00:00Z',
    ],
  );
  expect(everything(join(byPage.ward, 'record'))).toEqual(everything(join(byLine.ward, 'record')));
  expect((await at(tuesday, reading(byPage.ward))).exit).toBe(0);
});

/** A decision with one thing wrong, in whose field it is told, and what is said there. */
const wrong: readonly (readonly [string, object, string | null, RegExp])[] = [
  ['approve', { by: '' }, 'by', /^Still to be given: who approves\.$/],
  ['approve', { minute: '  ' }, 'minute', /^Still to be given: where the decision stands/],
  ['approve', { by: 'Dr Elm' }, 'by', /wrote this edition; whoever wrote it cannot approve it/],
  [
    'approve',
    { by: 'Dr Who' },
    'by',
    /"Dr Who" is not on the list of approvers|was not on the list in this role/,
  ],
  ['approve', { role: 'Nurse' }, 'by', /not on the list in this role/],
  ['approve', { on: '2026-03-01' }, null, /cannot have been approved on 2026-03-01/],
  ['approve', { on: '2026-03-09' }, 'on', /comes after the entry/],
  ['approve', { on: 'yesterday' }, 'on', /yesterday|day/],
  ['approve', { minute: 'm'.repeat(201) }, 'minute', /200/],
  ['put_in_force', {}, null, /edition 1 is not approved\. Still needed: 1 × Doctor, 1 × Nurse/],
  ['put_in_force', { because: '' }, 'because', /^Still to be given: why\.$/],
  ['withdraw', { instead: '' }, 'instead', /^Still to be given: what applies instead\.$/],
  ['withdraw', {}, 'withdrawn', /nothing to withdraw/],
];

test.each(wrong)(
  '%s %j is refused at its field, in the words of the problems',
  async (what, more, field, says) => {
    const made = await sealed();
    const { decide } = await served(made, tuesday);
    const { status, body } = await decide({ what, ...more });
    expect({ status, body }).toEqual({
      status: 422,
      body: { says: 'Nothing was entered.', problems: [{ field, says: expect.stringMatching(says) }] },
    });
    expect(await entries(made)).toBe(1);
  },
);

test('a time that has passed, or is none, is told beside the field of the time', async () => {
  const made = await inForce();
  const { decide } = await served(made, tuesday);
  for (const [from, says] of [
    ['2026-03-03T11:59:59Z', /what was in force before cannot be changed/],
    ['tomorrow', /tomorrow/],
  ] as const)
    for (const what of ['put_in_force', 'withdraw'])
      expect((await decide({ what, from })).body).toMatchObject({
        problems: [{ field: 'from', says: expect.stringMatching(says) }],
      });
  expect(await entries(made)).toBe(4);
});

test('what was decided on a record that has gone on is not entered', async () => {
  const made = await inForce();
  const { decide } = await served(made, tuesday);
  const { texts } = await loadRecord(made.ward);
  const { digest: head } = JSON.parse(texts[2]?.text ?? '') as { digest: string };
  for (const old of [head, null]) {
    const { status, body } = await decide({ what: 'withdraw', head: old });
    expect({ status, body }).toEqual({ status: 409, body: { says: refusals.changed_since[1] } });
  }
  expect(await entries(made)).toBe(4);
});

test('of several who decide at once one wins, the others are told, and nothing is lost', async () => {
  const made = await inForce();
  const { decide } = await served(made, tuesday);
  const before = (await loadRecord(made.ward)).texts;
  const all = await Promise.all(
    ['Dr Ash', 'Sister Birch', 'Dr Elm', 'Dr Ash'].map(async (by, index) =>
      decide({ what: index === 3 ? 'put_in_force' : 'withdraw', by }),
    ),
  );
  expect(all.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([200, 409, 409, 409]);
  const after = await loadRecord(made.ward);
  expect(after.record?.entries).toHaveLength(5);
  expect(after.texts.slice(0, 4)).toEqual(before);
});

test('an edition that is another file than the page shows, or gone, or changed, is neither approved nor put in force', async () => {
  const made = await sealed();
  const { decide } = await served(made, tuesday);
  const path = join(made.ward, 'editions', '1.yaml');
  const digest = digestOf(Buffer.from('another'));
  for (const what of ['approve', 'put_in_force']) {
    expect(await decide({ what, digest })).toMatchObject({
      status: 409,
      body: { says: refusals.other_edition[1] },
    });
    expect(await decide({ what, edition: 2 })).toMatchObject({
      status: 404,
      body: { says: refusals.no_such_edition[1] },
    });
  }
  const approve = { what: 'approve', digest: (await readFile(path, 'utf8')).match(/^digest: (.*)$/m)?.[1] };
  await writeFile(path, (await readFile(path, 'utf8')).replace('A small ward', 'A smaller ward'));
  expect(await decide(approve)).toMatchObject({
    status: 422,
    body: { problems: [{ field: null, says: expect.stringContaining('changed') }] },
  });
  expect(await entries(made)).toBe(1);
});

test('a record that does not hold takes nothing, and says why', async () => {
  const made = await inForce();
  const { decide } = await served(made, tuesday);
  const path = join(made.ward, 'record', '2.json');
  await writeFile(path, (await readFile(path, 'utf8')).replace('Minute 2', 'Minute 3'));
  const { status, body } = await decide({ what: 'withdraw' });
  expect({ status, body }).toMatchObject({
    status: 422,
    body: { problems: [{ field: null, says: expect.stringContaining('changed after it was made') }] },
  });
  expect(await readdir(join(made.ward, 'record'))).toHaveLength(4);
});

test('no link is followed: neither to a policy, nor to its record or editions', async () => {
  const made = await inForce();
  const { decide } = await served(made, tuesday);
  await symlink(made.ward, join(made.protocols, 'linked'));
  expect(await decide({ what: 'withdraw', id: 'linked' })).toMatchObject({
    status: 403,
    body: { says: refusals.a_link[1] },
  });
  const outside = join(made.protocols, '..', 'outside');
  await rename(join(made.ward, 'record'), outside);
  await symlink(outside, join(made.ward, 'record'));
  expect(await decide({ what: 'withdraw' })).toMatchObject({
    status: 403,
    body: { says: refusals.a_link[1] },
  });
  expect(await readdir(outside)).toHaveLength(4);
});

test('sealing is what the command line does: what holds, what does not, and the edition', async () => {
  const made = await inForce();
  await draft(made, 2);
  const { send } = await served(made, tuesday);
  const text = await readFile(join(made.ward, 'ward.yaml'));
  const asked = { id: 'small_ward', authors: ['Dr Elm'], on_disk: digestOf(text) };
  const nobody = await send('/seal', { ...asked, authors: [] });
  expect(nobody).toMatchObject({
    status: 422,
    body: { says: expect.stringContaining('Who wrote it is to be named') },
  });
  const other = await send('/seal', { ...asked, on_disk: digestOf(Buffer.from('another')) });
  expect(other).toMatchObject({ status: 409, body: { says: refusals.other_draft[1] } });
  expect(await readdir(join(made.ward, 'editions'))).toEqual(['1.yaml']);
  const done = await send('/seal', asked);
  expect(done).toMatchObject({
    status: 200,
    body: {
      sealed: expect.arrayContaining([expect.stringMatching(/^Sealed: small_ward, edition 2, sha256:/)]),
    },
  });
  expect(await readdir(join(made.ward, 'editions'))).toEqual(['1.yaml', '2.yaml']);
});

test('a draft with a problem is not sealed, and the problem is said in its words', async () => {
  const made = await inForce();
  await draft(made, 2, 'review_by: 2026-03-01\n');
  const { send } = await served(made, tuesday);
  const on_disk = digestOf(await readFile(join(made.ward, 'ward.yaml')));
  const { status, body } = await send('/seal', { id: 'small_ward', authors: ['Dr Elm'], on_disk });
  expect(status).toBe(422);
  expect(body).toMatchObject({ says: expect.stringContaining('2026-03-01') });
  expect(await readdir(join(made.ward, 'editions'))).toEqual(['1.yaml']);
});
