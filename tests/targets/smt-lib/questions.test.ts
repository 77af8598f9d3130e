import { expect, test } from 'vitest';
import { and, not, or, type Logical } from '../../../src/logic/operators.ts';
import { everySet } from '../../../src/review/box.ts';
import { levelCouldBe, levelIsAtLeast, ruleIs, statesDiffer } from '../../../src/targets/smt-lib/answers.ts';
import { questionToSmt, type Question } from '../../../src/targets/smt-lib/question-to-smt.ts';
import { completeSets } from '../../../src/targets/smt-lib/sets.ts';
import { askable } from '../../bundled.ts';
import { judges } from './judges.ts';

type Row = readonly [says: string, holds: Logical, answer: 'sat' | 'unsat', sets?: Partial<Question['sets']>];

/** Questions to a protocol, and what must come out, which can be seen in its file. */
function rows(
  name: string,
  all: readonly Row[],
): { readonly script: string; readonly wanted: string; readonly answer: string }[] {
  const { logic, protocol } = askable(name);
  return all.map(([says, holds, answer, sets]) => ({
    script: questionToSmt({ protocol, logic, sets: { ...completeSets, ...sets }, holds, says }),
    wanted: `${name}: ${says}: ${answer}`,
    answer,
  }));
}

const one = askable('lessons/one_threshold').logic;
const low = (state: Parameters<typeof ruleIs>[2]): Logical => ruleIs(one, 'systolic_low', state);
const between = (from: number, to: number): Partial<Question['sets']> => ({
  ranges: new Map([['systolic', [from, to]]]),
});
/** A mean that is not below 65. */
const above65 = new Map([
  ['systolic', [65, 300]],
  ['diastolic', [65, 300]],
] as const);
const pressures = (systolic: number, diastolic: number): NonNullable<Question['sets']['ranges']> =>
  new Map([
    ['systolic', [systolic, systolic]],
    ['diastolic', [diastolic, diastolic]],
  ]);
const mean = askable('lessons/a_limit_to_change').logic;
const two = askable('lessons/two_signs_together').logic;
const back = askable('lessons/a_look_back').logic;
const score = askable('early_warning_score');

const asked = [
  ...rows('lessons/one_threshold', [
    ['at the threshold it is met', low('met'), 'sat', between(90, 90)],
    ['one step beside it, it is not', low('met'), 'unsat', between(91, 500)],
    ['a complete set decides it', low('undecided'), 'unsat'],
    ['without a pressure it is undecided', low('undecided'), 'sat', { given: 'partial' }],
    [
      'it is never decided by what is missing',
      or(low('met'), low('not_met')),
      'unsat',
      { absent: new Map([['systolic', 'missing']]) },
    ],
    [
      'a range over the threshold leaves it open',
      and(low('undecided'), { var: 'systolic:known' }),
      'sat',
      { given: 'any' },
    ],
    ['the lowest level is an answer', levelIsAtLeast(one, 0), 'sat', between(91, 500)],
    [
      'and none while the pressure is missing',
      levelIsAtLeast(one, 0),
      'unsat',
      { absent: new Map([['systolic', 'missing']]) },
    ],
    [
      'it could then still be the doctor',
      levelCouldBe(one, 3),
      'sat',
      { absent: new Map([['systolic', 'missing']]) },
    ],
    ['but no more', levelCouldBe(one, 4), 'unsat', { absent: new Map([['systolic', 'missing']]) }],
    [
      'what was tried and not obtained is an emergency',
      not(levelIsAtLeast(one, 3)),
      'unsat',
      { absent: new Map([['systolic', 'unobtainable']]) },
    ],
  ]),
  ...rows('lessons/a_limit_to_change', [
    ['a limit as it is written', ruleIs(mean, 'mean_low', 'met'), 'unsat', { ranges: above65 }],
    [
      'and changed for a patient',
      ruleIs(mean, 'mean_low', 'met'),
      'sat',
      { ranges: above65, limits: 'within_bounds' },
    ],
  ]),
  ...rows('lessons/a_limit_to_change', [
    ['two pressures that contradict are no set', true, 'unsat', { ranges: pressures(90, 90) }],
    ['two pressures one step apart are', true, 'sat', { ranges: pressures(91, 90) }],
  ]),
  ...rows('lessons/two_signs_together', [
    ['two rules do not always agree', statesDiffer(two, 'fast_rate', 'both_fast'), 'sat'],
    [
      'both is never met alone',
      and(ruleIs(two, 'both_fast', 'met'), ruleIs(two, 'fast_rate', 'not_met')),
      'unsat',
    ],
    [
      'nor when anything is missing',
      and(ruleIs(two, 'both_fast', 'met'), not(ruleIs(two, 'fast_rate', 'met'))),
      'unsat',
      { given: 'any' },
    ],
  ]),
  ...rows('lessons/a_look_back', [
    ['a look back finds what earlier sets may have had', ruleIs(back, 'systolic_falling', 'met'), 'sat'],
    ['or may lack', ruleIs(back, 'systolic_falling', 'met'), 'sat', { given: 'partial' }],
  ]),
  ...rows('early_warning_score', [
    [
      'a box of the review fits as it is',
      ruleIs(score.logic, 'score_5_or_more', 'met'),
      'sat',
      everySet(score.protocol),
    ],
  ]),
];

test.for(judges)('each question has the answer that its protocol gives ($name)', ({ ask }, context) => {
  const answers = ask(
    asked.map(({ script }) => script),
    context,
  );
  const told = asked.map(({ wanted, answer }, index) =>
    wanted.replace(new RegExp(`${answer}$`), answers[index] ?? 'nothing'),
  );
  expect(told).toEqual(asked.map(({ wanted }) => wanted));
});

test('a name that the protocol does not read is not passed over', () => {
  const { logic, protocol } = askable('lessons/one_threshold');
  const ask = (sets: Partial<Question['sets']>): string =>
    questionToSmt({ protocol, logic, sets: { ...completeSets, ...sets }, holds: true, says: '' });
  expect(() => ask({ ranges: new Map([['diastolic', [1, 2]]]) })).toThrow('diastolic');
  expect(() => ask({ choices: new Map([['pulse', ['yes']]]) })).toThrow('pulse');
  expect(() => ask({ absent: new Map([['age', 'missing']]) })).toThrow('age');
  expect(() => ask({ absent: new Map([['systolic', 'assumed']]) })).toThrow('nothing is assumed');
});
