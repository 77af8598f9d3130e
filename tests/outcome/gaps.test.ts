import { expect, test } from 'vitest';
import { inOrderOfTelling } from '../../src/outcome/take-first.ts';
import type { PieceAnswer } from '../../src/outcome/what-if.ts';
import type { Observation } from '../../src/protocol/protocol.ts';
import { askable } from '../bundled.ts';
import { adult, outcome, ruleOf, small } from './ask.ts';

const rule = (name: string, when: string, level = 'call_doctor'): string =>
  `  - { rule: ${name}, title: ${name}, when: ${when}, level: ${level}, says: It suggests more., source: [test] }\n`;

test('only parts that are themselves undecided are waited for', () => {
  const compiled = small(`
observations: { needs: [systolic, heart_rate, temperature, respiratory_rate] }
rules:
${rule('some', '{ any: [{ systolic: { below: 90 } }, { all: [{ heart_rate: { above: 90 } }, { temperature: { above: 38 } }] }] }')}
${rule('named', '{ all: [{ rule: some }, { respiratory_rate: { above: 20 } }] }')}
`);
  const made = outcome(compiled, { systolic: 120, temperature: 39 });
  expect(ruleOf(made, 'some').waits_for).toEqual(['heart_rate']);
  expect(ruleOf(made, 'named').waits_for).toEqual(['heart_rate', 'respiratory_rate']);
  const cool = outcome(compiled, { systolic: 120, temperature: 37 });
  expect(ruleOf(cool, 'some').state).toBe('not_met');
  expect(ruleOf(cool, 'named').waits_for).toBeUndefined();
  expect(cool.missing).toEqual(['heart_rate', 'respiratory_rate']);
});

test('a range that leaves a rule open is waited for, and is not missing', () => {
  const compiled = small(`
observations: { needs: [systolic] }
rules:
${rule('low', '{ systolic: { below: 100 } }')}
`);
  const made = outcome(compiled, { systolic: { value: 104, low: 96 } });
  expect(ruleOf(made, 'low')).toMatchObject({
    waits_for: ['systolic'],
    decided_if: [
      { observation: 'systolic', from: 96, to: 99, state: 'met' },
      { observation: 'systolic', from: 100, to: 104, state: 'not_met' },
    ],
  });
  expect([made.missing, made.take_first]).toEqual([[], []]);
});

test('what was tried or declined is missing and not asked to be taken again', () => {
  const compiled = askable('early_warning_score');
  const made = outcome(
    compiled,
    adult({
      oxygen_saturation: { unobtainable: 'cold fingers' },
      temperature: { declined: true },
      systolic: 940,
    }),
  );
  expect(made.missing).toEqual([
    'respiratory_rate',
    'oxygen_saturation',
    'on_oxygen',
    'systolic',
    'heart_rate',
    'consciousness',
    'temperature',
  ]);
  expect(made.unobtainable).toEqual([{ observation: 'oxygen_saturation', because: 'cold fingers' }]);
  expect(made.declined).toEqual([{ observation: 'temperature' }]);
  expect(made.take_first).not.toContain('oxygen_saturation');
  expect(made.take_first).not.toContain('temperature');
  expect(made.take_first).toContain('systolic');
});

test('first is taken what decides the most whatever its value', () => {
  const compiled = small(`
observations: { needs: [systolic, heart_rate, temperature] }
rules:
${rule('low', '{ systolic: { below: 90 } }', 'look_again')}
${rule('fast_and_hot', '{ heart_rate: { above: 90 }, temperature: { above: 38 } }', 'emergency_call')}
${rule('hot', '{ temperature: { above: 39 } }', 'look_again')}
`);
  // The systolic and the temperature decide a rule whatever they are, the rate only when it is 90 or less; the temperature can
  // decide two.
  expect(outcome(compiled, {}).take_first).toEqual(['temperature', 'systolic', 'heart_rate']);
  expect(outcome(compiled, { temperature: 38.5 }).take_first).toEqual(['systolic', 'heart_rate']);
});

test('before all else counts how high the level could still be at the worst value', () => {
  const observation = (name: string): Observation => {
    const found = askable('pressure_reading').protocol.observations.get(name);
    if (!found) throw new Error(name);
    return found;
  };
  const answers = (couldBe: readonly number[], decided: number): PieceAnswer[] =>
    couldBe.map((level, low) => ({
      piece: { kind: 'range', low, high: low },
      couldBe: level,
      states: new Map(Array.from({ length: decided }, (_, index) => [`rule_${index}`, 'met' as const])),
    }));
  const inOrder = inOrderOfTelling([
    { observation: observation('systolic'), answers: answers([0, 4], 5) },
    { observation: observation('heart_rate'), answers: answers([3, 3], 0) },
  ]);
  expect(inOrder.map(({ name }) => name)).toEqual(['heart_rate', 'systolic']);
});

test('of equals the one that decides something for more of its values is first, then the protocol’s order counts', () => {
  const compiled = (high: string): ReturnType<typeof small> =>
    small(`
observations: { needs: [oxygen_saturation, pain] }
rules:
${rule('both', `{ oxygen_saturation: { above: ${high} }, pain: { above: 4 } }`)}
`);
  // Of 101 saturations 91 are not above 90, of 11 pains 5 are not above 4.
  expect(outcome(compiled('90'), {}).take_first).toEqual(['oxygen_saturation', 'pain']);
  expect(outcome(compiled('10'), {}).take_first).toEqual(['pain', 'oxygen_saturation']);
});

test('a changed limit moves the values that decide', () => {
  const compiled = askable('lessons/a_limit_to_change');
  const patient = {
    limits: { mean_floor: { value: 75, by: 'Dr Ash', reason: 'long-standing high pressure' } },
  };
  const made = outcome(compiled, { at: '2026-03-02T12:00:00Z', patient, systolic: 105 });
  expect(ruleOf(made, 'mean_low').decided_if).toMatchObject([
    { observation: 'diastolic', from: 0, to: 59, state: 'met' },
    { observation: 'diastolic', from: 60, to: 104, state: 'not_met' },
  ]);
  expect(made.limits).toEqual([
    { limit: 'mean_floor', value: 75, unit: 'mm[Hg]', by: 'Dr Ash', reason: 'long-standing high pressure' },
  ]);
});

test('what a look back lacks is said in words', () => {
  const made = outcome(askable('lessons/a_look_back'), { systolic: 104 });
  expect(ruleOf(made, 'systolic_falling')).toMatchObject({
    state: 'undecided',
    no_value: [
      'change of the systolic over 4 hours has no value: it needs two values of systolic pressure from the last 4 h',
    ],
  });
  expect(made.level?.settled).toBe(true);
});

test('what only helps and could decide a rule would tell more', () => {
  const whole = adult({
    systolic: 118,
    diastolic: 66,
    heart_rate: 72,
    respiratory_rate: 16,
    temperature: 36.8,
    consciousness: 'alert',
  });
  const made = outcome(askable('pressure_reading'), whole);
  expect(made.level).toEqual({ at_least: 'usual_round', could_be: 'usual_round', settled: true });
  expect(made.would_tell_more).toEqual([
    'mean_pressure',
    'oxygen_saturation',
    'head_injury',
    'technique_faults',
    'usual_systolic',
  ]);
  expect(
    outcome(askable('pressure_reading'), { ...whole, head_injury: false }).would_tell_more,
  ).not.toContain('head_injury');
});

test('what nobody has stated is told with what it counts as', () => {
  const { assumed } = outcome(askable('early_warning_score'), {});
  expect(assumed).toEqual([{ observation: 'oxygen_scale', value: 'scale_1' }]);
  const stated = outcome(askable('early_warning_score'), { oxygen_scale: 'scale_2' });
  expect(stated.assumed).toEqual([]);
});
