import { expect, test } from 'vitest';
import { localTime } from '../../editor/src/common/clock.ts';
import {
  entriesToSet,
  givenToJson,
  heldBack,
  noStatement,
  whyNoNumber,
} from '../../editor/src/bedside/entries.ts';
import { changed, isBlank, newPatient, type Patient } from '../../editor/src/bedside/state.ts';
import { protocolReader } from '../../src/index.ts';
import { askable } from '../bundled.ts';

const at = '2026-03-04T20:10:00+00:00';
const { form } = protocolReader(askable('pressure_reading'));
const number = (text: string, unit = ''): { kind: 'number'; text: string; unit: string } => ({
  kind: 'number',
  text,
  unit,
});

test.each(['104', '36.7', '36,7', '-1', ' 98 '])('%j is a number', (text) => {
  expect(whyNoNumber(text)).toBeNull();
});

test.each(['', 'abc', '1e3', '104/48', '1,200.5', '1.2.3', '0x10', '٣٦'])(
  '%j is no number, and it is said',
  (text) => {
    expect(whyNoNumber(text)).toMatch(/not a number, so it is not used/);
    expect(entriesToSet({ systolic: number(text) }, at)).toEqual({ at });
  },
);

test('each kind of nothing stays what it is', () => {
  const set = entriesToSet(
    {
      systolic: { kind: 'unobtainable', because: ' cold hands ' },
      heart_rate: { kind: 'declined', because: '' },
      temperature: { kind: 'not_taken' },
      technique_faults: { kind: 'several', choices: [] },
    },
    at,
  );
  expect(set).toEqual({
    at,
    systolic: { unobtainable: 'cold hands' },
    heart_rate: { declined: true },
    technique_faults: [],
  });
});

test('a fact that a prescriber states, and a limit, count only with a name', () => {
  const given = {
    ...newPatient,
    at,
    facts: {
      usual_systolic: { ...noStatement, entry: number('132', 'mm[Hg]') },
      age: { ...noStatement, entry: number('71', 'a') },
    },
    limits: { mean_floor: { ...noStatement, entry: number('70', 'mm[Hg]') } },
  };
  const json = JSON.parse(givenToJson(given, form.patient)) as {
    patient: { standing: object; limits: object };
  };
  expect(Object.keys(json.patient.standing)).toEqual(['age']);
  expect(json.patient.limits).toEqual({});
  expect(heldBack(given, [], form.patient, form.limits).map(({ name }) => name)).toEqual([
    'usual_systolic',
    'mean_floor',
  ]);
  const named = {
    ...given,
    limits: { mean_floor: { ...noStatement, entry: number('70', 'mm[Hg]'), by: 'Dr Ash' } },
  };
  expect(JSON.parse(givenToJson(named, form.patient))).toMatchObject({
    patient: { limits: { mean_floor: { value: 70, unit: 'mm[Hg]', by: 'Dr Ash' } } },
  });
});

test('what was stated until a time is over from that time on, and that is said', () => {
  const until = (time: string): string[] => {
    const limit = { ...noStatement, entry: number('70', 'mm[Hg]'), by: 'Dr Ash', until: time };
    const given = { ...newPatient, at, limits: { mean_floor: limit } };
    return heldBack(given, [], form.patient, form.limits).map(({ says }) => says);
  };
  expect(until('2026-03-04T21:11:00+01:00')).toEqual([]);
  for (const time of [at, '2026-03-04T21:10:00+01:00', '2026-03-01T08:00:00+00:00'])
    expect(until(time)).toEqual([expect.stringContaining('ended before this set was taken')]);
});

test('the next set leaves the last one among the earlier ones, and a new patient leaves nothing', () => {
  const entered = changed(newPatient, {
    does: 'enter',
    name: 'systolic',
    entry: number('88', 'mm[Hg]'),
    now: at,
  });
  expect(entered.takenAt).toBe(at);
  const next: Patient = changed(entered, { does: 'next_set' });
  expect(next.earlier).toEqual([{ at, systolic: { value: 88, unit: 'mm[Hg]' } }]);
  expect([next.entries, next.takenAt]).toEqual([{}, null]);
  expect(isBlank(next)).toBe(false);
  expect(isBlank(changed(next, { does: 'new_patient' }))).toBe(true);
});

test('a clock time alone is the latest such time that is not after the present set', () => {
  const time = (day: string | null, clock: string, before: string): number =>
    Date.parse(localTime(day, clock, before) ?? '');
  const here = (text: string): number => new Date(text).getTime();
  const before = new Date(here('2026-03-04T02:00')).toISOString();
  expect(time(null, '01:30', before)).toBe(here('2026-03-04T01:30'));
  expect(time(null, '23:30', before)).toBe(here('2026-03-03T23:30'));
  expect(time('2026-03-02', '9:05', before)).toBe(here('2026-03-02T09:05'));
  expect(localTime(null, '25:00', before)).toBeNull();
});
