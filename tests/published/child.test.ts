import { expect, test } from 'vitest';
import { childFloors } from './child-figures.ts';
import { askable } from '../bundled.ts';
import { ask } from './kit.ts';

const protocol = 'child_low_pressure';

test.each(childFloors)('$id: too low below $floor, and not at it', ({ age, floor }) => {
  const below = (systolic: number): string | undefined => {
    const { rules } = ask(askable(protocol), { age, systolic });
    return rules.find(({ rule }) => rule === 'systolic_below_floor')?.state;
  };
  const { measures } = ask(askable(protocol), { age });
  expect(measures['lowest_systolic']?.value).toBe(floor);
  expect(below(floor - 1)).toBe('met');
  expect(below(floor)).toBe('not_met');
});

test.each(childFloors)('$id: a pressure well above the floor settles nothing by itself', ({ age }) => {
  const { level } = ask(askable(protocol), { age, systolic: 110 });
  expect(level).toMatchObject({ at_least: null, settled: false });
});
