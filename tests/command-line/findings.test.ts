import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { caution } from '../../src/outcome/caution.ts';
import { bundledText } from '../bundled.ts';
import { ask } from './ask.ts';

const whole = bundledText('lessons/every_set/protocol.yaml');

/** A folder with the ladder and the lesson, changed so. */
function lesson(protocol: string, cases = bundledText('lessons/every_set/cases.yaml')): string {
  const place = mkdtempSync(join(tmpdir(), 'findings-'));
  for (const name of ['alder_ladder', 'every_set']) mkdirSync(join(place, name));
  writeFileSync(join(place, 'alder_ladder/ladder.yaml'), bundledText('alder_ladder/ladder.yaml'));
  writeFileSync(join(place, 'every_set/protocol.yaml'), protocol);
  writeFileSync(join(place, 'every_set/cases.yaml'), cases);
  return place;
}

const findings = async (protocol: string, cases?: string): ReturnType<typeof ask> =>
  ask(['check', '--findings', lesson(protocol, cases)]);

test('a lesson with every finding answered is well, and what is printed carries the caution', async () => {
  const { exit, out, err } = await findings(whole);
  expect(err).toBe('');
  expect(out).toContain('every_set: 0 to be answered, 1 accepted, 3 told, 0 not settled');
  expect(out).toContain('True of the rules as written');
  expect(out).toContain(caution);
  expect(exit).toBe(0);
});

test('without the answer it is printed with cases ready to be pasted, which are then green', async () => {
  const { exit, out } = await findings(whole.replace(/# What is found and meant so[\s\S]*$/, ''));
  expect(exit).toBe(1);
  expect(out).toContain('1 to be answered, 0 accepted');
  const answer = /^ +(- \{ finding: .*\})$/m.exec(out)?.[1] ?? '';
  const cases = out.match(/^ {2}- case: "To be reviewed: [^\n]*"\n(?: {4}.*\n)+/gm) ?? [];
  expect(cases).toHaveLength(2);
  const pasted = `protocol: every_set\ncases:\n${cases.join('')}`.replaceAll(
    /systolic: (call|look)/g,
    'systolic; $1',
  );
  const place = lesson(
    whole.replace(/# What is found and meant so[\s\S]*$/, `findings:\n  ${answer}\n`),
    pasted.replace('look_again"', 'look_again, once more"'),
  );
  const checked = await ask(['check', place]);
  expect(checked.err).toBe('');
  expect((await ask(['check', '--findings', place])).exit).toBe(0);
});

test('an answer to what is not found any more is a problem at its place', async () => {
  const { exit, err } = await findings(whole.replace('level: look_again', 'level: call_doctor'));
  expect(exit).toBe(1);
  expect(err).toContain('and nothing of that name is found');
});

test.each([
  [
    'a rule that nobody can meet',
    ['at_most: 90', 'at_most: 90, above: 90'],
    'The rule "Systolic low" is never met',
  ],
  ['the same rule twice', ['at_most: 90', 'at_most: 100'], 'are always met together'],
  ['a hole', ['at_most: 100', 'at_most: 95'], 'are answered by no rule at all'],
  [
    'an ordinary pressure that is not let alone',
    ['at_most: 100', 'at_most: 110'],
    'does not settle at the lowest level',
  ],
  [
    'a threshold that another one makes idle',
    [
      'when: { systolic: { at_most: 100 } }',
      'when: { any: [{ systolic: { at_most: 100 } }, { systolic: { below: 60 } }] }',
    ],
    'systolic below 60 changes nothing',
  ],
])('%s is found', async (_, [from, to], sentence) => {
  expect(whole).toContain(from);
  const { exit, out } = await findings(whole.replace(from as string, to as string));
  expect(out).toContain(sentence);
  expect(exit).toBe(1);
});

test('as JSON it is one document', async () => {
  const { exit, out } = await ask(['check', '--findings', '--json', lesson(whole)]);
  expect(exit).toBe(0);
  const report = JSON.parse(out) as {
    holds: boolean;
    caution: string;
    protocols: { findings: { kind: string }[] }[];
  };
  expect(report).toMatchObject({ holds: true, caution });
  expect(report.protocols[0]?.findings.map(({ kind }) => kind)).toContain('cliff');
});
