import { expect, test } from 'vitest';
import { childFloors } from './child-figures.ts';
import { readBundled } from './kit.ts';

const protocol = 'child_low_pressure';

test.each(childFloors)('$id: too low below $floor, and not at it', async ({ age, floor }) => {
  const below = async (systolic: number): Promise<string | undefined> => {
    const { rules } = await readBundled(protocol, { age, systolic });
    return rules.find(({ rule }) => rule === 'systolic_below_floor')?.state;
  };
  const { measures } = await readBundled(protocol, { age });
  expect(measures['lowest_systolic']?.value).toBe(floor);
  expect(await below(floor - 1)).toBe('met');
  expect(await below(floor)).toBe('not_met');
});

test.each(childFloors)('$id: a pressure well above the floor settles nothing by itself', async ({ age }) => {
  const { level } = await readBundled(protocol, { age, systolic: 110 });
  expect(level).toMatchObject({ at_least: null, settled: false });
});
