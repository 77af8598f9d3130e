import { expect, test } from 'vitest';
import { coverageOf } from '../../src/review/coverage.ts';
import { guarded } from './kit.ts';

const parts = `observations: { needs: [systolic, heart_rate] }
limits: { floor: { value: 90, unit: mmHg } }
measures:
  points: { score: { heart_rate: [{ at_most: 50, points: 1 }, { points: 0 }] } }
rules:
  - { rule: low, when: { systolic: { below: floor } }, level: look_again, says: It suggests a low pressure., source: [council] }
  - { rule: points_there, when: { points: { at_least: 1 } }, level: look_again, says: It suggests a slow rate., source: [council] }
  - { rule: not_found, when: { systolic: { unobtainable: yes } }, level: call_doctor, says: It suggests a low pressure., source: [council] }
`;

function coverage(cases: string): ReturnType<typeof coverageOf> {
  const { compiled, document, cases: read } = guarded(parts, cases);
  return coverageOf(compiled, document, read);
}

const at = (given: string): string => `  - { case: "${given}", given: ${given}, expect: { applies: yes } }\n`;

test('nothing is seen without cases, and what is never undecided is not asked to be', () => {
  const { rules, edges } = coverage('cases: []\n');
  expect(rules.map(({ unseen }) => unseen)).toEqual([
    ['met', 'not_met', 'undecided'],
    ['met', 'not_met', 'undecided'],
    ['met', 'not_met'],
  ]);
  expect(edges.map(({ edge, holds, fails }) => [edge, holds, fails])).toEqual([
    ['rule low, when systolic below', false, false],
    ['rule points_there, when points at_least', false, false],
    ['measure points, score heart_rate 1 at_most', false, false],
  ]);
});

test('a case just on a side is seen there, one further away is not', () => {
  const both = coverage(
    `cases:\n${at('{ systolic: 89, heart_rate: 50 }')}${at('{ systolic: 90, heart_rate: 51 }')}`,
  );
  expect(both.edges.every(({ holds, fails }) => holds && fails)).toBe(true);
  const far = coverage(
    `cases:\n${at('{ systolic: 88, heart_rate: 49 }')}${at('{ systolic: 91, heart_rate: 52 }')}`,
  );
  expect(far.edges.map(({ holds, fails }) => [holds, fails])).toEqual([
    [false, false],
    [true, true],
    [false, false],
  ]);
});

test('a value that is only known as a range lies on no side', () => {
  const { edges } = coverage(`cases:\n${at('{ systolic: { low: 89, high: 90 } }')}`);
  expect(edges[0]).toMatchObject({ holds: false, fails: false });
});

test('each state that a case sees is seen', () => {
  const { rules } = coverage(
    `cases:\n${at('{ systolic: 80 }')}${at('{ systolic: 100, heart_rate: 40 }')}${at('{ systolic: { unobtainable: yes } }')}`,
  );
  expect(rules.map(({ seen }) => seen)).toEqual([
    ['met', 'not_met', 'undecided'],
    ['met', 'undecided'],
    ['met', 'not_met'],
  ]);
});
