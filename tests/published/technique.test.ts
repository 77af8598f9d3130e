import { expect, test } from 'vitest';
import { askable, bundled } from '../bundled.ts';
import { outcome } from '../outcome/ask.ts';
import { cuffTable, perCentimetre, readsHigh, readsLow, widest } from './technique-figures.ts';

const compiled = askable('reading_technique');
const { faults } = bundled('reading_technique');
const room = { age: { value: 47, unit: 'a' }, pregnancy: 'not_pregnant', systolic: 200, diastolic: 120 };

interface Doubt {
  readonly fault: string;
  readonly high: number;
  readonly low: number;
}

/** How far the truth may lie below and above what was read, by every fault of a set that widens the observation. */
function doubts(set: object, observation: 'systolic' | 'diastolic'): readonly Doubt[] {
  return (outcome(compiled, { ...room, ...set }).faults ?? []).flatMap(({ fault, readings }) =>
    readings
      .filter((reading) => reading.observation === observation)
      .map(({ low, high }) => ({ fault, high: room[observation] - low, low: high - room[observation] })),
  );
}

const doubt = (set: object, observation: 'systolic' | 'diastolic'): Omit<Doubt, 'fault'> =>
  doubts(set, observation)[0] ?? { high: 0, low: 0 };

test.each(readsHigh)('$fault takes no less than $systolic and $diastolic ($source)', (figure) => {
  const set = { technique_faults: [figure.fault] };
  expect(doubt(set, 'systolic').high).toBeGreaterThanOrEqual(figure.systolic);
  expect(doubt(set, 'diastolic').high).toBeGreaterThanOrEqual(figure.diastolic ?? figure.systolic);
  expect([doubt(set, 'systolic').low, doubt(set, 'diastolic').low]).toEqual([0, 0]);
});

test.each(readsLow)('$fault takes no less than $systolic and $diastolic ($source)', (figure) => {
  const set = { technique_faults: [figure.fault] };
  expect(doubt(set, 'systolic').low).toBeGreaterThanOrEqual(figure.systolic);
  expect(doubt(set, 'diastolic').low).toBeGreaterThanOrEqual(figure.diastolic ?? figure.systolic);
  expect([doubt(set, 'systolic').high, doubt(set, 'diastolic').high]).toEqual([0, 0]);
});

test.each(['cuff_off_artery', 'moving'])('%s has no size of its own and takes the widest', (fault) => {
  const set = { technique_faults: [fault] };
  expect(doubt(set, 'systolic')).toMatchObject({ high: widest.systolic, low: widest.systolic });
  expect(doubt(set, 'diastolic')).toMatchObject({ high: widest.diastolic, low: widest.diastolic });
});

test.each(perCentimetre)('the steps of height never say less than %s', (_, mmHg) => {
  for (let cm = 0; cm <= 75; cm += 1) {
    const below = doubt({ arm_below_heart_by: cm }, 'systolic');
    const above = doubt({ arm_above_heart_by: cm }, 'diastolic');
    expect(below.high, `${cm} cm below`).toBeGreaterThanOrEqual(cm * mmHg);
    expect(above.low, `${cm} cm above`).toBeGreaterThanOrEqual(cm * mmHg);
    expect([below.low, above.high]).toEqual([0, 0]);
  }
});

const rows = cuffTable.map(([cuff]) => cuff);

/** What the protocol says of a cuff on an arm. */
function verdict(cuff: string, arm: number): string {
  const { rules, faults: found = [] } = outcome(compiled, { ...room, cuff, arm_circumference: arm });
  const fits = rules.some(({ rule, state }) => rule === 'cuff_fits' && state === 'met');
  return [...(fits ? ['fits'] : []), ...found.map(({ fault }) => fault)].join(', ');
}

/** The same, from the table: no verdict where the table has no row for the arm, unless another row settles it. */
function fromTable(cuff: string, arm: number): string {
  const [, from = 0, to = 0] = cuffTable[rows.indexOf(cuff)] ?? [];
  const next = cuffTable[rows.indexOf(cuff) + 1]?.[1] ?? Number.POSITIVE_INFINITY;
  const before = cuffTable[rows.indexOf(cuff) - 1]?.[2] ?? Number.NEGATIVE_INFINITY;
  if (arm >= from && arm <= to) return 'fits';
  if (arm >= next) return 'cuff_too_small';
  return arm <= before ? 'cuff_too_large' : '';
}

test.each(rows)('%s: every arm has the verdict of the published table, and no other', (cuff) => {
  for (let tenths = 180; tenths <= 560; tenths += 1) {
    const arm = tenths / 10;
    expect(verdict(cuff, arm), `${arm} cm`).toBe(fromTable(cuff, arm));
  }
});

test.each([21, 26.5, 34.5, 44.5, 53])('an arm of %d cm is said to have no cuff in the table', (arm) => {
  const { rules } = outcome(compiled, { ...room, arm_circumference: arm });
  expect(rules.find(({ rule }) => rule === 'arm_without_a_cuff')?.state).toBe('met');
});

test('a measured mean is as unsure as the less sure of the two pressures, unless it has a size of its own or holds', () => {
  const own = new Set([
    'diastolic_without_sound',
    'let_down_too_fast',
    'line_damped',
    'line_method_damped',
    'line_rings',
    'line_method_rings',
  ]);
  for (const { name, readsHigh: high, readsLow: low } of faults) {
    if (own.has(name)) continue;
    const line = high.has('line_systolic') || low.has('line_systolic') ? 'line_' : '';
    for (const amounts of [high, low]) {
      if (amounts.size === 0) continue;
      const pair = ['systolic', 'diastolic'].map((each) => amounts.get(`${line}${each}`) ?? 0);
      expect(amounts.get(line ? 'line_mean' : 'mean_pressure'), name).toBe(Math.max(...pair));
    }
  }
});
