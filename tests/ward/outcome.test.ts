import { expect, test } from 'vitest';
import { showWard } from '../../src/command-line/show-ward.ts';
import { both, pressure, rate, technique, ward, wardOutcome } from './ward.ts';

const adult = { age: { value: 40, unit: 'a' } };
const small = ward(both);

test('the level is the highest of all protocols', () => {
  const made = wardOutcome(small, { ...adult, systolic: 88, heart_rate: 70 });
  expect(made.level).toEqual({ at_least: 'call', could_be: 'call', settled: true });
  expect(made.reads.map(({ protocol, level }) => [protocol, level?.at_least])).toEqual([
    ['pressure', 'call'],
    ['rate', 'round'],
  ]);
});

test.each([
  [{}, { at_least: null, could_be: 'call', settled: false }],
  [
    { ...adult, systolic: 120 },
    { at_least: null, could_be: 'look', settled: false },
  ],
  [
    { ...adult, systolic: 120, heart_rate: 70 },
    { at_least: 'round', could_be: 'round', settled: true },
  ],
  [
    { ...adult, systolic: 98, heart_rate: 120 },
    { at_least: 'look', could_be: 'look', settled: true },
  ],
  // The rate is not known, but could reach no more than what the pressure has settled.
  [
    { ...adult, systolic: 88 },
    { at_least: 'call', could_be: 'call', settled: true },
  ],
  [
    { ...adult, heart_rate: 120 },
    { at_least: 'look', could_be: 'call', settled: false },
  ],
])('%j', (set, level) => {
  expect(wardOutcome(small, set).level).toEqual(level);
});

test('a protocol that is not for this patient is named, and the others count', () => {
  const made = wardOutcome(small, { age: { value: 9, unit: 'a' }, systolic: 120, heart_rate: 140 });
  expect(made.level).toEqual({ at_least: 'round', could_be: 'round', settled: true });
  expect(made.reads[1]).toMatchObject({ protocol: 'rate', applies: 'no', level: null });
  const text = showWard(made, small, { width: 80, colour: false });
  expect(text).toContain('The rate: not for this patient');
});

test('where no protocol is for this patient there is no level', () => {
  const one = ward('reads_with: [{ protocol: rate, edition: 1 }]\n');
  expect(wardOutcome(one, { age: { value: 9, unit: 'a' } }).level).toBeNull();
});

test('each action and each question is said once, with the highest level', () => {
  const { advice } = wardOutcome(small, { ...adult, systolic: 88, heart_rate: 120 });
  expect(advice.map((each) => [each.protocol, each.rule, each.ask, each.do])).toEqual([
    ['pressure', 'low', ['How do the hands feel?'], ['Take it again by hand']],
    ['pressure', 'lowish', [], ['Take a full set']],
    ['rate', 'fast', [], []],
  ]);
});

test("the ward's own condition leaves a protocol out, or asks for what it reads", () => {
  const limited = ward(
    'reads_with: [{ protocol: pressure, edition: 1 }, { protocol: rate, edition: 1, when: { head_injury: { is: no } } }]\n',
  );
  const set = { ...adult, systolic: 120, heart_rate: 120 };
  expect(wardOutcome(limited, { ...set, head_injury: true }).level?.at_least).toBe('round');
  expect(wardOutcome(limited, { ...set, head_injury: false }).level?.at_least).toBe('look');
  const unsure = wardOutcome(limited, set);
  expect(unsure.level).toEqual({ at_least: 'look', could_be: 'look', settled: false });
  expect(unsure.ask_first).toContain('head_injury');
});

test('a fault of technique of one protocol widens what the others read', () => {
  const all = ward(
    'reads_with: [{ protocol: pressure, edition: 1 }, { protocol: technique, edition: 1 }]\n',
    [pressure, technique],
  );
  const made = wardOutcome(all, { systolic: 98, technique_faults: ['arm_below_heart'] });
  expect(made.level).toEqual({ at_least: 'look', could_be: 'call', settled: false });
  expect(
    made.faults?.map(({ fault, changes }) => [
      fault,
      changes.map(({ protocol, rule }) => `${protocol}.${rule}`),
    ]),
  ).toEqual([['arm_hangs', ['pressure.low']]]);
  expect(wardOutcome(all, { systolic: 98, technique_faults: [] }).level?.could_be).toBe('look');
});

const zoned = ward(`time_zone: Europe/London\n${both}`);
test.each([
  // In winter the clock there is UTC, in summer an hour ahead; from is included, to is not.
  ['2026-01-10T07:59:00Z', 'Night doctor'],
  ['2026-01-10T08:00:00Z', 'Day doctor'],
  ['2026-01-10T19:59:59Z', 'Day doctor'],
  ['2026-01-10T20:00:00Z', 'Night doctor'],
  ['2026-07-10T07:00:00Z', 'Day doctor'],
  ['2026-07-10T19:00:00Z', 'Night doctor'],
  ['2026-01-10T02:00:00-06:00', 'Day doctor'],
])('at %s it is the %s who is told', (at, who) => {
  const { response } = wardOutcome(zoned, { at, ...adult, systolic: 88, heart_rate: 70 });
  expect(response?.tell.map((each) => each.who)).toEqual([who, 'Nurse in charge']);
});

test('without a time, or without a zone, everybody is named with their hours', () => {
  const set = { ...adult, systolic: 88, heart_rate: 70 };
  const everybody = ['Day doctor', 'Night doctor', 'Nurse in charge'];
  expect(wardOutcome(zoned, set).response?.tell.map(({ who }) => who)).toEqual(everybody);
  const timed = wardOutcome(small, { at: '2026-01-10T08:00:00Z', ...set });
  expect(timed.response?.tell.map(({ who }) => who)).toEqual(everybody);
});

const planned = ward(
  `${both}plans:
  comfort_care:
    says: Comfort comes first.
    levels: { call: { tell: [{ who: Palliative team }], respond: 2 h } }
    source: [test]
`,
);
test('a plan changes whom to tell and how soon, not the level', () => {
  const set = { ...adult, systolic: 88, heart_rate: 70 };
  const plan = wardOutcome(planned, { ...set, escalation_plan: 'comfort_care' });
  expect(plan.level).toEqual(wardOutcome(planned, set).level);
  expect(plan.plan?.says).toBe('Comfort comes first.');
  expect(plan.response).toMatchObject({
    tell: [{ who: 'Palliative team' }],
    respond: '2 h',
    reassess: '30 min',
  });
  const other = wardOutcome(planned, { ...set, escalation_plan: 'full_escalation' });
  expect(other.plan).toBeUndefined();
  expect(other.response?.respond).toBe('30 min');
});

test('an unknown name in a set is a problem, one that only another protocol reads is none', () => {
  expect(
    wardOutcome(small, { ...adult, systolic: 120, heart_rate: 70, paced: true }).reads[0]?.unused,
  ).toContain('paced');
});

test('a printed outcome never shows a level without what it could be', () => {
  const text = showWard(wardOutcome(small, { ...adult, heart_rate: 120 }), small, {
    width: 80,
    colour: false,
  });
  expect(text).toMatch(/^ACT NOW ON: LOOK\nNot settled: it could be as high as call/im);
  expect(text).toContain('the paper policy wins');
  expect([rate.protocol.name, pressure.protocol.name].every((name) => text.includes(`The ${name}`))).toBe(
    true,
  );
});
