import { expect, test } from 'vitest';
import { showWard } from '../../src/command-line/show-ward.ts';
import { both, ward, wardOutcome } from './ward.ts';

const small = ward(both);
const patient = { standing: { age: { value: 40, unit: 'a', by: 'Admission office' } } };

/** The time of a set and its systolic; null where only the rate was taken. */
type Taken = readonly [string, number | null];

/** Sets of one morning. */
const series = (...sets: readonly Taken[]): Record<string, unknown> => ({
  patient,
  sets: sets.map(([time, systolic]) => ({
    at: `2026-03-02T${time}:00Z`,
    heart_rate: 70,
    ...(systolic === null ? {} : { systolic }),
  })),
});

const found = (...sets: readonly Taken[]): ReturnType<typeof wardOutcome>['in_force'] =>
  wardOutcome(small, series(...sets)).in_force;

test('one lower set does not step down', () => {
  expect(found(['08:00', 88], ['09:00', 120])).toEqual({
    level: 'call',
    since: '2026-03-02T08:00:00Z',
    last_at: '2026-03-02T08:00:00Z',
    sets_below: 1,
    sets_asked: 2,
    minutes: 0,
    minutes_asked: 60,
    agreed_by: 'Day doctor',
    may_step_down: false,
  });
});

test.each([
  [
    'enough sets, exactly as long as asked',
    [
      ['08:00', 88],
      ['08:30', 120],
      ['09:30', 120],
    ],
    true,
  ],
  [
    'enough sets, a minute too soon',
    [
      ['08:00', 88],
      ['08:30', 120],
      ['09:29', 120],
    ],
    false,
  ],
  [
    'long enough, one set',
    [
      ['08:00', 88],
      ['11:00', 120],
    ],
    false,
  ],
  [
    'a set that reaches it again starts anew',
    [
      ['08:00', 88],
      ['08:30', 120],
      ['09:00', 90],
      ['09:30', 120],
    ],
    false,
  ],
  [
    'a set without the pressure starts anew',
    [
      ['08:00', 88],
      ['08:30', 120],
      ['09:00', null],
      ['09:30', 120],
    ],
    false,
  ],
  [
    'a lower level that is not the lowest counts as below',
    [
      ['08:00', 88],
      ['08:30', 98],
      ['09:30', 98],
    ],
    true,
  ],
] as readonly (readonly [string, readonly Taken[], boolean])[])('%s', (_, sets, may) => {
  expect(found(...sets)?.may_step_down).toBe(may);
});

test('what the latest set calls for itself is not told as still in force', () => {
  expect(found(['08:00', 98], ['09:00', 88])).toBeUndefined();
  expect(found(['08:00', 120], ['09:00', 120])).toBeUndefined();
});

test('sets after the evaluation time do not count', () => {
  const sets = series(['08:00', 120], ['09:00', 88]);
  expect(wardOutcome(small, { ...sets, at: '2026-03-02T08:30:00Z' }).in_force).toBeUndefined();
});

test('the order in which sets were entered means nothing', () => {
  const { sets, ...rest } = series(['08:00', 88], ['08:30', 120], ['09:00', 120]) as { sets: object[] };
  expect(wardOutcome(small, { ...rest, sets: sets.toReversed() }).in_force).toEqual(
    found(['08:00', 88], ['08:30', 120], ['09:00', 120]),
  );
});

test('it is answered, and printed, in place of the lower level', () => {
  const made = wardOutcome(small, series(['08:00', 88], ['09:00', 120]));
  expect(made.level?.at_least).toBe('round');
  expect(made.response).toMatchObject({ level: 'call', reassess: '30 min' });
  const text = showWard(made, small, { width: 80, colour: false });
  expect(text).toContain('STILL IN FORCE: CALL');
  expect(text).not.toContain('12 h');
});
