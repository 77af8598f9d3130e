import { expect, test } from 'vitest';
import { compareSides } from '../../../src/review/compare/compare.ts';
import { everyOne, small, told } from './kit.ts';

const base = `
limits: { floor: { title: floor, value: 4, unit: mmHg } }
measures:
  gap: { title: gap, formula: push - pull, unit: mmHg }
  ease: { title: ease, formula: pull / push }
  wanted: { title: wanted, curve: { of: push, points: [[3, 2], [6, 5], [9, 6]], beyond: missing }, unit: mmHg }
  short: { title: short, formula: wanted - pull, unit: mmHg }
  points:
    title: points
    score:
      warmth: [{ at_most: 2, points: 3 }, { at_most: 6, points: 0 }, { points: 2 }]
      push: [{ at_most: 4, points: 1 }, { points: 0 }]
      mood: { cross: 1, sad: 2 }
rules:
  - { rule: cold, title: Cold, when: { warmth: { below: floor } }, level: look_again, says: Cold., source: [council] }
  - { rule: narrow, title: Narrow, when: { gap: { below: 3 } }, level: look_again, says: Narrow., source: [council] }
  - { rule: both, title: Both, when: { all: [{ rule: cold }, { rule: narrow }] }, level: call_doctor, says: Both., source: [council] }
  - { rule: uneasy, title: Uneasy, when: { ease: { at_least: 0.8 } }, unless: { when: { mood: { is: calm } }, says: Calm. }, level: look_again, says: Uneasy., source: [council] }
  - { rule: falls_short, title: Falls short, when: { short: { at_least: 1 } }, level: call_doctor, says: Short., source: [council] }
  - { rule: many, title: Many points, when: { points: { at_least: 4 } }, level: call_doctor, says: Many., source: [council] }
  - { rule: signs_of_it, title: Signs, when: { signs: { one_of: [red] }, warmth: { above: 6 } }, level: look_again, says: Signs., source: [council] }
`;

const changes: readonly (readonly [string, (text: string) => string])[] = [
  ['a moved threshold', (text) => text.replace('warmth: { above: 6 }', 'warmth: { above: 7 }')],
  ['a moved threshold of a difference', (text) => text.replace('gap: { below: 3 }', 'gap: { below: 4 }')],
  ['a moved threshold of a quotient', (text) => text.replace('at_least: 0.8', 'at_least: 0.7')],
  ['a curve', (text) => text.replace('[6, 5]', '[6, 4]')],
  ['where a curve begins', (text) => text.replace('[[3, 2]', '[[2, 2]')],
  ['a band of a score', (text) => text.replace('at_most: 6, points: 0', 'at_most: 5, points: 0')],
  ['a changed limit', (text) => text.replace('value: 4', 'value: 3')],
  [
    'an added clause',
    (text) => text.replace('{ rule: narrow }] }', '{ rule: narrow }, { mood: { one_of: [cross, sad] } }] }'),
  ],
  [
    'a clause left out',
    (text) => text.replace('signs: { one_of: [red] }, warmth: { above: 6 }', 'signs: { one_of: [red] }'),
  ],
  ['another choice', (text) => text.replace('one_of: [red]', 'one_of: [red, hot]')],
  ['another exception', (text) => text.replace('mood: { is: calm }', 'mood: { is: sad }')],
  [
    'an exception left out',
    (text) => text.replace('unless: { when: { mood: { is: calm } }, says: Calm. }, ', ''),
  ],
  [
    'another level',
    (text) =>
      text.replace('gap: { below: 3 } }, level: look_again', 'gap: { below: 3 } }, level: call_doctor'),
  ],
  ['a removed rule', (text) => text.replace(/ {2}- \{ rule: many,.*\n/, '')],
  [
    'an added rule',
    (text) =>
      `${text}  - { rule: hot, title: Hot, when: { warmth: { at_least: 9 } }, level: call_doctor, says: Hot., source: [council] }\n`,
  ],
  ['other patients', (text) => `applies_when: { warmth: { at_least: 2 } }\n${text}`],
  [
    'an explanation',
    (text) =>
      text.replace(
        'warmth: { above: 6 } }, level',
        'warmth: { above: 6 } }, explained_by: { when: { mood: { is: sad } }, says: Sad. }, level',
      ),
  ],
];

test.each(changes)('of every set, one by one, %s changes exactly what is told', (_, change) => {
  const [before, after] = [small(base), small(change(base))];
  expect(change(base)).not.toBe(base);
  const comparison = compareSides(before, after, null);
  const judged = everyOne(before, after);
  const found = told(comparison);
  expect(comparison.all_sets).toBe(String(judged.all));
  expect(Object.fromEntries(found.levels)).toEqual(Object.fromEntries(judged.levels));
  expect(Object.fromEntries(found.rules)).toEqual(Object.fromEntries(judged.rules));
  expect(judged.levels.size + judged.rules.size).toBeGreaterThan(0);
  for (const { witness } of [...comparison.levels, ...comparison.rules.flatMap(({ stands }) => stands)])
    expect(witness.confirmed).toBe(true);
});
