import { expect, test } from 'vitest';
import { allExamples, commandsOf } from '../house/pages.ts';
import { judges } from '../targets/smt-lib/judges.ts';
import { ask } from './ask.ts';

const lesson = 'lessons/one_threshold';
const build = (protocol: string, ...more: string[]): string[] => [
  'build',
  protocol,
  '--to',
  'smt-lib',
  ...more,
];

/** Questions as they are written on the command line, and what a solver says of each. */
const rows: readonly (readonly [args: string[], answer: 'sat' | 'unsat'])[] = [
  [build(lesson, '--ask', 'set'), 'sat'],
  [build(lesson, '--ask', 'rule:systolic_low'), 'sat'],
  [build(lesson, '--ask', 'rule:systolic_low', '--where', 'systolic=90'), 'sat'],
  [build(lesson, '--ask', 'rule:systolic_low', '--where', 'systolic=91..500'), 'unsat'],
  [build(lesson, '--ask', 'rule:systolic_low=undecided'), 'unsat'],
  [build(lesson, '--ask', 'rule:systolic_low=undecided', '--sets', 'partial'), 'sat'],
  [build(lesson, '--ask', 'rule:systolic_low=not_met', '--where', 'systolic=missing'), 'unsat'],
  [build(lesson, '--ask', 'rule:no_pressure_found', '--where', 'systolic=unobtainable'), 'sat'],
  [build(lesson, '--ask', 'level:call_doctor'), 'sat'],
  [build(lesson, '--ask', 'level:emergency_call', '--sets', 'any'), 'unsat'],
  [build(lesson, '--ask', 'level:emergency_call=could_be', '--sets', 'any'), 'unsat'],
  [build(lesson, '--ask', 'level:usual_round', '--where', 'systolic=missing'), 'unsat'],
  [
    build(
      'lessons/a_limit_to_change',
      '--ask',
      'rule:mean_low',
      '--where',
      'systolic=65..300',
      '--where',
      'diastolic=65..300',
    ),
    'unsat',
  ],
  [
    build(
      'lessons/a_limit_to_change',
      '--ask',
      'rule:mean_low',
      '--where',
      'systolic=65..300',
      '--where',
      'diastolic=65..300',
      '--limits',
      'within_bounds',
    ),
    'sat',
  ],
  [build('lessons/two_signs_together', '--ask', 'together:fast_rate,fast_breathing'), 'sat'],
  [build('lessons/two_signs_together', '--ask', 'differs:fast_rate,both_fast'), 'sat'],
  // Contradictory sets are no sets.
  [
    build('lessons/a_limit_to_change', '--ask', 'set', '--where', 'systolic=90', '--where', 'diastolic=90'),
    'unsat',
  ],
  [
    build('early_warning_score', '--ask', 'rule:three_in_one_parameter', '--where', 'consciousness=alert'),
    'sat',
  ],
  [build('early_warning_score', '--ask', 'level:emergency_call', '--where', 'consciousness=missing'), 'sat'],
];

test.for(judges)('each question of the command line is answered ($name)', async (judge, context) => {
  const built = await Promise.all(rows.map(async ([args]) => ask(args)));
  expect(built.map(({ exit, err }) => [exit, err])).toEqual(rows.map(() => [0, '']));
  const answers = judge.ask(
    built.map(({ out }) => out),
    context,
  );
  expect(rows.map(([args], index) => [args.join(' '), answers[index]])).toEqual(
    rows.map(([args, answer]) => [args.join(' '), answer]),
  );
});

test.for(judges)('what the page shows is answered as the page says ($name)', (judge, context) => {
  const shown = allExamples().filter(
    ({ page, language }) => page.endsWith('smt_lib.md') && language === 'console',
  );
  expect(
    judge.ask(
      shown.flatMap(commandsOf).map(({ output }) => output),
      context,
    ),
  ).toEqual(['unsat']);
});

test.for(judges)('without a question the text is well, and asks nothing ($name)', async (judge, context) => {
  const { out } = await ask(build('pressure_reading', '--sets', 'any', '--limits', 'within_bounds'));
  expect(judge.ask([out], context)).toEqual([]);
  expect(
    judge.ask([`${out}(assert |answers/rules/systolic_too_low/certain|)\n(check-sat)\n`], context),
  ).toEqual(['sat']);
});

test('a text of SMT-LIB carries the caution and says which edition it is of', async () => {
  const { out } = await ask(build(lesson, '--ask', 'set'));
  expect(out).toMatch(/^; Lesson 1: one threshold: protocol one_threshold, edition 1, as SMT-LIB 2/);
  expect(out).toMatch(/^; sha256:[0-9a-f]{64}$/m);
  expect(out.replaceAll('\n; ', ' ')).toContain('It is not a medical device, and the paper policy wins.');
});
