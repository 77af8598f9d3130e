import { expect, test } from 'vitest';
import { redCases } from '../../src/review/guards/guards-of.ts';
import { needlessReasons, unknownReasons } from '../../src/review/guards/reasons.ts';
import { bundledText, lessonNames } from '../bundled.ts';
import { guarded, guardsByName } from './kit.ts';

const parts = `observations: { needs: [systolic, heart_rate] }
rules:
  - { rule: low, when: { systolic: { below: 90 } }, level: look_again, says: It suggests a low pressure., source: [council] }
  - { rule: fast, when: { heart_rate: { above: 100 } }, level: call_doctor, says: It suggests a fast rate., source: [council] }
  - { rule: both, when: { all: [{ rule: low }, { rule: fast }] }, level: call_doctor, says: It suggests shock., source: [council] }
`;
const noCases = 'cases: []\n';

/** The examples for everything that is unguarded, as they are printed. */
function examplesOf(protocol: string, cases: string, ladder?: string): { names: string[]; yaml: string[] } {
  const found = [...guardsByName(guarded(protocol, cases, ladder)).values()];
  const open = found.flatMap((guard) =>
    guard.kind === 'unguarded' && guard.example.kind === 'case'
      ? [{ name: guard.change.name, yaml: guard.example.yaml }]
      : [],
  );
  return { names: open.map(({ name }) => name), yaml: open.map(({ yaml }) => yaml) };
}

test('without cases every change that matters is unguarded; pasted, the examples notice each of them and are green', () => {
  const { names, yaml } = examplesOf(parts, noCases);
  expect(names.length).toBeGreaterThan(15);
  const pasted = `cases:\n${yaml.join('\n')}`;
  const after = guarded(parts, pasted);
  expect(redCases(after.compiled.protocol, after.cases)).toEqual([]);
  const guards = guardsByName(after);
  expect(names.filter((name) => guards.get(name)?.kind !== 'noticed')).toEqual([]);
});

// A lesson that is based on another is held in tests/command-line/based-on.test.ts.
const alone = lessonNames.filter((name) => name !== 'lessons/a_ward_adapts');

test.each(alone)('%s: with its cases taken away, the examples bring them back', (name) => {
  const ladder = bundledText('alder_ladder/ladder.yaml');
  const protocol = bundledText(`${name}/protocol.yaml`).replace(/^#.*\n/gm, '');
  const head = `protocol: ${name.replace('lessons/', '')}\n`;
  const { names, yaml } = examplesOf(protocol, `${head}cases: []\n`, ladder);
  // A look back needs earlier sets, which no example invents.
  if (name === 'lessons/a_look_back') return expect(names).toEqual([]);
  expect(names.length).toBeGreaterThan(0);
  const after = guarded(protocol, `${head}cases:\n${yaml.join('\n')}`, ladder);
  expect(redCases(after.compiled.protocol, after.cases)).toEqual([]);
  const guards = guardsByName(after);
  expect(names.filter((each) => guards.get(each)?.kind !== 'noticed')).toEqual([]);
  return undefined;
});

test('a change that no set shows changes nothing, and asks for no case', () => {
  const guards = guardsByName(guarded(parts, noCases));
  // Whoever is fast calls the doctor already.
  expect(guards.get('rule both, level: call_doctor to look_again')?.kind).toBe('changes_nothing');
  expect(guards.get('rule fast, level: call_doctor to look_again')?.kind).toBe('unguarded');
});

test('a limit of another value is another protocol, although its logic is built alike', () => {
  const floor = `limits: { floor: { value: 90, unit: mmHg } }\n${parts.replace('below: 90', 'below: floor')}`;
  const guards = guardsByName(guarded(floor, noCases));
  expect(guards.get('limit floor, value: 90 to 91')).toMatchObject({
    kind: 'unguarded',
    example: { kind: 'case', yaml: expect.stringContaining('systolic: 90') as unknown },
  });
});

test('what the check refuses is noticed', () => {
  const partition = `${parts}exactly_one_of:
  heights:
    - { systolic: { below: 100 } }
    - { systolic: { at_least: 100 } }
`;
  const guard = guardsByName(guarded(partition, noCases)).get(
    'exactly_one_of heights 1 systolic below: 100 to 101',
  );
  expect(guard).toMatchObject({ kind: 'refused' });
});

test('a change that shows only where something is missing gets a case that lacks it', () => {
  const facts = `observations: { needs: [systolic, heart_rate] }
rules:
  - { rule: not_found, when: { systolic: { unobtainable: yes } }, level: call_doctor, says: It suggests a low pressure., source: [council] }
  - { rule: fast, when: { heart_rate: { above: 100 } }, level: call_doctor, says: It suggests a fast rate., source: [council] }
`;
  const guard = guardsByName(guarded(facts, noCases)).get('rule not_found, level: call_doctor to look_again');
  expect(guard).toMatchObject({ kind: 'unguarded', example: { kind: 'case' } });
  expect(JSON.stringify(guard)).toContain('systolic: { unobtainable: yes }');
});

test('a clause that no whole set needs is still needed where something is missing', () => {
  const always = `observations: { needs: [systolic, heart_rate] }
rules:
  - rule: a
    when: { any: [{ heart_rate: { above: 100 } }, { heart_rate: { at_most: 100 } }, { systolic: { below: 90 } }] }
    level: look_again
    says: It suggests something.
    source: [council]
  - { rule: low, when: { systolic: { below: 90 } }, level: look_again, says: It suggests a low pressure., source: [council] }
`;
  const guard = guardsByName(guarded(always, noCases)).get('rule a, when any 3: left out');
  expect(guard).toMatchObject({ kind: 'unguarded', example: { kind: 'case' } });
  const yaml = guard?.kind === 'unguarded' && guard.example.kind === 'case' ? guard.example.yaml : '';
  expect(yaml).toContain('met: [a]');
  expect(yaml).not.toMatch(/heart_rate: \d/);
});

test('next to a case with earlier sets, an example with earlier sets is found', () => {
  const ladder = bundledText('alder_ladder/ladder.yaml');
  const protocol = bundledText('lessons/a_look_back/protocol.yaml').replace(/^#.*\n/gm, '');
  const cases = `protocol: a_look_back
cases:
  - case: A fall of 30
    series:
      sets:
        - { at: "2026-03-03T08:00:00Z", systolic: 138 }
        - { at: "2026-03-03T11:00:00Z", systolic: 108 }
    expect: { met: [systolic_falling], level: { at_least: tell_nurse_in_charge } }
`;
  const guards = guardsByName(guarded(protocol, cases, ladder));
  expect(guards.get('rule systolic_falling, when systolic_change at_most: -20 to above -20')).toMatchObject({
    kind: 'noticed',
    by: 'A fall of 30',
  });
  expect(guards.get('rule systolic_falling, when systolic_change at_most: -20 to -21')).toMatchObject({
    kind: 'unguarded',
    example: { kind: 'not_found', because: 'beyond_sets' },
  });
});

test('a reason for a change that there is not is a problem; one for a change that is noticed is a warning', () => {
  const cases = `cases:
  - { case: One, given: { heart_rate: 101 }, expect: { met: [fast] } }
unguarded:
  - { change: "rule fast, when heart_rate above: 100 to 101", accepted: A rate is not counted to one beat. }
  - { change: "rule fast, when heart_rate above: 100 to 102", accepted: A rate is not counted to one beat. }
  - { change: "rule fast, when heart_rate above: 100 to 99", accepted: A rate is not counted to one beat. }
`;
  const of = guarded(parts, cases);
  const unknown = unknownReasons(of.cases, of.document, of.compiled.protocol);
  expect(unknown.map(({ code, line }) => ({ code, line }))).toEqual([{ code: 'unknown_change', line: 6 }]);
  const needless = needlessReasons(of.cases, [...guardsByName(of).values()]);
  expect(needless.map(({ code, line, severity }) => ({ code, line, severity }))).toEqual([
    { code: 'answer_not_needed', line: 5, severity: 'warning' },
  ]);
});
