import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { enter } from '../../src/command-line/deciding/enter.ts';
import { loadRecord } from '../../src/command-line/record-files.ts';
import { writeOnce } from '../../src/command-line/write-once.ts';
import {
  approval,
  at,
  draft,
  folderForTest,
  inForce,
  place,
  putting,
  reading,
  steps,
  type Place,
} from './policy.ts';

const monday = '2026-03-16T08:00:00Z';
const script = 'tests/command-line/call-when-told.ts';

/** A process of its own that waits for the word. */
async function waiting(args: readonly string[]): Promise<ChildProcess> {
  const child = spawn(process.execPath, ['--import', 'tsx', script, monday, ...args], {
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  await once(child.stdout, 'data');
  return child;
}

/** How a process ended, and what it said. */
async function ended(child: ChildProcess): Promise<{ code: number | null; said: string }> {
  let said = '';
  child.stdout?.on('data', (part: Buffer) => void (said += part.toString()));
  child.stderr?.on('data', (part: Buffer) => void (said += part.toString()));
  const [code] = (await once(child, 'close')) as [number | null];
  return { code, said };
}

const withdrawing = (ward: string, by: string): readonly string[] => [
  'withdraw',
  ward,
  '--by',
  by,
  '--because',
  'Wrong.',
  '--instead',
  'Paper.',
];

test('of two people at once, with the same record before them, one wins and nothing is lost', async () => {
  const { ward } = await inForce();
  const { record, texts } = await loadRecord(ward);
  if (!record) throw new Error('the record does not hold');
  const by = (name: string) => ({
    body: { withdrawn: { from: monday, by: name, because: 'Wrong.', instead: 'Paper.' } },
    at: monday,
    keys: [],
  });
  const both = await Promise.all(
    ['Dr Ash', 'Sister Birch', 'Dr Elm'].map((name) => enter(ward, record, texts, by(name))),
  );
  expect(both.map(({ kind }) => kind).sort()).toEqual(['entered', 'too_late', 'too_late']);
  const after = await loadRecord(ward);
  expect(after.record?.entries).toHaveLength(5);
  expect(after.texts.slice(0, 4)).toEqual(texts);
});

test('processes that put in force and withdraw at the same moment', async () => {
  const { ward } = await inForce();
  const before = await loadRecord(ward);
  const children = await Promise.all([
    waiting(putting(ward, 1)),
    waiting(withdrawing(ward, 'Sister Birch')),
    waiting(putting(ward, 1)),
  ]);
  const results = children.map(ended);
  for (const child of children) child.stdin?.write('now\n');
  const all = await Promise.all(results);
  const won = all.filter(({ code }) => code === 0).length;
  expect(won).toBeGreaterThan(0);
  for (const { code, said } of all)
    if (code !== 0)
      expect({ code, said }).toEqual({
        code: 1,
        said: expect.stringContaining('somebody else made an entry'),
      });
  const after = await loadRecord(ward);
  expect(after.record?.entries).toHaveLength(4 + won);
  expect(after.texts.slice(0, 4)).toEqual(before.texts);
}, 120_000);

/** Calls that write, each with what it begins from, and whether it is done. */
const calls: readonly [string, (made: Place) => readonly string[], (ward: string) => Promise<boolean>][] = [
  [
    'seal',
    ({ ward }) => ['seal', ward, '--author', 'Dr Elm'],
    async (ward) => (await readdir(join(ward, 'editions'))).includes('2.yaml'),
  ],
  [
    'approve',
    ({ ward }) => approval(ward, 1, 'Dr Elm', 'Doctor'),
    async (ward) => (await readdir(join(ward, 'record'))).includes('5.json'),
  ],
  [
    'put-in-force',
    ({ ward }) => putting(ward, 1),
    async (ward) => (await readdir(join(ward, 'record'))).includes('5.json'),
  ],
  [
    'withdraw',
    ({ ward }) => withdrawing(ward, 'Dr Ash'),
    async (ward) => (await readdir(join(ward, 'record'))).includes('5.json'),
  ],
];

test.each(calls)(
  'a kill in the middle of %s leaves the old state or the new',
  async (name, call, isDone) => {
    const wards = await Promise.all(
      [5, 60, 400].map(async (delay) => {
        const made = await (name === 'approve' ? withoutAuthor() : inForce());
        await draft(made, 2);
        const child = await waiting(call(made));
        const end = ended(child);
        child.stdin?.write('now\n');
        setTimeout(() => child.kill('SIGKILL'), delay);
        await end;
        return made;
      }),
    );
    for (const made of wards) {
      const done = await isDone(made.ward);
      const { record } = await loadRecord(made.ward);
      expect(record).not.toBe(null);
      expect((await at(monday, ['check', made.protocols])).exit).toBe(0);
      if (name === 'withdraw' || name === 'put-in-force')
        expect((await at(monday, reading(made.ward))).exit).toBe(done && name === 'withdraw' ? 2 : 0);
      // What was not done can be done again.
      if (!done) await steps(monday, call(made));
      expect(await isDone(made.ward)).toBe(true);
    }
  },
  180_000,
);

/** As in force, but written by somebody who does not approve. */
async function withoutAuthor(): Promise<Place> {
  const made = await place();
  await steps(
    '2026-03-02T08:00:00Z',
    ['approvers', made.ward, '--agreed-by', 'Dr Ash', '--agreed-by', 'Sister Birch', '--minute', 'Minute 1'],
    ['seal', join(made.protocols, 'one_threshold')],
    ['seal', made.ward, '--author', 'Dr Oak'],
    approval(made.ward, 1, 'Dr Ash', 'Doctor'),
    approval(made.ward, 1, 'Sister Birch', 'Nurse'),
    putting(made.ward, 1),
  );
  return made;
}

test('what a kill leaves behind before the name is given, or after it, is no part of anything', async () => {
  const { ward, protocols } = await inForce();
  const entry = await readFile(join(ward, 'record', '4.json'), 'utf8');
  await writeFile(join(ward, 'record', '.5.json.a.draft'), entry.slice(0, 100));
  await writeFile(join(ward, 'record', '.4.json.b.draft'), entry);
  await writeFile(join(ward, 'editions', '.2.yaml.c.draft'), 'sealed: wa');
  expect((await at(monday, ['check', protocols])).exit).toBe(0);
  expect((await at(monday, reading(ward))).exit).toBe(0);
  await steps(monday, putting(ward, 1));
  expect((await loadRecord(ward)).record?.entries).toHaveLength(5);
});

test('an entry that is half there is refused, wherever it was cut', async () => {
  const { ward } = await inForce();
  const path = join(ward, 'record', '4.json');
  const entry = await readFile(path, 'utf8');
  for (const length of [0, 1, 100, entry.length - 2, entry.length - 1]) {
    await writeFile(path, entry.slice(0, length));
    expect((await loadRecord(ward)).record, `${length}`).toBe(null);
  }
});

test('a number is sealed once; the same again changes nothing', async () => {
  const made = await inForce();
  const path = join(made.ward, 'editions', '1.yaml');
  const before = await readFile(path);
  const same = await at(monday, ['seal', made.ward, '--author', 'Dr Elm']);
  expect(same.exit).toBe(0);
  expect(same.out).toContain('is sealed already and says the same; nothing was changed');
  await draft(made, 1, 'review_by: 2026-12-31\n');
  const other = await at(monday, ['seal', made.ward, '--author', 'Dr Elm']);
  expect(other.exit).toBe(1);
  expect(other.err).toContain('is sealed already');
  expect(other.err).toContain('edition: 2');
  expect((await readFile(path)).equals(before)).toBe(true);
});

test('a file is written once, and whole', async () => {
  const path = join(await folderForTest(), 'deep', 'a.txt');
  const texts = ['one', 'two', 'three'].map((word) => word.repeat(10_000));
  const done = await Promise.all(texts.map(async (text) => writeOnce(path, text)));
  expect(done.filter(Boolean)).toHaveLength(1);
  expect(await readFile(path, 'utf8')).toBe(texts[done.indexOf(true)]);
  expect(await readdir(join(path, '..'))).toEqual(['a.txt']);
});
