import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  approval,
  at,
  draft,
  enterList,
  inForce,
  place,
  putting,
  reading,
  steps,
  twoInForce,
} from './policy.ts';

const tuesday = '2026-03-03T12:00:00Z';

test('a policy that is sealed, approved and put in force is read with, and says so', async () => {
  const { ward } = await inForce();
  const { exit, out, err } = await at(tuesday, reading(ward));
  expect(err).toBe('');
  expect(exit).toBe(0);
  expect(out).toContain('CALL THE DOCTOR');
  expect(out).toMatch(/small_ward, edition 1, sha256:[0-9a-f]{12}, in force since\s+2026-03-03 08:00 UTC/);
});

test('the outcome as JSON names edition, digest, since when and by whom', async () => {
  const { ward } = await inForce();
  const { out } = await at(tuesday, reading(ward, '--json'));
  const outcome = JSON.parse(out) as Record<string, unknown>;
  expect(outcome).toMatchObject({
    ward: 'small_ward',
    edition: 1,
    policy: { in_force_from: '2026-03-03T08:00:00Z', by: 'Dr Ash' },
  });
  expect(outcome['digest']).toMatch(/^sha256:[0-9a-f]{64}$/);
});

test('before anything is in force, there is no answer but the paper policy', async () => {
  const { ward } = await place();
  const { exit, out, err } = await at(tuesday, reading(ward));
  expect({ exit, out }).toEqual({ exit: 2, out: '' });
  expect(err).toContain('NO POLICY IN FORCE: use the paper policy');
});

test('what is in force at a time is what was put in force by then', async () => {
  const { ward } = await twoInForce();
  const edition = async (time: string): Promise<unknown> => {
    const { exit, out } = await at('2026-03-20T08:00:00Z', reading(ward, '--at', time, '--json'));
    return exit === 0 ? (JSON.parse(out) as { edition: number }).edition : null;
  };
  expect(await edition('2026-03-03T07:59:59Z')).toBe(null);
  expect(await edition('2026-03-03T08:00:00Z')).toBe(1);
  expect(await edition('2026-03-10T07:59:59Z')).toBe(1);
  expect(await edition('2026-03-10T09:00:00+01:00')).toBe(2);
});

test('an edition can be put in force for later; exactly one is in force at any time', async () => {
  const { ward } = await inForce();
  await draft({ protocols: '', ward, seen: '' }, 2, 'review_by: 2026-12-31\n');
  await steps(
    '2026-03-09T08:00:00Z',
    ['seal', ward, '--author', 'Dr Elm'],
    approval(ward, 2, 'Dr Ash', 'Doctor'),
    approval(ward, 2, 'Sister Birch', 'Nurse'),
    putting(ward, 2, '--from', '2026-04-01T06:00:00+01:00'),
  );
  expect((await at('2026-04-01T04:59:59Z', reading(ward))).out).toContain('edition 1,');
  expect((await at('2026-04-01T05:00:00Z', reading(ward))).out).toContain('edition 2,');
});

test('one person withdraws at once, and what applies instead is said', async () => {
  const { ward } = await inForce();
  const call = [
    'withdraw',
    ward,
    '--by',
    'Sister Birch',
    '--because',
    'A limit is misprinted.',
    '--instead',
    'The red folder.',
  ];
  const { exit, out } = await at(tuesday, call);
  expect(exit).toBe(0);
  expect(out).toContain('Withdrawn');
  const read = await at(tuesday, reading(ward));
  expect(read.exit).toBe(2);
  expect(read.err).toContain('NO POLICY IN FORCE: use the paper policy');
  expect(read.err).toContain('A limit is misprinted.');
  expect(read.err).toContain('The red folder.');
  // What was in force before stays what it was.
  expect((await at(tuesday, reading(ward, '--at', '2026-03-03T11:59:59Z'))).exit).toBe(0);
  // It can be put in force again.
  await steps('2026-03-04T08:00:00Z', putting(ward, 1));
  expect((await at('2026-03-04T08:00:00Z', reading(ward))).exit).toBe(0);
});

test('somebody who is not on the list withdraws nothing', async () => {
  const { ward } = await inForce();
  const call = ['withdraw', ward, '--by', 'Dr Oak', '--because', 'x', '--instead', 'y'];
  const { exit, err } = await at(tuesday, call);
  expect(exit).toBe(1);
  expect(err).toContain('"Dr Oak" is not on the list of approvers');
  expect((await at(tuesday, reading(ward))).exit).toBe(0);
});

test('what lies before an entry cannot be changed by it', async () => {
  const { ward } = await inForce();
  const { exit, err } = await at(tuesday, putting(ward, 1, '--from', '2026-03-03T11:59:59Z'));
  expect(exit).toBe(1);
  expect(err).toContain('what was in force before cannot be changed');
});

test('an overdue review is said in every outcome, and it still answers', async () => {
  const { ward } = await twoInForce();
  const onTheDay = await at('2026-12-31T12:00:00Z', reading(ward));
  expect(onTheDay.out).not.toContain('overdue');
  const { exit, out } = await at('2027-01-01T12:00:00Z', reading(ward));
  expect(exit).toBe(0);
  expect(out.replace(/\s+/g, ' ')).toContain('was due by 2026-12-31 and is overdue');
  expect(out).toContain('CALL THE DOCTOR');
  const json = await at('2027-01-01T12:00:00Z', reading(ward, '--json'));
  expect((JSON.parse(json.out) as { policy: object }).policy).toMatchObject({ review_overdue: '2026-12-31' });
  const handoff = await at('2027-01-01T12:00:00Z', reading(ward, '--handoff'));
  expect(handoff.out).toMatch(
    /^ABOUT THIS POLICY: The review of this policy was due by 2026-12-31 and is overdue/,
  );
  expect(handoff.out).toContain('Edition 2 is in force since 2026-03-10 08:00 UTC.');
});

test('when the edition in force fails its check, the copy that was checked here answers, with a banner', async () => {
  const { ward, seen } = await twoInForce();
  const later = '2026-03-11T08:00:00Z';
  expect((await at(later, reading(ward), seen)).exit).toBe(0);
  const path = join(ward, 'editions', '2.yaml');
  await writeFile(
    path,
    (await readFile(path, 'utf8')).replace('at_least: call_doctor', 'at_least: usual_round'),
  );
  const { exit, out, err } = await at(later, reading(ward), seen);
  expect(exit).toBe(1);
  expect(err).toContain('This edition was changed after it was sealed');
  expect(out.replace(/\s+/g, ' ')).toMatch(/^ABOUT THIS POLICY - The file of edition 2 is damaged or gone/);
  expect(out).toContain('small_ward, edition 2,');
});

test('a reader without a copy falls back to the edition before it, with a banner', async () => {
  const { ward } = await twoInForce();
  await rm(join(ward, 'editions', '2.yaml'));
  const { exit, out } = await at('2026-03-11T08:00:00Z', reading(ward));
  expect(exit).toBe(1);
  expect(out.replace(/\s+/g, ' ')).toContain('the edition that was in force before it');
  expect(out).toContain('small_ward, edition 1,');
  await rm(join(ward, 'editions', '1.yaml'));
  const none = await at('2026-03-11T08:00:00Z', reading(ward));
  expect({ exit: none.exit, out: none.out }).toEqual({ exit: 2, out: '' });
  expect(none.err).toContain('NO POLICY IN FORCE: use the paper policy');
});

test('a record that fails leaves what was checked here last, with a banner', async () => {
  const { ward, seen } = await inForce();
  expect((await at(tuesday, reading(ward), seen)).exit).toBe(0);
  const path = join(ward, 'record', '4.json');
  await writeFile(path, (await readFile(path, 'utf8')).replace('Dr Ash', 'Dr Oak'));
  const { exit, out } = await at(tuesday, reading(ward), seen);
  expect(exit).toBe(1);
  expect(out.replace(/\s+/g, ' ')).toContain('what was checked here last');
  expect(out).toContain('small_ward, edition 1,');
  const stranger = await at(tuesday, reading(ward));
  expect(stranger.exit).toBe(2);
  expect(stranger.err).toContain('use the paper policy');
});

test('a policy that was withdrawn does not come back when the record is damaged', async () => {
  const { ward, seen } = await inForce();
  await steps(tuesday, ['withdraw', ward, '--by', 'Dr Ash', '--because', 'Wrong.', '--instead', 'Paper.']);
  expect((await at(tuesday, reading(ward), seen)).exit).toBe(2);
  await rm(join(ward, 'record', '5.json'));
  const { exit, err } = await at(tuesday, reading(ward), seen);
  expect(exit).toBe(2);
  expect(err).toContain('5 entries of this record have been read here before; now there are 4');
  expect(err).toContain('Instead: Paper.');
});

test('only approved editions of ward policies are put in force', async () => {
  const { ward, protocols } = await place();
  const now = '2026-03-02T08:00:00Z';
  const protocol = join(protocols, 'one_threshold');
  await steps(now, ['seal', protocol], enterList(ward), ['seal', ward, '--author', 'Dr Elm']);
  await steps(now, approval(ward, 1, 'Dr Ash', 'Doctor'));
  const early = await at(now, putting(ward, 1));
  expect(early.exit).toBe(1);
  expect(early.err).toContain('Still needed: 1 × Nurse');
  const single = await at(now, putting(protocol, 1));
  expect(single.exit).toBe(2);
  expect(single.err).toContain('A ward reads with a ward policy');
  expect(await readdir(join(ward, 'record'))).toEqual(['1.json', '2.json']);
});

test('check looks at the list, the record and every edition that it puts in force', async () => {
  const { ward, protocols } = await inForce();
  const well = await at(tuesday, ['check', protocols]);
  expect(well.exit).toBe(0);
  expect(well.out).toContain('small_ward · record, edition 1 in force');
  expect(well.out).toContain('small_ward · sealed edition 1');
  await rm(join(ward, 'record', '2.json'));
  const cut = await at(tuesday, ['check', protocols]);
  expect(cut.exit).toBe(1);
  expect(cut.err).toContain('stands where number 2 belongs');
});
