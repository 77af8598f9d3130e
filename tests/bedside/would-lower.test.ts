import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSet, type Compiled } from '../../src/index.ts';
import type { Series } from '../../src/series/series.ts';
import { changeableBy, changeableByWard } from '../../src/bedside/changeable.ts';
import { lowersOf } from '../../src/bedside/would-raise.ts';
import { levelOf } from '../../src/outcome/answers.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import { askable, bundledWard } from '../bundled.ts';

function seriesOf(compiled: Compiled, set: object): Series {
  const { series, problems } = readSet('set.json', JSON.stringify(set), compiled);
  if (!series) throw new Error(problems.map(({ says }) => says).join('\n'));
  return series;
}

function lowersAt(compiled: Compiled, set: object, name: string): (number | undefined)[] {
  const found = lowersOf(changeableBy(compiled, seriesOf(compiled, set)));
  return found.filter(({ observation }) => observation.name === name).map(({ number }) => number?.steps);
}

test('the step past the threshold is the nearest value that lowers', () => {
  const compiled = askable('lessons/one_threshold');
  expect(lowersAt(compiled, { systolic: 84 }, 'systolic')).toEqual([91]);
  expect(lowersAt(compiled, { systolic: 104 }, 'systolic')).toEqual([]);
});

test('each value that is told lowers the level, and none nearer does', () => {
  const compiled = askable('pressure_reading');
  const patient = { age: { value: 58, unit: 'a' }, pregnancy: 'not_pregnant', consciousness: 'alert' };
  const level = (set: object): number =>
    levelOf(compiled, seriesToBounds(compiled.protocol, seriesOf(compiled, set)))?.atLeast ?? 0;
  const draws = fc.record({
    systolic: fc.integer({ min: 70, max: 180 }),
    diastolic: fc.integer({ min: 30, max: 69 }),
    heart_rate: fc.integer({ min: 35, max: 140 }),
    respiratory_rate: fc.integer({ min: 6, max: 30 }),
  });
  fc.assert(
    fc.property(draws, (drawn) => {
      const set = { ...patient, ...drawn, temperature: 36.8 };
      const now = level(set);
      const told = new Set(lowersAt(compiled, set, 'heart_rate'));
      const found = new Set<number | undefined>();
      for (const way of [-1, 1]) {
        for (let rate = drawn.heart_rate + way; rate >= 20 && rate <= 220; rate += way) {
          if (level({ ...set, heart_rate: rate }) < now) {
            found.add(rate);
            break;
          }
        }
      }
      expect(told).toEqual(found);
    }),
    { numRuns: 25 },
  );
}, 60_000);

test('on a ward only what lowers the level of all protocols together is told', () => {
  const ward = bundledWard();
  const set = {
    age: { value: 58, unit: 'a' },
    pregnancy: 'not_pregnant',
    consciousness: 'pain',
    systolic: 118,
    diastolic: 70,
    heart_rate: 74,
    respiratory_rate: 15,
    temperature: 36.8,
    oxygen_saturation: 97,
    on_oxygen: false,
    infection_suspected: false,
    after_surgery_or_injury: false,
  };
  const { series } = readSet('set.json', JSON.stringify(set), ward);
  if (!series) throw new Error('the set cannot be read');
  const found = lowersOf(changeableByWard(ward, series));
  expect(found.map(({ observation }) => observation.name)).toEqual(found.map(() => 'consciousness'));
  expect(found.length).toBeGreaterThan(0);
});
