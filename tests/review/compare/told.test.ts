import { expect, test } from 'vitest';
import { compareSides } from '../../../src/review/compare/compare.ts';
import type { Comparison } from '../../../src/review/compare/comparison.ts';
import { comparisonToHtml } from '../../../src/review/compare/report/comparison-to-html.ts';
import type { Compiled } from '../../../src/outcome/compile.ts';
import { guarded } from '../kit.ts';
import { small } from './kit.ts';

const sourced = 'says: It may be so., source: [council]';
const rules = (text: string): string => `observations: { needs: [systolic, diastolic] }\nrules:\n${text}`;
const low = (name: string, at: number, level = 'look_again'): string =>
  `  - { rule: ${name}, title: Low, when: { systolic: { below: ${at} } }, level: ${level}, ${sourced} }\n`;
const soft = `  - { rule: soft, title: Soft, when: { diastolic: { below: 40 } }, level: look_again, ${sourced} }\n`;

const protocol = (text: string, ladder?: string): Compiled =>
  guarded(rules(text), 'cases: []\n', ladder).compiled;
const compared = (before: string, after: string): Comparison =>
  compareSides(protocol(before), protocol(after), null);

test('a moved threshold is told with its region, a witness, what made it and what happens in a series', () => {
  const { verdict, levels, rules: changed } = compared(low('low', 90) + soft, low('low', 100) + soft);
  expect(verdict).toBe('changes');
  expect(levels).toHaveLength(1);
  expect(levels[0]).toMatchObject({
    from: 'usual_round',
    to: 'look_again',
    direction: 'higher',
    in_common: ['systolic pressure 90 to 99 mmHg', 'diastolic pressure at least 40 mmHg'],
    regions: [],
    more: 0,
    because: [
      'rule low ("Low"): before, it asked for systolic pressure below 90 mmHg; now, it asks for systolic pressure below 100 mmHg',
    ],
  });
  expect(levels[0]?.witness).toMatchObject({ confirmed: true, before: 'usual round', after: 'look again' });
  expect(levels[0]?.course.join(' ')).toContain('from then on, without a new set');
  expect(changed).toMatchObject([
    { rule: 'low', is: 'asks_otherwise', stands: [{ in_common: ['systolic pressure 90 to 99 mmHg'] }] },
  ]);
});

test('a level that falls is told first, with what it does to stepping down', () => {
  const { levels } = compared(low('low', 90, 'call_doctor') + soft, low('low', 90) + soft);
  expect(levels.map(({ direction }) => direction)).toEqual(['lower']);
  expect(levels[0]?.course[0]).toContain('nobody is asked to agree that the patient steps down');
  expect(levels[0]?.because).toEqual([
    'rule low ("Low"): before, it called for "call doctor"; now, for "look again"',
  ]);
});

test('a renamed rule that asks the same is recognised, and nothing changes', () => {
  const comparison = compared(low('low', 90) + soft, low('quite_low', 90) + soft);
  expect(comparison).toMatchObject({
    verdict: 'nothing_changes',
    levels: [],
    rules: [],
    renamed: [{ protocol: 'example', from: 'low', to: 'quite_low' }],
    not_settled: [],
  });
});

test('a removed and an added rule are told as such', () => {
  const comparison = compared(low('low', 90) + soft, low('lower', 80) + soft);
  expect(comparison.rules.map(({ rule, is }) => [rule, is])).toEqual([
    ['low', 'removed'],
    ['lower', 'added'],
  ]);
  expect(comparison.levels[0]?.in_common).toEqual([
    'systolic pressure 80 to 89 mmHg',
    'diastolic pressure at least 40 mmHg',
  ]);
});

test('words alone are listed apart, and change nothing', () => {
  const comparison = compared(
    low('low', 90) + soft,
    (low('low', 90) + soft).replace('It may be so.', 'It may well be so.'),
  );
  expect(comparison.verdict).toBe('nothing_changes');
  expect(comparison.words).toEqual([
    { kind: 'words', where: 'rule low, says', before: 'It may be so.', after: 'It may well be so.' },
  ]);
});

const ladder = (levels: string): string => `ladder: example_ladder\nedition: 1\nlevels: [${levels}]\n`;

test('how a level is answered is listed apart; a level that is not there any more changes outcomes', () => {
  const whole = ladder(
    '{ level: usual_round }, { level: look_again, respond: 30 min }, { level: call_doctor }',
  );
  const sooner = whole.replace('30 min', '15 min');
  const answered = compareSides(
    protocol(low('low', 90) + soft, whole),
    protocol(low('low', 90) + soft, sooner),
    null,
  );
  expect(answered).toMatchObject({
    verdict: 'nothing_changes',
    words: [{ kind: 'response', where: 'level look_again, respond', before: '30 min', after: '15 min' }],
  });
  const fewer = ladder('{ level: usual_round }, { level: call_doctor }');
  const gone = compareSides(
    protocol(low('low', 90) + soft, whole),
    protocol(low('low', 90, 'call_doctor') + soft.replace('look_again', 'call_doctor'), fewer),
    null,
  );
  expect(gone.levels).toMatchObject([{ from: 'look_again', to: 'call_doctor', in_common: [] }]);
  expect(gone.levels[0]?.regions.flat()).toContain('systolic pressure at most 89 mmHg');
});

test('a rule written otherwise that means the same changes nothing, also where something is missing', () => {
  const two = `  - { rule: low, title: Low, when: { any: [{ systolic: { below: 80 } }, { systolic: { below: 90 } }] }, level: look_again, ${sourced} }\n`;
  const comparison = compared(low('low', 90) + soft, two + soft);
  expect(comparison).toMatchObject({ verdict: 'nothing_changes', not_settled: [], levels: [] });
  expect(comparison.rules.flatMap(({ stands }) => stands)).toEqual([]);
  expect(comparison.over.at(-1)).toContain('missing');
});

test('a rule about what could not be obtained is in no complete set, and its change is told by an example', () => {
  const failing = (level: string): string =>
    `${low('low', 90)}  - { rule: tried, title: Tried, when: { diastolic: { unobtainable: yes } }, level: ${level}, ${sourced} }\n`;
  const { verdict, levels, other_levels: others } = compared(failing('look_again'), failing('call_doctor'));
  expect({ verdict, levels, complete: others?.complete }).toEqual({
    verdict: 'changes',
    levels: [],
    complete: [],
  });
  expect(others?.whole).toBe(true);
  expect(others?.incomplete.every(({ witness }) => witness.in_words.includes('could not be obtained'))).toBe(
    true,
  );
  expect(compared(failing('look_again'), failing('look_again')).verdict).toBe('nothing_changes');
});

test('what only sets with something missing show is told with such a set', () => {
  const needs = small(
    `rules:\n  - { rule: r, title: R, when: { warmth: { below: 3 }, push: { above: 2 }, pull: { above: 2 }, mood: { is: sad }, signs: { one_of: [red] } }, level: look_again, ${sourced} }\n`,
  );
  const helps = guardedAsHelp();
  const comparison = compareSides(needs, helps, null);
  expect(comparison.levels).toEqual([]);
  expect(comparison.verdict).toBe('changes');
  const { incomplete = [] } = comparison.other_levels ?? {};
  expect(incomplete.length).toBeGreaterThan(0);
  for (const { direction, witness } of incomplete) {
    expect(direction).toBe('lower');
    expect(witness.in_words).toMatch(/(missing|could not be obtained): pull/);
  }
  expect(comparison.not_settled.join()).toContain('missing');
});

function guardedAsHelp(): Compiled {
  const text = `rules:\n  - { rule: r, title: R, when: { warmth: { below: 3 }, push: { above: 2 }, pull: { above: 2 }, mood: { is: sad }, signs: { one_of: [red] } }, level: look_again, ${sourced} }\n`;
  return small(text, undefined, (whole) =>
    whole
      .replace('needs: [warmth, push, pull]', 'needs: [warmth, push]')
      .replace('helps: [mood, signs]', 'helps: [mood, signs, pull]'),
  );
}

test('a limit that may be changed for a patient leaves that open', () => {
  const text = (value: number): string =>
    `limits: { floor: { title: lowest systolic, value: ${value}, unit: mmHg, between: [80, 120], set_by: prescriber } }\n${rules(`  - { rule: low, title: Low, when: { systolic: { below: floor } }, level: look_again, ${sourced} }\n${soft}`)}`;
  const [before, after] = [90, 100].map((value) => guarded(text(value), 'cases: []\n').compiled) as [
    Compiled,
    Compiled,
  ];
  const comparison = compareSides(before, after, null);
  expect(comparison.limits).toEqual([
    {
      limit: 'floor',
      before: '90 mmHg, which may be changed from 80 mmHg to 120 mmHg',
      after: '100 mmHg, which may be changed from 80 mmHg to 120 mmHg',
    },
  ]);
  expect(comparison.levels[0]?.in_common[0]).toBe('systolic pressure 90 to 99 mmHg');
  expect(comparison.not_settled.join()).toContain('lowest systolic');
});

test('the report stands alone, runs nothing, and no text of a protocol becomes markup', () => {
  const hostile = '</title><script>alert(1)</script>"\'><img src=x onerror=alert(1)>&amp;';
  const named = (text: string): string => text.replace('title: Low', `title: ${JSON.stringify(hostile)}`);
  const page = comparisonToHtml(compared(named(low('low', 90)) + soft, named(low('low', 100)) + soft));
  expect(page).toMatch(/^<!doctype html>/i);
  expect(page).toContain('Content-Security-Policy');
  expect(page).toContain('default-src &#39;none&#39;');
  expect(page).toContain('&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#39;&gt;&lt;img');
  expect(page).not.toMatch(/<script|<img|onerror=alert\(1\)>[^&]|<link|https?:/);
  expect(page).toContain('sha256:');
  expect(page).toContain('It is not a medical device.');
});

test('an average may lie between two steps: that nothing changes is then not said', () => {
  const averaged = (when: string): Compiled =>
    guarded(
      `observations: { needs: [systolic] }
measures: { mean_systolic: { average: systolic, over: 4 h, present_set: included, unit: mmHg } }
rules:
  - { rule: odd, title: Odd, when: ${when}, level: look_again, ${sourced} }
${low('low', 90)}`,
      'cases: []\n',
    ).compiled;
  const [before, after] = [
    averaged('{ mean_systolic: { above: 100, below: 101 } }'),
    averaged('{ mean_systolic: { above: 100, below: 101 }, systolic: { above: 95 } }'),
  ];
  const comparison = compareSides(before, after, null);
  expect(comparison.verdict).not.toBe('nothing_changes');
  expect(comparison.levels_whole).toBe(false);
  expect(comparison.not_settled).toContain('averages over earlier sets that lie between two steps');
  expect(compareSides(before, before, null).verdict).toBe('nothing_changes');
});
