import { expect, test } from 'vitest';
import { evaluate, readLadder, readProtocol, readSet } from '../../src/index.ts';
import type { OutcomeMeasure } from '../../src/shape/generated/types.ts';

// Measures over what is known, missing and in between, worked out by hand.

const { ladder } = readLadder(
  'ladder.yaml',
  'ladder: small\nedition: 1\nlevels: [{ level: low }, { level: high }]',
);

function measures(yaml: string, set: object): Record<string, unknown> {
  const text = `
protocol: small
edition: 1
title: A small protocol
ladder: small
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic, diastolic, heart_rate, consciousness], helps: [mean_pressure, technique_faults] }
rules:
  - rule: reads_all
    when: { all: [{ systolic: { above: 1 } }, { diastolic: { above: 0 } }, { heart_rate: { above: 0 } }, { consciousness: { is: alert } },
      { mean_pressure: { above: 1 } }, { technique_faults: { one_of: [arm_below_heart] } }] }
    says: It reads everything.
    source: [council]
measures:
${yaml}`;
  const { protocol, problems } = readProtocol('small.yaml', text, { ladder });
  if (!protocol) throw new Error(problems.map(({ line, says }) => `${line}: ${says}`).join('\n'));
  const { series } = readSet('set.json', JSON.stringify(set), protocol);
  if (!series) throw new Error('the set has problems');
  const found = Object.entries(evaluate(protocol, series).measures);
  return Object.fromEntries(found.map(([name, measure]) => [name, ends(measure)]));
}

/** The value or the range alone. */
function ends(measure: OutcomeMeasure): object {
  if (measure.value !== undefined) return { value: measure.value };
  if (measure.low !== undefined) return { low: measure.low, high: measure.high };
  return { value: null };
}

const several =
  '  faults: { score: { technique_faults: { arm_below_heart: 2, arm_above_heart: -1, cuff_too_small: 3 } } }';

test.each([
  ['none of them', { technique_faults: [] }, { value: 0 }],
  ['two of them', { technique_faults: ['arm_below_heart', 'arm_above_heart'] }, { value: 1 }],
  ['nobody knows', {}, { low: -1, high: 5 }],
])('points of several, %s', (_, set, value) => {
  expect(measures(several, set)).toEqual({ faults: value });
});

const first =
  '  mean: { first_known: [mean_pressure, estimate] }\n  estimate: { formula: (systolic + 2 * diastolic) / 3, unit: mmHg }';

test.each([
  ['both are known: the first', { mean_pressure: 80, systolic: 120, diastolic: 75 }, { value: 80 }],
  ['only the second is known', { systolic: 120, diastolic: 75 }, { value: 90 }],
  ['only the first is known', { mean_pressure: 80 }, { value: 80 }],
])('first known when %s', (_, set, value) => {
  expect(measures(first, set)['mean']).toEqual(value);
});

const choose = `  least: { choose: [{ when: { systolic: { below: 90 } }, use: 3 }, { when: { systolic: { below: 100 } }, use: 2 }, { use: 0 }] }`;

test.each([
  [{ systolic: 89 }, { value: 3 }],
  [{ systolic: 90 }, { value: 2 }],
  [{ systolic: 99 }, { value: 2 }],
  [{ systolic: 100 }, { value: 0 }],
  [{ systolic: { low: 95, high: 104 } }, { low: 0, high: 2 }],
  [{ systolic: { low: 70, high: 95 } }, { low: 2, high: 3 }],
  [{}, { low: 0, high: 3 }],
])('the first entry whose condition holds: %o', (set, value) => {
  expect(measures(choose, set)).toEqual({ least: value });
});

const bands =
  '  points: { score: { heart_rate: [{ at_most: 40, points: 3 }, { below: 60, points: 1 }, { at_most: 90, points: 0 }, { points: 2 }] } }';

test.each([
  [{ heart_rate: 40 }, { value: 3 }],
  [{ heart_rate: 41 }, { value: 1 }],
  [{ heart_rate: 59 }, { value: 1 }],
  [{ heart_rate: 60 }, { value: 0 }],
  [{ heart_rate: 90 }, { value: 0 }],
  [{ heart_rate: 91 }, { value: 2 }],
  // The middle of the range has fewer points than both its ends.
  [{ heart_rate: { low: 50, high: 100 } }, { low: 0, high: 2 }],
  [{ heart_rate: { low: 30, high: 95 } }, { low: 0, high: 3 }],
])('bands, each with its own edge: %o', (set, value) => {
  expect(measures(bands, set)).toEqual({ points: value });
});

const curve =
  '  usual: { curve: { of: systolic, points: [[80, 50], [100, 70], [120, 60]], beyond: missing }, unit: mmHg }';

test.each([
  [{ systolic: 80 }, { value: 50 }],
  [{ systolic: 85 }, { value: 55 }],
  [{ systolic: 100 }, { value: 70 }],
  [{ systolic: 105 }, { value: 67.5 }],
  [{ systolic: 120 }, { value: 60 }],
  // The highest lies between the ends.
  [{ systolic: { low: 90, high: 110 } }, { low: 60, high: 70 }],
])('a curve that rises and falls: %o', (set, value) => {
  expect(measures(curve, set)).toEqual({ usual: value });
});

test.each([79, 121])('a curve has no value at %d, beyond its points', (systolic) => {
  expect(measures(curve, { systolic })['usual']).toEqual({ value: null });
});

test('what is shared cancels: a difference is known although its parts are not', () => {
  expect(measures('  gap: { formula: systolic - systolic + 1 }', {})).toEqual({ gap: { value: 1 } });
});
