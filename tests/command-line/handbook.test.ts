import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ask } from './ask.ts';

const folder = (): string => mkdtempSync(join(tmpdir(), 'handbook-'));
const later = { now: '2026-12-01T12:00:00Z', today: '2026-12-01' };

test('a draft goes to standard output, or whole into a file', async () => {
  const { exit, out, err } = await ask(['handbook', 'lessons/one_threshold']);
  expect([exit, err]).toEqual([0, '']);
  expect(out).toMatch(/^<!doctype html>\n<html lang="en">/);
  expect(out).toContain('DRAFT');
  const file = join(folder(), 'handbook.html');
  expect(await ask(['handbook', 'lessons/one_threshold', '--out', file])).toEqual({
    exit: 0,
    out: '',
    err: '',
  });
  expect(readFileSync(file, 'utf8')).toBe(out);
});

test(
  'a sealed ward policy tells of its approvals, and since when it is in force',
  { timeout: 60_000 },
  async () => {
    const { exit, out } = await ask(['handbook', 'alder_wing@1'], '', later);
    expect(exit).toBe(0);
    expect(out).not.toContain('DRAFT');
    expect(out).toContain('Sealed on 2026-11-2');
    expect(out).toContain('In force since 2026-11-25 18:59:25');
    expect(out).toMatch(/<td>Sister Birch<\/td>\s*<td>Senior nurse<\/td>\s*<td>Minute 2026-15<\/td>/);
    expect(out).toContain('Rule “Systolic on the low side”');
  },
);

test('before it was put in force it says that nothing is', { timeout: 60_000 }, async () => {
  const { out } = await ask(['handbook', 'alder_wing@1'], '', { now: '2026-11-25T18:59:00Z' });
  expect(out).toContain('Nothing is in force for this ward');
  expect(out).not.toContain('In force since');
});

test('a sealed protocol is in force through a ward policy alone', async () => {
  const { exit, out } = await ask(['handbook', 'reading_technique@1'], '', later);
  expect(exit).toBe(0);
  expect(out).toContain('A protocol is in force only through a ward policy that reads with it.');
});

/** A lesson of its own, with its ladder, so that it can be changed. */
function lessonWith(change: (text: string) => string, file: 'cases.yaml' | 'protocol.yaml'): string {
  const place = folder();
  const own = join(place, 'one_threshold');
  mkdirSync(own);
  cpSync('protocols/alder_ladder', join(place, 'alder_ladder'), { recursive: true });
  cpSync('protocols/lessons/one_threshold', own, { recursive: true });
  writeFileSync(join(own, file), change(readFileSync(join(own, file), 'utf8')));
  return own;
}

test('a case that does not come out as expected stands in the handbook, and the call ends with 1', async () => {
  const own = lessonWith(
    (text) => text.replace(/at_least: (?!usual_round)\w+/, 'at_least: usual_round'),
    'cases.yaml',
  );
  const { exit, out, err } = await ask(['handbook', own]);
  expect(exit).toBe(1);
  expect(err).toContain('Not as expected');
  expect(out).toContain('Not as expected, and to be looked at');
});

test('of a protocol with an error there is no handbook, nor a file', async () => {
  const own = lessonWith((text) => text.replace('rules:', 'rulez:'), 'protocol.yaml');
  const place = folder();
  const { exit, out, err } = await ask(['handbook', own, '--out', join(place, 'x.html')]);
  expect([exit, out]).toEqual([2, '']);
  expect(err).toContain('rulez');
  expect(readdirSync(place)).toEqual([]);
});

test.each([
  [['handbook'], 'One protocol or ward policy is to be named'],
  [['handbook', 'alder_wing', 'second'], 'One protocol or ward policy is to be named'],
  [['handbook', 'no_such'], 'There is no protocol or ward policy "no_such"'],
  [['handbook', 'no_such@1'], 'There is no protocol or ward policy "no_such"'],
  [['handbook', 'alder_wing@99'], 'There is no sealed edition 99 of "alder_wing"'],
  [['handbook', 'lessons/one_threshold', '--to', 'pdf'], "Unknown option '--to'"],
  [['handbook', 'lessons/one_threshold', '--out', tmpdir()], 'it is a folder'],
])('%j cannot be asked', async (args, says) => {
  const { exit, out, err } = await ask(args);
  expect([exit, out]).toEqual([2, '']);
  expect(err).toContain(says);
});

test(
  'of a draft with a higher edition it tells what changes since the sealed one',
  { timeout: 120_000 },
  async () => {
    const place = folder();
    for (const name of ['alder_ladder', 'bleeding_watch'])
      cpSync(`protocols/${name}`, join(place, name), { recursive: true });
    const own = join(place, 'bleeding_watch');
    const file = join(own, 'protocol.yaml');
    const text = readFileSync(file, 'utf8');
    // Without what the second edition adds it says what the sealed one says.
    const asSealed = text
      .replace('\nedition: 2\n', '\nedition: 1\n')
      .replace(/\n# What can go wrong[^]*$/, '');
    expect(asSealed).toContain('\nedition: 1\n');
    writeFileSync(file, asSealed);
    expect((await ask(['handbook', own])).out).not.toContain('Changes since');
    writeFileSync(file, text.replace('says: ', 'says: Changed for this test. '));
    const { out, err } = await ask(['handbook', own]);
    expect(err).toBe('');
    expect(out).toContain('<h2>Changes since edition 1</h2>');
    expect(out).toContain('No set gets another level or other rules');
    expect(out).toContain('Changed for this test.');
  },
);

test('a requirement that does not hold stands in the handbook, and the call ends with 1', async () => {
  const own = lessonWith(
    (text) => text.replace('where: { systolic: { at_most: 90 } }', 'where: { systolic: { at_most: 91 } }'),
    'protocol.yaml',
  );
  const { exit, out, err } = await ask(['handbook', own]);
  expect([exit, err]).toEqual([1, 'Not proven, and told of in the handbook: low_calls_the_doctor.\n']);
  expect(out).toContain('low calls the doctor: REFUTED');
});
