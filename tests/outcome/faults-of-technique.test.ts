import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outcome, small } from './ask.ts';

const parts = (faults: string): string => `
observations: { needs: [systolic, diastolic], helps: [technique_faults] }
${faults}
measures:
  gap: { formula: systolic - diastolic, unit: mmHg }
rules:
  - { rule: low, when: { systolic: { at_most: 90 } }, level: call_doctor, says: It suggests a low pressure., source: [test] }
  - { rule: lowish, when: { systolic: { at_most: 100 } }, level: look_again, says: It suggests a soft sign., source: [test] }
  - { rule: narrow, when: { gap: { below: 25 } }, level: look_again, says: It suggests a small beat., source: [test] }
  - { rule: told, when: { technique_faults: { one_of: [arm_below_heart, arm_above_heart] } }, says: It suggests another reading., source: [test] }
`;
const protocol = small(
  parts(`faults:
  - { fault: hangs, title: Arm hangs, when: { technique_faults: { one_of: [arm_below_heart] } }, reads_high: { systolic: 10, diastolic: 1 kPa }, says: It reads too high., do: [{ id: again, text: Take it again, under: own authority }], source: [test] }
  - { fault: raised, when: { technique_faults: { one_of: [arm_above_heart] } }, reads_low: { systolic: 15 }, says: It reads too low., source: [test] }
  - { fault: dressed, when: { technique_faults: { one_of: [cuff_over_clothing] } }, reads_high: { systolic: 5 }, says: It reads too high., source: [test] }`),
);
const withoutFaults = small(parts(''));

const states = (made: ReturnType<typeof outcome>): Record<string, string> =>
  Object.fromEntries(made.rules.map(({ rule, state }) => [rule, state]));

test('a fault that reads high leaves the level and opens the way up', () => {
  const made = outcome(protocol, { systolic: 98, diastolic: 60, technique_faults: ['arm_below_heart'] });
  expect(made.level).toEqual({ at_least: 'look_again', could_be: 'call_doctor', settled: false });
  expect(states(made)).toEqual({ low: 'undecided', lowish: 'met', narrow: 'not_met', told: 'met' });
  expect(made.faults).toEqual([
    {
      fault: 'hangs',
      title: 'Arm hangs',
      says: 'It reads too high.',
      do: ['Take it again (own authority)'],
      readings: [
        { observation: 'systolic', read: 98, low: 88, high: 98, unit: 'mm[Hg]' },
        // 1 kPa is 7.5 mmHg: rounded up to a whole step.
        { observation: 'diastolic', read: 60, low: 52, high: 60, unit: 'mm[Hg]' },
      ],
      changes: [{ rule: 'low', title: 'low', level: 'call_doctor' }],
    },
  ]);
  expect(made.measures['gap']).toEqual({ value: 38, unit: 'mm[Hg]' });
});

test('a fault that reads low never lowers the level', () => {
  const made = outcome(protocol, { systolic: 88, diastolic: 50, technique_faults: ['arm_above_heart'] });
  expect(made.level).toEqual({ at_least: 'call_doctor', could_be: 'call_doctor', settled: false });
  expect(states(made)['low']).toBe('met');
  expect(made.faults?.[0]?.changes.map(({ rule }) => rule)).toEqual(['low', 'lowish']);
});

test('a fault that changes nothing says so, and the outcome is settled', () => {
  const made = outcome(protocol, { systolic: 128, diastolic: 70, technique_faults: ['arm_below_heart'] });
  expect(made.level).toEqual({ at_least: 'usual_round', could_be: 'usual_round', settled: true });
  expect(made.faults?.[0]?.changes).toEqual([]);
});

test('two faults of one direction add up', () => {
  const technique_faults = ['arm_below_heart', 'cuff_over_clothing'];
  const made = outcome(protocol, { systolic: 104, diastolic: 60, technique_faults });
  expect(made.faults?.map(({ fault, readings }) => [fault, readings[0]])).toEqual([
    ['hangs', { observation: 'systolic', read: 104, low: 89, high: 104, unit: 'mm[Hg]' }],
    ['dressed', { observation: 'systolic', read: 104, low: 89, high: 104, unit: 'mm[Hg]' }],
  ]);
  expect(made.level?.could_be).toBe('call_doctor');
});

test.each([[[]], [undefined], [['talking']]])('%j makes nothing unsure', (technique_faults) => {
  const made = outcome(protocol, { systolic: 98, diastolic: 60, technique_faults });
  expect(made.faults).toBeUndefined();
  expect(made.level).toEqual({ at_least: 'look_again', could_be: 'look_again', settled: true });
});

test('the truth stays inside what is possible', () => {
  const lowest = protocol.protocol.observations.get('systolic')?.possible[0]?.low ?? Number.NaN;
  const systolic = lowest + 4;
  const made = outcome(protocol, { systolic, diastolic: lowest, technique_faults: ['arm_below_heart'] });
  const { low } = made.faults?.[0]?.readings[0] ?? {};
  expect(low).toBe(lowest);
});

test('an earlier set keeps its fault in a look back', () => {
  const before = small(`
observations: { needs: [systolic], helps: [technique_faults] }
faults:
  - { fault: hangs, when: { technique_faults: { one_of: [arm_below_heart] } }, reads_high: { systolic: 10 }, says: It reads too high., source: [test] }
measures: { lowest: { lowest: systolic, over: 4 h, present_set: included, unit: mmHg } }
rules:
  - { rule: low, when: { lowest: { below: 90 } }, level: call_doctor, says: It suggests a low pressure., source: [test] }
  - { rule: told, when: { technique_faults: { one_of: [arm_below_heart] } }, says: It suggests another reading., source: [test] }
`);
  const sets = [
    { at: '2026-03-02T08:00:00Z', systolic: 96, technique_faults: ['arm_below_heart'] },
    { at: '2026-03-02T09:00:00Z', systolic: 118, technique_faults: [] },
  ];
  expect(outcome(before, { sets }).level).toEqual({
    at_least: null,
    could_be: 'call_doctor',
    settled: false,
  });
});

test('a fault is the range of the true value, beside the level of the value as it was read', () => {
  const directions = fc.constantFrom('arm_below_heart', 'arm_above_heart', 'cuff_over_clothing');
  const set = fc.record({ systolic: fc.integer({ min: 40, max: 200 }), faults: fc.uniqueArray(directions) });
  const ends = { arm_below_heart: [10, 0], arm_above_heart: [0, 15], cuff_over_clothing: [5, 0] } as const;
  fc.assert(
    fc.property(set, ({ systolic, faults }) => {
      const all = { diastolic: 30, technique_faults: faults };
      const made = outcome(protocol, { ...all, systolic }).level;
      const asRead = outcome(withoutFaults, { ...all, systolic }).level;
      const [high, low] = faults.reduce(([a, b], fault) => [a + ends[fault][0], b + ends[fault][1]], [0, 0]);
      const diastolic = faults.includes('arm_below_heart') ? { value: 30, low: 22, high: 30 } : all.diastolic;
      const range =
        high + low === 0 ? systolic : { value: systolic, low: systolic - high, high: systolic + low };
      const whole = outcome(withoutFaults, { ...all, diastolic, systolic: range }).level;
      const levels = protocol.protocol.ladder.levels.map(({ name }) => name);
      const highest = Math.max(...[asRead, whole].map((each) => levels.indexOf(each?.could_be ?? '')));
      expect(made?.could_be).toBe(levels[highest]);
      expect(made?.settled).toBe(
        asRead?.settled === true && JSON.stringify(asRead) === JSON.stringify(whole),
      );
      if (asRead?.at_least !== 'usual_round') expect(made?.at_least).toBe(asRead?.at_least);
    }),
  );
});
