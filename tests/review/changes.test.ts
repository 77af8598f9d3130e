import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { roundNumbers } from '../../src/review/changes/steps.ts';
import { namesOf } from './kit.ts';

const rule = (when: string, more = ''): string =>
  `rules:\n  - { rule: a, when: ${when}, level: look_again, says: It suggests something., source: [council]${more} }\n`;
/** Rules over some observations. */
const needing = (observations: string, rules: string): string => `observations: ${observations}\n${rules}`;
const pressure = 'observations: { needs: [systolic, heart_rate] }\n';

test('a threshold moves a step and to the next round number, in both directions', () => {
  const parts = pressure + rule('{ systolic: { below: 92 }, heart_rate: { above: 40 } }');
  expect([...namesOf('step', parts), ...namesOf('round', parts)]).toEqual([
    'rule a, when systolic below: 92 to 91',
    'rule a, when systolic below: 92 to 93',
    'rule a, when heart_rate above: 40 to 39',
    'rule a, when heart_rate above: 40 to 41',
    'rule a, when systolic below: 92 to 90',
    'rule a, when systolic below: 92 to 95',
    'rule a, when heart_rate above: 40 to 35',
    'rule a, when heart_rate above: 40 to 45',
  ]);
});

test('a round number that is one step away is one change, not two', () => {
  const parts = pressure + rule('{ systolic: { below: 91 }, heart_rate: { above: 40 } }');
  expect(
    [...namesOf('step', parts), ...namesOf('round', parts)].filter((name) => name.endsWith('91 to 90')),
  ).toHaveLength(1);
});

test.each([
  ['91', '1', '90', '95'],
  ['90', '1', '85', '95'],
  ['38', '0.1', '37.5', '38.5'],
  ['38.3', '0.1', '38', '38.5'],
  ['0.9', '0.1', '0.5', '1'],
  ['-20', '1', '-25', '-15'],
  ['16', '1/12', '15', '20'],
])('the round numbers beside %s at steps of %s are %s and %s', (value, step, below, above) => {
  const found = roundNumbers(new Fraction(value), new Fraction(step)).map((each) => each.toString());
  expect(found).toEqual([below, above]);
});

test('an age in years moves by a month and by five years, and says so in words that can be read', () => {
  const parts = `applies_when: { age: { at_least: 16 y } }\n${pressure}${rule('{ systolic: { below: 90 }, heart_rate: { above: 40 } }')}`;
  expect(
    [...namesOf('step', parts), ...namesOf('round', parts)].filter((name) => name.includes('age')),
  ).toEqual([
    'applies_when age at_least: 16 y to 191 mo',
    'applies_when age at_least: 16 y to 193 mo',
    'applies_when age at_least: 16 y to 15 y',
    'applies_when age at_least: 16 y to 20 y',
  ]);
});

test('limits, bands of a score, and how many of a list must hold are thresholds too', () => {
  const parts = `${pressure}limits: { floor: { value: 90, unit: mmHg } }
measures:
  points: { score: { heart_rate: [{ at_most: 50, points: 1 }, { points: 0 }] } }
rules:
  - rule: a
    when: { at_least_of: { count: 2, of: [{ systolic: { below: floor } }, { points: { at_least: 1 } }, { heart_rate: { above: 90 } }] } }
    level: look_again
    says: It suggests something.
    source: [council]
`;
  expect(namesOf('step', parts)).toEqual(
    expect.arrayContaining([
      'limit floor, value: 90 to 91',
      'measure points, score heart_rate 1 at_most: 50 to 51',
      'rule a, when at_least_of count: 2 to 3',
    ]),
  );
  expect(namesOf('points', parts)).toEqual([
    'measure points, score heart_rate 1 points: 1 to 0',
    'measure points, score heart_rate 1 points: 1 to 2',
    'measure points, score heart_rate 2 points: 0 to -1',
    'measure points, score heart_rate 2 points: 0 to 1',
  ]);
  expect(namesOf('boundary', parts)).toContain('measure points, score heart_rate 1 at_most: 50 to below 50');
});

test('a comparison is flipped at its number and in its direction', () => {
  const parts = pressure + rule('{ systolic: { below: 90 }, heart_rate: { at_least: 40 } }');
  expect([...namesOf('boundary', parts), ...namesOf('direction', parts)]).toEqual([
    'rule a, when systolic below: 90 to at_most 90',
    'rule a, when heart_rate at_least: 40 to above 40',
    'rule a, when systolic below: 90 to at_least 90',
    'rule a, when heart_rate at_least: 40 to below 40',
  ]);
});

test('a direction that stands there already is not written a second time', () => {
  const parts = needing('{ needs: [systolic] }', rule('{ systolic: { at_least: 60, below: 90 } }'));
  expect(namesOf('direction', parts)).toEqual([
    'rule a, when systolic at_least: 60 to at_most 60',
    'rule a, when systolic below: 90 to above 90',
  ]);
});

test('a choice is flipped to the other choices, a yes to a no, a fact to its opposite', () => {
  const parts = needing(
    '{ needs: [on_oxygen, consciousness, systolic] }',
    rule(
      '{ on_oxygen: { is: yes }, consciousness: { one_of: [pain, unresponsive] }, systolic: { unobtainable: yes } }',
    ),
  );
  expect(namesOf('direction', parts)).toEqual([
    'rule a, when on_oxygen is: yes to no',
    'rule a, when consciousness one_of: [pain, unresponsive] to [alert, new_confusion, voice]',
    'rule a, when systolic unobtainable: yes to no',
  ]);
});

test('clauses of lists, of names side by side, of two comparisons and of choices are left out', () => {
  const parts = needing(
    '{ needs: [systolic, heart_rate, consciousness] }',
    rule(
      '{ systolic: { above: 80, below: 90 }, any: [{ heart_rate: { above: 90 } }, { consciousness: { one_of: [pain, unresponsive] } }] }',
    ),
  );
  expect(namesOf('clause', parts)).toEqual([
    'rule a, when systolic: left out',
    'rule a, when any: left out',
    'rule a, when systolic above: 80 left out',
    'rule a, when systolic below: 90 left out',
    'rule a, when any 1: left out',
    'rule a, when any 2: left out',
    'rule a, when any 2 consciousness one_of 1: pain left out',
    'rule a, when any 2 consciousness one_of 2: unresponsive left out',
  ]);
});

test('exceptions are left out, and levels go one up and one down', () => {
  const parts = needing(
    '{ needs: [systolic], helps: [skin, paced] }',
    rule(
      '{ systolic: { below: 90 } }',
      ', unless: { when: { skin: { is: warm_and_dry } }, accepted: Agreed. }, not_reliable_when: { paced: { is: yes } }',
    ),
  );
  expect(namesOf('exception', parts)).toEqual([
    'rule a, unless: left out',
    'rule a, not_reliable_when: left out',
  ]);
  expect(namesOf('level', parts)).toEqual([
    'rule a, level: look_again to usual_round',
    'rule a, level: look_again to call_doctor',
  ]);
});
