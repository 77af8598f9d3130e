import { expect, test } from 'vitest';
import { levelOf } from '../../src/outcome/answers.ts';
import { askable } from '../bundled.ts';
import { adult, boundsOf, outcome, ruleOf, small } from './ask.ts';

const exceptions = small(`
applies_when: { age: { at_least: 16 y } }
otherwise: For a child use the children's chart.
observations: { needs: [heart_rate, temperature], helps: [paced, rate_slowing_medicine, vasodilator_last_6_h] }
rules:
  - rule: fast
    title: Fast
    when: { heart_rate: { above: 90 } }
    unless: { when: { paced: { is: yes } }, says: A pacemaker sets the rate., accepted: For a test. }
    level: call_doctor
    says: It suggests more.
    do: [{ id: look, text: Look, under: own authority }]
    source: [test]
  - rule: fast_and_hot
    title: Fast and hot
    when: { all: [{ rule: fast }, { temperature: { above: 38 } }] }
    level: emergency_call
    says: It suggests infection.
    do: [{ id: look, text: Look, under: own authority }, { id: call, text: Call }]
    source: [test]
  - rule: hot
    title: Hot
    when: { temperature: { above: 38 } }
    explained_by: { when: { vasodilator_last_6_h: { is: yes } }, says: The medicine can do it., level: look_again }
    level: tell_nurse_in_charge
    says: It suggests infection.
    source: [test]
  - rule: slow
    title: Slow
    when: { heart_rate: { below: 50 } }
    not_reliable_when: { rate_slowing_medicine: { is: yes } }
    says: It suggests a block.
    source: [test]
`);

test('with nothing given, nothing is settled and no lowest level is named', () => {
  const { level, applies, advice } = outcome(exceptions, {});
  expect(level).toEqual({ at_least: null, could_be: 'emergency_call', settled: false });
  expect(applies).toBe('unsure');
  expect(advice).toEqual([]);
});

test('the lowest level is an answer only when it is settled', () => {
  const whole = { heart_rate: 72, temperature: 36.8 };
  expect(outcome(exceptions, { age: { value: 58, unit: 'a' }, ...whole }).level).toEqual({
    at_least: 'usual_round',
    could_be: 'usual_round',
    settled: true,
  });
  // Everything is given but whether the protocol is for this patient.
  const { level, applies, applies_because: because } = outcome(exceptions, whole);
  expect(level).toEqual({ at_least: null, could_be: 'usual_round', settled: false });
  expect([applies, because]).toEqual(['unsure', ['age is not known; the protocol is for 16 y or more']]);
});

test('a rule held back only by an unanswered exception counts in full, and its exception is asked first', () => {
  const made = outcome(exceptions, adult({ heart_rate: 120, temperature: 36.8 }));
  expect(made.level).toEqual({ at_least: 'call_doctor', could_be: 'call_doctor', settled: false });
  expect(ruleOf(made, 'fast')).toMatchObject({
    state: 'undecided',
    counts: true,
    decided_by: ['heart rate 120 /min is 30 above 90; the rule asks for more than 90'],
    waits_for: ['paced'],
    could_be_taken_back_by: 'A pacemaker sets the rate.',
    decided_if: [
      { observation: 'paced', choices: ['no'], state: 'met' },
      { observation: 'paced', choices: ['yes'], state: 'not_met' },
    ],
  });
  expect(made.ask_first).toEqual(['paced']);
  expect(made.would_tell_more).toEqual([]);
  expect(made.advice.map(({ rule }) => rule)).toEqual(['fast']);
});

test('an exception counts through the rules that name its rule', () => {
  const made = outcome(exceptions, adult({ heart_rate: 120, temperature: 39 }));
  expect(made.level?.at_least).toBe('emergency_call');
  expect(ruleOf(made, 'fast_and_hot')).toMatchObject({
    state: 'undecided',
    counts: true,
    decided_by: [
      '"Fast" counts: nobody has answered what could take it back',
      'temperature 39 °C is 1 above 38; the rule asks for more than 38',
    ],
    waits_for: ['paced'],
  });
  expect(made.ask_first).toEqual(['paced']);
});

test('an exception that is known takes the rule back, and says so', () => {
  const made = outcome(exceptions, adult({ heart_rate: 120, temperature: 36.8, paced: true }));
  const fast = ruleOf(made, 'fast');
  expect(fast).toMatchObject({ state: 'not_met', taken_back_by: 'A pacemaker sets the rate.' });
  expect(fast.decided_by).toBeUndefined();
  expect(made.level).toEqual({ at_least: 'usual_round', could_be: 'usual_round', settled: true });
});

test('an exception that does not apply leaves the rule decided by its own condition', () => {
  const made = outcome(exceptions, adult({ heart_rate: 80, temperature: 36.8, paced: true }));
  expect(ruleOf(made, 'fast')).toMatchObject({
    state: 'not_met',
    decided_by: ['heart rate 80 /min is 10 below 90; the rule asks for more than 90'],
  });
  expect(ruleOf(made, 'fast').taken_back_by).toBeUndefined();
});

test('an explanation keeps the rule met and lowers its level; unanswered it unsettles', () => {
  const set = adult({ heart_rate: 72, temperature: 39 });
  const open = outcome(exceptions, set);
  expect(open.level).toEqual({
    at_least: 'tell_nurse_in_charge',
    could_be: 'tell_nurse_in_charge',
    settled: false,
  });
  expect(ruleOf(open, 'hot')).toMatchObject({
    state: 'met',
    level: 'tell_nurse_in_charge',
    could_be_explained_by: 'The medicine can do it.',
  });
  expect([open.ask_first, open.would_tell_more]).toEqual([['vasodilator_last_6_h'], []]);
  const known = outcome(exceptions, { ...set, vasodilator_last_6_h: true });
  expect(known.level).toEqual({ at_least: 'look_again', could_be: 'look_again', settled: true });
  expect(ruleOf(known, 'hot')).toMatchObject({
    state: 'met',
    level: 'look_again',
    lowered_from: 'tell_nurse_in_charge',
    explained_by: 'The medicine can do it.',
  });
  expect(known.advice[0]).toMatchObject({ rule: 'hot', explained_by: 'The medicine can do it.' });
});

test('a rule that is blind and not met reassures nobody', () => {
  const blind = outcome(
    exceptions,
    adult({ heart_rate: 72, temperature: 36.8, rate_slowing_medicine: true }),
  );
  expect(ruleOf(blind, 'slow').not_reliable).toEqual(['a medicine that slows the heart: yes']);
  const met = outcome(exceptions, adult({ heart_rate: 40, temperature: 36.8, rate_slowing_medicine: true }));
  expect(ruleOf(met, 'slow').not_reliable).toBeUndefined();
  const unknown = outcome(exceptions, adult({ heart_rate: 72, temperature: 36.8 }));
  expect(ruleOf(unknown, 'slow').not_reliable).toBeUndefined();
});

test('a measure that is blind is named in the rules that read it', () => {
  const set = adult({ systolic: 118, diastolic: 66, heart_rate: 80, paced: true });
  const { not_reliable: because } = ruleOf(
    outcome(askable('pressure_reading'), set),
    'rate_outruns_pressure',
  );
  expect(because).toEqual(['shock index is not reliable here (paced: yes)']);
});

test('outside its scope a protocol gives no level, and says what to use instead', () => {
  const made = outcome(exceptions, { age: { value: 12, unit: 'a' }, heart_rate: 150, temperature: 39 });
  expect(made).toMatchObject({
    applies: 'no',
    applies_because: ['age 12 y is 4 y below 16 y; the protocol is for 16 y or more'],
    otherwise: "For a child use the children's chart.",
    level: null,
    rules: [],
    advice: [],
    measures: {},
    missing: [],
  });
});

test('advice has the highest level first and names an action once', () => {
  const { advice } = outcome(exceptions, adult({ heart_rate: 120, temperature: 39, paced: false }));
  expect(advice.map(({ rule, level, do: actions }) => [rule, level, actions])).toEqual([
    ['fast_and_hot', 'emergency_call', ['Look (own authority)', 'Call']],
    ['fast', 'call_doctor', []],
    ['hot', 'tell_nurse_in_charge', []],
  ]);
});

test.each([
  [{}],
  [{ heart_rate: 120 }],
  [{ temperature: 39, age: { value: 58, unit: 'a' } }],
  [adult({ heart_rate: 72, temperature: 36.8 })],
  [{ age: { value: 12, unit: 'a' } }],
])('the level alone is the level of the outcome: %j', (set) => {
  const { ladder } = exceptions.protocol;
  const alone = levelOf(exceptions, boundsOf(exceptions, set));
  const { level } = outcome(exceptions, set);
  const name = (index: number | null): string | null =>
    index === null ? null : (ladder.levels[index]?.name ?? null);
  const shown = alone && {
    at_least: name(alone.atLeast),
    could_be: name(alone.couldBe),
    settled: alone.settled,
  };
  expect(shown).toEqual(level);
});
