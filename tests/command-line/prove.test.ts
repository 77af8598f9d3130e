import { cpSync, mkdtempSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { ask } from './ask.ts';

const bundled = fileURLToPath(new URL('../../protocols/', import.meta.url));

/** A folder with the ladder and the first lesson, its text changed. */
function lesson(change: (text: string) => string): string {
  const place = mkdtempSync(join(tmpdir(), 'prove-'));
  mkdirSync(join(place, 'alder_ladder'));
  cpSync(join(bundled, 'alder_ladder/ladder.yaml'), join(place, 'alder_ladder/ladder.yaml'));
  cpSync(join(bundled, 'lessons/one_threshold'), join(place, 'one_threshold'), { recursive: true });
  const file = join(place, 'one_threshold/protocol.yaml');
  const text = readFileSync(file, 'utf8');
  const changed = change(text);
  expect(changed).not.toBe(text);
  writeFileSync(file, changed);
  return join(place, 'one_threshold');
}

const broken = (): string => lesson((text) => text.replace('at_most: 90 }', 'at_most: 80 }'));

/** The first lesson, which then states nothing that must always hold. */
const silent = (): string =>
  lesson((text) =>
    text.replace(/^hazards:[^]*?(?=^findings:)/m, '').replace('one_threshold', 'says_nothing'),
  );

test('everything that the lessons state is proven, and what states nothing is named', async () => {
  const { exit, out, err } = await ask(['prove', 'lessons/one_threshold', 'lessons/a_score', silent()]);
  expect(err).toBe('');
  expect(exit).toBe(0);
  expect(out).toContain('low_calls_the_doctor');
  expect(out).toContain('Nothing that must always hold is stated in: says_nothing.');
  expect(out).toContain('not a medical device');
});

test('a threshold that was moved is refuted, with the plainest set as a case to paste, and ends with 1', async () => {
  const { exit, out } = await ask(['prove', broken()]);
  expect(exit).toBe(1);
  expect(out).toMatch(/low_calls_the_doctor[^]*?Refuted\.[^]*?- case: [^]*?given: \{ systolic: 90 \}/);
  expect(out).toContain('True of the rules as written, not of');
});

test('lines fit a narrow terminal', async () => {
  const { out } = await ask(['prove', 'lessons/one_threshold'], '', { width: 44 });
  expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(44);
});

test('--json is one document with every verdict', async () => {
  const { exit, out } = await ask(['prove', broken(), '--json']);
  expect(exit).toBe(1);
  const { files, caution } = JSON.parse(out) as {
    files: { requirements: { requirement: string; verdict: string }[] }[];
    caution: string;
  };
  const verdicts = files.flatMap(({ requirements }) => requirements.map(({ verdict }) => verdict));
  expect(new Set(verdicts)).toEqual(new Set(['proven', 'refuted']));
  expect(caution).toContain('not a medical device');
});

test.each([
  [['prove', 'one_treshold'], /There is no protocol "one_treshold"/],
  [['prove', silent()], /Nothing that must always hold is stated in says_nothing/],
  [['prove', 'lessons/one_threshold', '--jsn'], /--jsn/],
])('%j could not be asked', async (args, says) => {
  const { exit, out, err } = await ask(args);
  expect(exit).toBe(2);
  expect(out).toBe('');
  expect(err).toMatch(says);
});

test('an edition is not sealed while a requirement does not hold', async () => {
  const stricter = lesson((text) =>
    text.replace('where: { systolic: { at_most: 90 } }', 'where: { systolic: { at_most: 91 } }'),
  );
  const { exit, out, err } = await ask(['seal', stricter, '--author', 'Dr Elm']);
  expect(exit).toBe(1);
  expect(out + err).toMatch(/low_calls_the_doctor/);
});
