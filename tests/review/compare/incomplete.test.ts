import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textToSeries } from '../../../src/series/text-to-series.ts';
import { setVocabularyOf } from '../../../src/series/set-reading.ts';
import { answerOf } from '../../../src/review/compare/case-changes.ts';
import { compareSides } from '../../../src/review/compare/compare.ts';
import { levelInWords } from '../../../src/review/compare/levels-in-words.ts';
import { sideOf } from '../../../src/review/compare/side.ts';
import { small } from './kit.ts';

const text = `limits: { floor: { title: floor, value: 4, unit: mmHg } }
measures:
  gap: { title: gap, formula: push - pull, unit: mmHg }
  points:
    title: points
    score:
      warmth: [{ at_most: 2, points: 3 }, { at_most: 6, points: 0 }, { points: 2 }]
      push: [{ at_most: 4, points: 1 }, { points: 0 }]
      mood: { calm: 0, cross: 1, sad: 2 }
rules:
  - { rule: cold, title: Cold, when: { warmth: { below: floor } }, level: look_again, says: Cold., source: [council] }
  - { rule: narrow, title: Narrow, when: { gap: { below: 3 } }, unless: { when: { mood: { is: calm } }, says: Calm. }, level: look_again, says: Narrow., source: [council] }
  - { rule: many, title: Many points, when: { points: { at_least: 4 } }, level: call_doctor, says: Many., source: [council] }
  - { rule: untold, title: Untold, when: { mood: { known: no }, signs: { one_of: [red] } }, level: call_doctor, says: Untold., source: [council] }
  - { rule: failed, title: Failed, when: { push: { unobtainable: yes } }, level: call_doctor, says: Failed., source: [council] }
`;

const changes: readonly (readonly [name: string, from: string, to: string])[] = [
  ['a moved threshold of a difference', 'gap: { below: 3 }', 'gap: { below: 4 }'],
  ['a changed limit', 'value: 4', 'value: 3'],
  ['a band of a score', 'at_most: 6, points: 0', 'at_most: 5, points: 0'],
  ['another exception', 'mood: { is: calm }', 'mood: { is: sad }'],
  ['what is asked only while something is not known', 'one_of: [red]', 'one_of: [hot]'],
  [
    'what could not be obtained',
    'push: { unobtainable: yes } }, level: call_doctor',
    'push: { unobtainable: yes } }, level: look_again',
  ],
];

/** A value; nothing; or that it could not be obtained. */
const lackable = (value: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 2, arbitrary: value },
    { weight: 1, arbitrary: fc.constantFrom(undefined, { unobtainable: true }) },
  );

const sets = fc.record({
  warmth: lackable(fc.integer({ min: 0, max: 9 })),
  push: lackable(fc.integer({ min: 1, max: 13 })),
  pull: lackable(fc.integer({ min: 0, max: 12 })),
  mood: lackable(fc.constantFrom('calm', 'cross', 'sad')),
  signs: lackable(fc.subarray(['red', 'hot'])),
});

test.each(changes)('%s: no set, complete or not, has a change of level that is not told', (_, from, to) => {
  const [before, after] = [small(text), small(text.replace(from, to))];
  const { levels, other_levels: others } = compareSides(before, after, null);
  expect(others?.whole).toBe(true);
  expect(others?.complete).toEqual([]);
  const told = new Set(
    [...levels, ...(others?.incomplete ?? [])].map((each) => `${each.before} > ${each.after}`),
  );
  const sides = [sideOf(before), sideOf(after)] as const;
  const found = new Set<string>();
  for (const set of fc.sample(sets, { numRuns: 6000, seed: 1 })) {
    const { series } = textToSeries('set', JSON.stringify(set), setVocabularyOf(before.protocol));
    if (!series) continue;
    const [was, is] = sides.map((side) => levelInWords(answerOf(side, series).level, side.ladder));
    if (was !== is) found.add(`${was} > ${is}`);
  }
  expect([...found].filter((change) => !told.has(change))).toEqual([]);
  expect(found.size).toBeGreaterThan(0);
});
