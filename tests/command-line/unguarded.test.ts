import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bundledNames, bundledText, lessonNames } from '../bundled.ts';
import { ask } from './ask.ts';

/** A folder with the ladder and the first lesson, with these cases. */
function lessonWith(cases: string): string {
  const place = mkdtempSync(join(tmpdir(), 'unguarded-'));
  for (const name of ['alder_ladder', 'one_threshold']) mkdirSync(join(place, name));
  writeFileSync(join(place, 'alder_ladder/ladder.yaml'), bundledText('alder_ladder/ladder.yaml'));
  writeFileSync(
    join(place, 'one_threshold/protocol.yaml'),
    bundledText('lessons/one_threshold/protocol.yaml'),
  );
  writeFileSync(join(place, 'one_threshold/cases.yaml'), cases);
  return place;
}

const whole = bundledText('lessons/one_threshold/cases.yaml');
/** Without the case that stands one step beside the threshold. */
const oneFewer = whole.replace(/ {2}- case: One step above it[\s\S]*?\n\n/, '');

test('the lessons have no unguarded change', async () => {
  const { exit, out, err } = await ask(['check', '--unguarded', 'protocols/lessons']);
  expect(err).toBe('');
  expect(exit).toBe(0);
  expect(out.match(/ 0 unguarded/g)).toHaveLength(lessonNames.length);
});

test.each(bundledNames)(
  '%s has no unguarded change without a reason',
  async (name) => {
    const { exit, out } = await ask(['check', '--unguarded', `protocols/${name}`]);
    expect(out).toContain(' 0 unguarded');
    expect(exit).toBe(0);
  },
  600_000,
);

test('a missing case is printed, ready to be pasted, and pasted it is enough', async () => {
  expect(oneFewer).not.toBe(whole);
  const { exit, out } = await ask(['check', '--unguarded', lessonWith(oneFewer)]);
  expect(exit).toBe(1);
  expect(out).toContain('rule systolic_low, when systolic at_most: 90 to 91\n  UNGUARDED');
  const examples = out.match(/^ {2}- case: "To be reviewed: [^\n]*90 to 91"\n(?: {4}.*\n)+/m)?.[0] ?? '';
  expect(examples).toContain('given: { systolic: 91 }');
  const after = await ask(['check', '--unguarded', lessonWith(`${oneFewer.trimEnd()}\n${examples}`)]);
  expect(after.out).toContain(' 0 unguarded');
  expect(after.exit).toBe(0);
});

test('a reason in the case file is enough; a reason for nothing is a problem at its place', async () => {
  const names = ['90 to 91', '90 to 95'].map((move) => `rule systolic_low, when systolic at_most: ${move}`);
  const reasons = names.map((name) => `  - { change: "${name}", accepted: Agreed by the council. }\n`);
  const cases = `${oneFewer.trimEnd()}\nunguarded:\n${reasons.join('')}`;
  const accepted = await ask(['check', '--unguarded', lessonWith(cases)]);
  expect(accepted.out).toContain('2 accepted, 0 unguarded');
  expect(accepted.exit).toBe(0);
  const place = lessonWith(cases.replace('90 to 91', '90 to 92'));
  const plain = await ask(['check', place]);
  expect(plain.exit).toBe(1);
  expect(plain.err).toContain('90 to 92');
  expect(plain.err).toMatch(/cases\.yaml:\d+:\d+/);
});

test('--json prints one document with the changes and what the cases show', async () => {
  const { exit, out } = await ask(['check', '--unguarded', '--json', lessonWith(oneFewer)]);
  expect(exit).toBe(1);
  const { holds, protocols } = JSON.parse(out) as {
    holds: boolean;
    protocols: { changes: { is: string }[]; coverage: { rules: unknown[]; comparisons: unknown[] } }[];
  };
  expect(holds).toBe(false);
  expect(new Set(protocols[0]?.changes.map(({ is }) => is))).toEqual(new Set(['noticed', 'unguarded']));
  expect(protocols[0]?.coverage.rules).toHaveLength(2);
  expect(protocols[0]?.coverage.comparisons).toHaveLength(1);
});

test('a case that is red before anything is changed ends the question', async () => {
  const { exit, err } = await ask([
    'check',
    '--unguarded',
    lessonWith(whole.replace('systolic: 91', 'systolic: 89')),
  ]);
  expect(exit).toBe(1);
  expect(err).toContain('One step above it');
});
