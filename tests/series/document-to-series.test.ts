import { expect, test } from 'vitest';
import { documentToSeries } from '../../src/series/document-to-series.ts';
import { setVocabularyOf, type UnitWords } from '../../src/series/set-reading.ts';
import type { Problem } from '../../src/problems/problem.ts';
import { setWording } from '../../src/problems/wording/set.ts';
import { documentOf } from './document-of.ts';
import { rejects } from './rejects.ts';
import { at, wardProtocol } from './ward.ts';

const vocabulary = setVocabularyOf(wardProtocol());
const read = (value: unknown, units: UnitWords = 'ucum') =>
  documentToSeries(documentOf(value), vocabulary, { units });

const by = 'Dr Ash';

test.each(rejects)('$code: $says', ({ code, set, meant, says, near, units }) => {
  const { series, problems } = read(set, units);
  expect(series).toBeNull();
  expect(problems.map((problem) => problem.code)).toEqual([code]);
  const [problem] = problems as [Problem];
  expect(problem.says).toContain(says);
  expect(problem.source.slice(problem.column - 1)).toMatch(startsWith(meant));
  expect(problem.near_miss).toBe(near ?? null);
  expect(problem.severity).toBe('error');
});

const startsWith = (text: string): RegExp => new RegExp(`^${text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`);

test('every code of a set is rejected in some example', () => {
  const codes = new Set(rejects.map(({ code }) => code));
  const tested = Object.keys(setWording).filter((code) => code !== 'set_more_problems');
  expect(tested.filter((code) => !codes.has(code as Problem['code']))).toEqual([]);
});

test('all problems come at once, each at its own line', () => {
  const { series, problems } = read({ systolc: 104, heart_rate: 'x', at: 'noon', consciousness: 'asleep' });
  expect(series).toBeNull();
  expect(problems.map(({ code, line }) => [code, line])).toEqual([
    ['set_time_unreadable', 4],
    ['set_unknown_observation', 2],
    ['set_text_for_number', 3],
    ['set_unknown_choice', 5],
  ]);
});

test('a set with thousands of problems shows two hundred and says how many more there are', () => {
  const names = Array.from({ length: 5000 }, (_, index) => [`unheard_of_${index}`, 1]);
  const { problems } = read(Object.fromEntries(names));
  expect(problems).toHaveLength(201);
  expect(problems.at(-1)?.says).toBe('There are 4800 more problems like these in the set.');
});

test('a flat set: exact values on their steps, a single set without a time', () => {
  const { series, problems } = read({
    systolic: 104,
    temperature: { value: 98.1, unit: '[degF]' },
    infection_suspected: true,
    technique_faults: ['talking'],
    oxygen_saturation: { unobtainable: 'cold fingers' },
    diastolic: { below_device: 30 },
  });
  expect(problems).toEqual([]);
  expect(series?.at).toBeNull();
  expect(series?.sets).toHaveLength(1);
  expect(Object.fromEntries(series?.sets[0]?.observed ?? [])).toEqual({
    systolic: { kind: 'number', low: 104, high: 104, value: 104, given: { text: '104', moved: false } },
    temperature: {
      kind: 'number',
      low: 367,
      high: 367,
      value: 367,
      given: { text: '98.1 [degF]', moved: true },
    },
    infection_suspected: { kind: 'choice', choice: 'yes', given: { text: 'yes', moved: false } },
    technique_faults: { kind: 'several', choices: ['talking'], given: { text: 'talking', moved: false } },
    oxygen_saturation: {
      kind: 'unobtainable',
      reason: 'cold fingers',
      given: { text: 'unobtainable: cold fingers', moved: false },
    },
    diastolic: { kind: 'below_device', bound: 30, given: { text: 'below 30', moved: false } },
  });
});

test('in the trade’s words a scalar carries its unit, and an age without one is in years', () => {
  const age = (value: unknown) => read({ age: value }, 'trade').series?.sets[0]?.observed.get('age');
  expect(age('58 y')).toMatchObject({
    low: 58 * 5844,
    high: 58 * 5844,
    given: { text: '58 y', moved: false },
  });
  expect(age(58)).toMatchObject({ low: 58 * 5844, given: { text: '58', moved: false } });
  expect(age('7 mo')).toMatchObject({ low: 7 * 487, given: { text: '7 mo', moved: true } });
  expect(age({ value: '5 d', high: 6 })).toMatchObject({ low: 5 * 16, high: 6 * 16, value: 5 * 16 });
  const { series } = read({ temperature: '98.1 °F', systolic: { low: 12, high: 14, unit: 'kPa' } }, 'trade');
  expect(series?.sets[0]?.observed.get('temperature')).toMatchObject({
    low: 367,
    given: { text: '98.1 °F' },
  });
  expect(series?.sets[0]?.observed.get('systolic')).toMatchObject({ low: 90, high: 105 });
});

test('yes and no are written in four ways', () => {
  const asked = (value: unknown) => read({ infection_suspected: value }).series?.sets[0]?.observed;
  expect(asked('yes')?.get('infection_suspected')).toEqual(asked(true)?.get('infection_suspected'));
  expect(asked('no')?.get('infection_suspected')).toEqual(asked(false)?.get('infection_suspected'));
  expect(asked('no')?.get('infection_suspected')).toMatchObject({ choice: 'no' });
});

test('a series: the latest time is asked about unless another is', () => {
  const sets = [{ at: at('12:00') }, { at: at('08:00') }, { at: '2026-03-02T17:45:00+05:45' }];
  const asked = read({ sets }).series;
  expect([asked?.at, asked?.atText]).toEqual([Date.UTC(2026, 2, 2, 12), at('12:00')]);
  const later = read({ sets, at: at('13:00') }).series;
  expect([later?.at, later?.atText]).toEqual([Date.UTC(2026, 2, 2, 13), at('13:00')]);
});

test('what is stated of the patient has its value, who, why and for how long', () => {
  const { series, problems } = read({
    at: at('12:00'),
    patient: {
      standing: {
        oxygen_scale: { value: 'scale_2', by, reason: 'long-standing', at: at('08:00'), until: at('20:00') },
      },
      limits: { mean_floor: { value: 9.4, unit: 'kPa', by } },
    },
  });
  expect(problems).toEqual([]);
  expect(series?.standing.get('oxygen_scale')).toEqual({
    value: 'scale_2',
    by,
    reason: 'long-standing',
    from: Date.UTC(2026, 2, 2, 8),
    until: Date.UTC(2026, 2, 2, 20),
    given: { text: 'scale_2', moved: false },
  });
  expect(series?.limits.get('mean_floor')).toMatchObject({
    value: 71,
    by,
    given: { text: '9.4 kPa', moved: true },
  });
});
