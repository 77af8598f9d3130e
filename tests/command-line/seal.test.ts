import { cp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadEdition } from '../../src/command-line/edition-files.ts';
import { exists } from '../../src/command-line/files.ts';
import { isWard } from '../../src/editions/cases-to-answers.ts';
import { at, enterList, inForce, place, steps } from './policy.ts';

const today = '2026-03-02T08:00:00Z';

/** The lesson of one threshold, in a folder of its own, with one of its texts changed. */
async function changed(file: string, from: string, to: string): Promise<{ folder: string; sealed: string }> {
  const { protocols } = await place();
  const folder = join(protocols, 'one_threshold');
  const path = join(folder, file);
  const text = await readFile(path, 'utf8');
  if (!text.includes(from)) throw new Error(`${file} does not say ${from}`);
  await writeFile(path, text.replace(from, to));
  return { folder, sealed: join(folder, 'editions', '1.yaml') };
}

test.each([
  ['its shape', 'protocol.yaml', 'title: Systolic low', 'titel: Systolic low', 'it has problems of its own'],
  ['its meaning', 'protocol.yaml', 'level: call_doctor', 'level: call_nobody', 'it has problems of its own'],
  [
    'a case',
    'cases.yaml',
    'at_least: call_doctor',
    'at_least: usual_round',
    'every case comes out as expected',
  ],
  [
    'its review',
    'protocol.yaml',
    'ladder: alder_ladder',
    'review_by: 2026-03-01\nladder: alder_ladder',
    'Its review was due by 2026-03-01',
  ],
  [
    'a small change that no case notices',
    'cases.yaml',
    'given: { systolic: 91 }',
    'given: { systolic: 95 }',
    'No case notices: ',
  ],
])('nothing is sealed while this does not hold: %s', async (_, file, from, to, says) => {
  const { folder, sealed } = await changed(file, from, to);
  const { exit, err } = await at(today, ['seal', folder]);
  expect(exit).toBe(1);
  expect(err).toContain(says);
  expect(err).toContain('It was not sealed');
  expect(await exists(sealed)).toBe(false);
});

test('on the day of its review it can be sealed, and without a case never', async () => {
  const { folder, sealed } = await changed(
    'protocol.yaml',
    'ladder: alder_ladder',
    'review_by: 2026-03-02\nladder: alder_ladder',
  );
  await rm(join(folder, 'cases.yaml'));
  expect((await at(today, ['seal', folder])).err).toContain('There is no case');
  await cp('protocols/lessons/one_threshold/cases.yaml', join(folder, 'cases.yaml'));
  await steps(today, ['seal', folder]);
  expect(await exists(sealed)).toBe(true);
});

test('an edition holds all that it is read with: nothing beside it is asked', async () => {
  const { protocols, ward } = await inForce();
  for (const name of ['one_threshold', 'alder_ladder']) await rm(join(protocols, name), { recursive: true });
  for (const name of ['ward.yaml', 'cases.yaml']) await rm(join(ward, name));
  const { edition, problems } = await loadEdition(join(ward, 'editions', '1.yaml'));
  expect(problems).toEqual([]);
  expect(edition && isWard(edition.asked) ? edition.asked.members.length : 0).toBe(1);
  expect(Object.keys(edition?.file.texts ?? {})).toEqual(['small_ward', 'one_threshold']);
  expect(Object.keys(edition?.file.dictionary.observations ?? {})).toContain('systolic');
  expect(edition?.file.outcomes.map((each) => each.case)).toEqual(['Low']);
});

test('what a protocol is based on is sealed with it', async () => {
  const { protocols } = await place();
  for (const name of ['a_limit_to_change', 'a_ward_adapts'])
    await cp(join('protocols/lessons', name), join(protocols, name), {
      recursive: true,
      filter: (path) => !path.includes('editions'),
    });
  const folder = join(protocols, 'a_ward_adapts');
  await steps(today, ['seal', folder]);
  await rm(join(protocols, 'a_limit_to_change'), { recursive: true });
  const { out } = await at(today, [
    'read',
    `${folder}@1`,
    '--json',
    '--set',
    '{ "systolic": 99, "diastolic": 55, "heart_rate": 80 }',
  ]);
  const outcome = JSON.parse(out) as { digest: string; level: object; based_on: { protocol: string }[] };
  expect(outcome.level).toMatchObject({ at_least: 'call_doctor', settled: true });
  expect(outcome.based_on.map(({ protocol }) => protocol)).toEqual(['a_limit_to_change']);
});

test('a ward policy is sealed when each protocol that it reads with is, and says the same', async () => {
  const { protocols, ward } = await place();
  const before = await at(today, ['seal', ward]);
  expect(before.exit).toBe(1);
  expect(before.err).toContain('edition 1 of "one_threshold" is not sealed');
  const folder = join(protocols, 'one_threshold');
  await steps(today, ['seal', folder]);
  const path = join(folder, 'protocol.yaml');
  const text = await readFile(path, 'utf8');
  await writeFile(
    path,
    text.replace('A systolic of 90 or lower suggests', 'A systolic of 90 or less suggests'),
  );
  const other = await at(today, ['seal', ward]);
  expect(other.exit).toBe(1);
  expect(other.err).toContain('is sealed and says something else');
  await writeFile(path, text);
  await steps(today, ['seal', ward]);
});

test('a ward policy stays with the sealed edition that it names while its protocol goes on', async () => {
  const { protocols, ward } = await inForce();
  const path = join(protocols, 'one_threshold', 'protocol.yaml');
  await writeFile(
    path,
    (await readFile(path, 'utf8'))
      .replace('edition: 1', 'edition: 2')
      .replace('at_most: 90 }', 'at_most: 95 }'),
  );
  const read = async (): Promise<unknown> => {
    const { out } = await at(today, ['read', ward, '--json', '--set', '{ "systolic": 93 }']);
    return (JSON.parse(out) as { level: { at_least: string } }).level.at_least;
  };
  expect(await read()).toBe('usual_round');
  await rm(join(protocols, 'one_threshold', 'editions', '1.yaml'));
  expect((await at(today, ['read', ward, '--set', '{}'])).exit).toBe(2);
});

test('once there are approvers, whoever wrote it is to be named', async () => {
  const { protocols, ward } = await place();
  await steps(today, ['seal', join(protocols, 'one_threshold')], enterList(ward));
  const { exit, err } = await at(today, ['seal', ward]);
  expect(exit).toBe(2);
  expect(err).toContain('--author');
});

test('a sealed edition is found by the name of its folder', async () => {
  const made = await place();
  const other = join(made.protocols, 'other_name');
  await mkdir(other);
  await cp(join(made.protocols, 'one_threshold'), other, { recursive: true });
  const { exit, err } = await at(today, ['seal', other]);
  expect(exit).toBe(1);
  expect(err).toContain('"one_threshold" must stand in a folder of that name');
});
