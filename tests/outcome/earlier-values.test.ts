import { expect, test } from 'vitest';
import { answersOf, levelOf } from '../../src/outcome/answers.ts';
import { boundsOf, outcome, ruleOf, small, type Given } from './ask.ts';

const compiled = small(`
observations: { needs: [heart_rate, temperature], helps: [on_oxygen] }
rules:
  - { rule: fast, title: Fast, when: { heart_rate: { above: 90 } }, level: call_doctor, says: It suggests more., source: [test] }
  - { rule: hot, title: Hot, when: { temperature: { above: 38 } }, level: look_again, says: It suggests infection., source: [test] }
  - { rule: known, title: Known, when: { heart_rate: { known: yes } }, says: It was counted., source: [test] }
  - { rule: on_oxygen_now, title: On oxygen, when: { on_oxygen: { is: yes } }, level: emergency_call, says: It suggests a need., source: [test] }
`);

const series = (earlier: Given, now: Given): Given => ({
  sets: [
    { at: '2026-03-02T08:00:00Z', ...earlier },
    { at: '2026-03-02T11:30:00Z', ...now },
  ],
});

test('an earlier value may raise a level, is shown with its time, and leaves the outcome unsettled', () => {
  const made = outcome(compiled, series({ heart_rate: 120 }, { temperature: 36.8, on_oxygen: false }));
  expect(made.level).toEqual({ at_least: 'call_doctor', could_be: 'call_doctor', settled: false });
  expect(ruleOf(made, 'fast')).toMatchObject({
    state: 'met',
    decided_by: [
      'heart rate 120 /min (taken 2026-03-02 08:00 UTC) is 30 above 90; the rule asks for more than 90',
    ],
  });
  expect(made.stands_in).toEqual([
    { observation: 'heart_rate', at: '2026-03-02T08:00:00Z', value: 120, unit: '/min' },
  ]);
  expect([made.missing, made.take_first]).toEqual([['heart_rate'], ['heart_rate']]);
});

test('an earlier value never settles a lower level', () => {
  const made = outcome(compiled, series({ heart_rate: 72 }, { temperature: 36.8, on_oxygen: false }));
  expect(made.level).toEqual({ at_least: null, could_be: 'call_doctor', settled: false });
  expect(ruleOf(made, 'fast')).toMatchObject({
    state: 'undecided',
    waits_for: ['heart_rate'],
    decided_if: [
      { observation: 'heart_rate', from: 0, to: 90, state: 'not_met' },
      { observation: 'heart_rate', from: 91, state: 'met' },
    ],
  });
  expect(ruleOf(made, 'known').state).toBe('met');
});

test('an earlier value that is older than it is good for is missing', () => {
  const made = outcome(compiled, {
    at: '2026-03-02T12:00:01Z',
    ...series({ heart_rate: 120 }, { temperature: 36.8, on_oxygen: false }),
  });
  expect(made.stands_in).toEqual([]);
  expect(made.level).toEqual({ at_least: null, could_be: 'call_doctor', settled: false });
});

test('an earlier value of what only helps raises, and is asked for again', () => {
  const made = outcome(compiled, series({ on_oxygen: true }, { heart_rate: 72, temperature: 36.8 }));
  expect(made.level).toMatchObject({ at_least: 'emergency_call', settled: false });
  expect(made.stands_in).toEqual([{ observation: 'on_oxygen', at: '2026-03-02T08:00:00Z', value: 'yes' }]);
  expect(made.missing).toEqual([]);
});

test('an earlier range stands in as a range', () => {
  const made = outcome(compiled, series({ heart_rate: { low: 85, high: 95 } }, { temperature: 36.8 }));
  expect(made.stands_in).toEqual([
    { observation: 'heart_rate', at: '2026-03-02T08:00:00Z', low: 85, high: 95, unit: '/min' },
  ]);
  expect(ruleOf(made, 'fast').state).toBe('undecided');
});

test('the level alone asks both ways too', () => {
  for (const rate of [72, 120]) {
    const bounds = boundsOf(compiled, series({ heart_rate: rate }, { temperature: 36.8, on_oxygen: false }));
    expect(bounds.narrow).not.toBe(bounds.wide);
    expect(levelOf(compiled, bounds)).toEqual(answersOf(compiled, bounds).level);
  }
});
