import { expect, test } from 'vitest';
import { linesOf, readDocument, reportCases, runCases } from '../../src/index.ts';
import { askable, bundledNames, bundledText, lessonNames } from '../bundled.ts';

const textOf = (name: string): string => bundledText(`${name}/cases.yaml`);

test.each([...bundledNames, ...lessonNames])(
  'the report of %s has every case, with the problems of a run',
  (name) => {
    const [text, protocol] = [textOf(name), askable(name)];
    const { results, problems } = runCases('cases.yaml', text, protocol);
    const report = reportCases('cases.yaml', text, protocol);
    expect(report.cases.map((each) => each.name)).toEqual(results.map((each) => each.name));
    expect(report.problems).toEqual(problems);
    expect(report.cases.filter(({ passes }) => !passes)).toEqual([]);
    const first = report.cases.map(({ lines }) => text.split('\n')[lines.firstLine - 1]);
    expect(first.filter((line) => !/^ *- case: /.test(line ?? ''))).toEqual([]);
  },
);

const lesson = 'lessons/two_signs_together';

test('a case that fails says what came out otherwise, and where that is expected', () => {
  const text = textOf(lesson).replace(
    'level: { at_least: look_again, could_be: look_again',
    'level: { at_least: usual_round, could_be: look_again',
  );
  const report = reportCases('cases.yaml', text, askable(lesson));
  const failing = report.cases.filter(({ passes }) => !passes);
  expect(failing.map(({ name, differences }) => ({ name, differences }))).toEqual([
    {
      name: 'Only the rate',
      differences: [
        {
          says: 'The case "Only the rate" expects the level at least: usual_round; it is look_again.',
          line:
            text
              .split('\n')
              .findIndex((line) => line.includes('at_least: usual_round, could_be: look_again')) + 1,
        },
      ],
    },
  ]);
  expect(report.problems.map(({ code }) => code)).toEqual(['case_fails']);
});

test('a case names the rules that decide its level, with their sentences, and the numbers that were given', () => {
  const report = reportCases('cases.yaml', textOf(lesson), askable(lesson));
  expect(report.cases.find(({ name }) => name === 'Both')).toMatchObject({
    applies: 'yes',
    level: { at_least: 'tell_nurse_in_charge', could_be: 'tell_nurse_in_charge', settled: true },
    levelSays: 'Tell the nurse in charge; settled.',
    decided: [
      {
        rule: 'both_fast',
        title: 'Both fast',
        because: ['"Fast rate" is met', '"Fast breathing" is met'],
      },
    ],
    met: ['fast_rate', 'fast_breathing', 'both_fast'],
    undecided: [],
    given: { heart_rate: { low: 91, high: 91 }, respiratory_rate: { low: 21, high: 21 } },
  });
  expect(report.cases.at(-1)).toMatchObject({
    levelSays: 'At least: Look again; not settled, it could be: Tell the nurse in charge.',
    undecided: ['fast_rate', 'both_fast'],
    given: { respiratory_rate: { low: 24, high: 24 } },
  });
});

test('a case of a patient for whom the protocol is not has no level and no rules', () => {
  const report = reportCases('cases.yaml', textOf('pressure_reading'), askable('pressure_reading'));
  const outside = report.cases.filter(({ applies }) => applies === 'no');
  expect(outside.length).toBeGreaterThan(0);
  for (const each of outside)
    expect(each).toMatchObject({
      level: null,
      met: [],
      undecided: [],
      decided: [],
      levelSays: 'Not for this patient: no level.',
    });
});

test('of a file that cannot be read there are only its problems', () => {
  const { cases, problems } = reportCases('cases.yaml', 'cases: [', askable(lesson));
  expect(cases).toEqual([]);
  expect(problems).not.toEqual([]);
});

test('the parts of a file stand from their first to their last line', () => {
  const text = bundledText('lessons/a_limit_to_change/protocol.yaml');
  const { document } = readDocument('protocol.yaml', text);
  const found = document && linesOf(document);
  const [limit, measure, rule] = [found?.limits[0], found?.measures[0], found?.rules[0]];
  expect(found?.cases).toEqual([]);
  const lines = text.split('\n');
  expect(lines[(limit?.firstLine ?? 0) - 1]).toBe('  mean_floor:');
  expect(lines[(limit?.lastLine ?? 0) - 1]).toBe('    set_by: prescriber');
  expect(lines[(measure?.lastLine ?? 0) - 1]).toBe('    unit: mmHg');
  expect(lines[(rule?.firstLine ?? 0) - 1]).toBe('  - rule: mean_low');
  expect(lines[(rule?.lastLine ?? 0) - 1]).toBe('    source: [lesson]');
});
