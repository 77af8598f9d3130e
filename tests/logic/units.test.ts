import { expect, test } from 'vitest';
import { evaluate, readLadder, readProtocol, readSet } from '../../src/index.ts';

// A number in a rule may stand in another unit than its observation: it is converted, exactly.

const { ladder } = readLadder(
  'ladder.yaml',
  'ladder: small\nedition: 1\nlevels: [{ level: low }, { level: high }]',
);
const { protocol, problems } = readProtocol(
  'small.yaml',
  `protocol: small
edition: 1
title: A small protocol
ladder: small
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [temperature, age] }
measures:
  above_ordinary: { formula: temperature - 36.8, unit: °C }
  points: { score: { temperature: [{ at_most: 95 °F, points: 3 }, { below: 100.4 °F, points: 0 }, { points: 1 }] } }
rules:
  - { rule: fever, when: { temperature: { at_least: 100.4 °F } }, level: high, says: It suggests a fever., source: [council] }
  - { rule: young, when: { age: { below: 24 mo } }, says: The patient is very young., source: [council] }
`,
  { ladder },
);

function outcome(
  temperature: number,
  age: { value: number; unit: string },
): { met: string[]; points: unknown } {
  if (!protocol) throw new Error(problems.map(({ says }) => says).join('\n'));
  const { series } = readSet('set.json', JSON.stringify({ temperature, age }), protocol);
  if (!series) throw new Error('the set has problems');
  const { rules, measures } = evaluate(protocol, series);
  return {
    met: rules.filter(({ state }) => state === 'met').map(({ rule }) => rule),
    points: measures['points']?.value,
  };
}

const adult = { value: 40, unit: 'a' };

test.each([
  [37.9, [], 0],
  [38, ['fever'], 1],
  [35, [], 3],
  [35.1, [], 0],
])('at %d °C, with a threshold of 100.4 °F', (temperature, met, points) => {
  expect(outcome(temperature, adult)).toEqual({ met, points });
});

test.each([
  [{ value: 23, unit: 'mo' }, ['young']],
  [{ value: 24, unit: 'mo' }, []],
  [{ value: 2, unit: 'a' }, []],
])('an age of %o, with a threshold of 24 mo', (age, met) => {
  expect(outcome(37, age).met).toEqual(met);
});
