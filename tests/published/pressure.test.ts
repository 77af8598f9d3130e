import { expect, test } from 'vitest';
import { disagreements, gapLines } from './conflicts.ts';
import { adult, readBundled } from './kit.ts';
import { deviceFigures, gapFigures, meanFigures, quarterFigures } from './pressure-figures.ts';

const protocol = 'pressure_reading';

const valueOf = async (set: object, measure: string): Promise<number> => {
  const { measures } = await readBundled(protocol, adult(set));
  return measures[measure]?.value ?? Number.NaN;
};

test.each([...meanFigures, ...gapFigures])(
  '$id has the published $measure',
  async ({ inputs, measure, expected, tolerance }) => {
    const value = await valueOf(inputs, measure);
    // A little more than the tolerance, because a difference of decimals is not exact in binary.
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance + 1e-9);
  },
);

test.each(deviceFigures)('$id shows how far the device is from the estimate', async (figure) => {
  const { inputs, estimate, tolerance } = figure;
  expect(Math.abs((await valueOf(inputs, 'mean_estimate')) - estimate)).toBeLessThanOrEqual(tolerance);
  const shown = await valueOf(inputs, 'mean_difference');
  // Shown to two decimals, which is far finer than the devices print.
  expect(Math.abs(shown - (inputs.mean_pressure - estimate))).toBeLessThanOrEqual(0.01);
});

test('the device that differs is the one that is published as differing', async () => {
  const shown = await Promise.all(deviceFigures.map(({ inputs }) => valueOf(inputs, 'mean_difference')));
  expect(shown.map((difference) => Math.abs(difference) > 0.5)).toEqual([true, false, false]);
});

test.each(quarterFigures)('$id is narrow: $narrow', async ({ inputs, narrow }) => {
  const { measures, rules } = await readBundled(protocol, adult(inputs));
  const share = measures['pulse_share']?.value ?? Number.NaN;
  expect(share < 25).toBe(narrow);
  const states = rules
    .filter(({ rule }) => ['low_and_narrow', 'narrow_while_systolic_holds'].includes(rule))
    .map(({ state }) => state);
  expect(states.toSorted()).toEqual(narrow ? ['met', 'not_met'] : ['not_met', 'not_met']);
});

const lineNamed = (id: string): (typeof gapLines)[number] => {
  const line = gapLines.find((each) => each.id === id);
  if (!line) throw new Error(`No published line is called ${id}.`);
  return line;
};

test.each(disagreements)(
  'the works disagree about $systolic/$diastolic',
  ({ systolic, diastolic, yes, no }) => {
    const gap = systolic - diastolic;
    const said = (id: string): boolean => lineNamed(id).holds(systolic, gap);
    expect(yes.map(said)).toEqual(yes.map(() => true));
    expect(no.map(said)).toEqual(no.map(() => false));
    const calls = [...yes, ...no].map((id) => lineNamed(id).calls);
    expect(new Set(calls).size).toBe(1);
  },
);

test('every published line disagrees with another one somewhere', () => {
  const named = new Set(disagreements.flatMap(({ yes, no }) => [...yes, ...no]));
  expect(gapLines.map(({ id }) => id).filter((id) => !named.has(id))).toEqual([]);
});
