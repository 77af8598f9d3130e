import { expect, test } from 'vitest';
import { evaluate, readLadder, readProtocol, readSet, type Outcome } from '../../src/index.ts';

// Whether the present set counts in a look back can itself wait for something that has not been taken.

const { ladder } = readLadder(
  'ladder.yaml',
  'ladder: small\nedition: 1\nlevels: [{ level: low }, { level: high }]',
);
const { protocol } = readProtocol(
  'small.yaml',
  `protocol: small
edition: 1
title: A small protocol
ladder: small
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic, on_oxygen] }
measures:
  lowest_on_oxygen: { lowest: systolic, over: 1 h, where: { on_oxygen: { is: yes } } }
rules:
  - { rule: low_on_oxygen, when: { lowest_on_oxygen: { below: 90 } }, level: high, says: It suggests something., source: [council] }
`,
  { ladder },
);

function outcome(sets: readonly object[]): Outcome {
  if (!protocol) throw new Error('the protocol has problems');
  const { series } = readSet('series.json', JSON.stringify({ sets }), protocol);
  if (!series) throw new Error('the series has problems');
  return evaluate(protocol, series);
}

const earlier = { at: '2026-03-02T08:30:00Z', systolic: 120, on_oxygen: true };

test('nobody wrote whether on oxygen: it could be high, and is not settled', () => {
  const { level, missing } = outcome([earlier, { at: '2026-03-02T09:00:00Z', systolic: 80 }]);
  expect(level).toEqual({ at_least: null, could_be: 'high', settled: false });
  expect(missing).toContain('on_oxygen');
});

test('nobody wrote whether on oxygen, and there is no set before: it could be high all the same', () => {
  const { level } = outcome([{ at: '2026-03-02T09:00:00Z', systolic: 80 }]);
  expect(level).toEqual({ at_least: null, could_be: 'high', settled: false });
});

test('what has no value, whatever is taken now, keeps nothing open', () => {
  const { level, rules } = outcome([{ at: '2026-03-02T09:00:00Z', systolic: 80, on_oxygen: false }]);
  expect(rules[0]?.state).toBe('undecided');
  expect(level).toEqual({ at_least: 'low', could_be: 'low', settled: true });
});

test.each([
  [true, { at_least: 'high', could_be: 'high', settled: true }],
  [false, { at_least: 'low', could_be: 'low', settled: true }],
])('once it is written (%s), it is settled', (onOxygen, level) => {
  expect(outcome([earlier, { at: '2026-03-02T09:00:00Z', systolic: 80, on_oxygen: onOxygen }]).level).toEqual(
    level,
  );
});

test('what a set before the present one lacks cannot be taken any more, and keeps nothing open', () => {
  const { level } = outcome([
    { at: '2026-03-02T08:30:00Z', systolic: 80 },
    { at: '2026-03-02T09:00:00Z', systolic: 120, on_oxygen: false },
  ]);
  expect(level).toEqual({ at_least: 'low', could_be: 'low', settled: true });
});

test('a help that is known only as a range keeps open whether the present set counts; one that is missing does not', () => {
  const { protocol: helped } = readProtocol(
    'small.yaml',
    `protocol: small
edition: 1
title: A small protocol
ladder: small
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic], helps: [heart_rate] }
measures:
  lowest_when_fast: { lowest: systolic, over: 1 h, where: { heart_rate: { above: 110 } } }
rules:
  - { rule: low_when_fast, when: { lowest_when_fast: { below: 90 } }, level: high, says: It suggests something., source: [council] }
`,
    { ladder },
  );
  if (!helped) throw new Error('the protocol has problems');
  const level = (set: object): Outcome['level'] => {
    const { series } = readSet('set.json', JSON.stringify(set), helped);
    if (!series) throw new Error('the set has problems');
    return evaluate(helped, series).level;
  };
  const range = { systolic: 80, heart_rate: { low: 105, high: 115 } };
  expect(level(range)).toEqual({ at_least: null, could_be: 'high', settled: false });
  expect(level({ systolic: 80 })).toEqual({ at_least: 'low', could_be: 'low', settled: true });
  expect(level({ ...range, heart_rate: 105 })).toEqual({ at_least: 'low', could_be: 'low', settled: true });
});

test('a range in an earlier set keeps open whether that set counts', () => {
  const { protocol: earlierRange } = readProtocol(
    'small.yaml',
    `protocol: small
edition: 1
title: A small protocol
ladder: small
sources: { council: { cite: "Common practice, no published source" } }
observations: { needs: [systolic] }
measures:
  highest_below_100: { highest: systolic, over: 2 h, where: { systolic: { below: 100 } } }
rules:
  - { rule: was_low, when: { highest_below_100: { below: 95 } }, level: high, says: It suggests something., source: [council] }
`,
    { ladder },
  );
  if (!earlierRange) throw new Error('the protocol has problems');
  const level = (systolic: unknown): Outcome['level'] => {
    const sets = [
      { at: '2026-03-02T08:30:00Z', systolic },
      { at: '2026-03-02T09:00:00Z', systolic: 120 },
    ];
    const { series } = readSet('series.json', JSON.stringify({ sets }), earlierRange);
    if (!series) throw new Error('the series has problems');
    return evaluate(earlierRange, series).level;
  };
  expect(level({ low: 90, high: 110 })).toEqual({ at_least: null, could_be: 'high', settled: false });
  expect(level(110)).toEqual({ at_least: 'low', could_be: 'low', settled: true });
  expect(level({ declined: true })).toEqual({ at_least: 'low', could_be: 'low', settled: true });
});
