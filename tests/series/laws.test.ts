import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { inputsOf } from '../../src/logic/inputs.ts';
import type { Bounds } from '../../src/series/bounds.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import { Timeline } from '../../src/series/timeline.ts';
import { givenSeries, longestReach, timeAt, watchful, type GivenSeries } from './given.ts';
import { seriesOf } from './row.ts';

vi.setConfig({ testTimeout: 60_000 });

const bounds = (given: GivenSeries): Bounds => seriesToBounds(watchful, seriesOf(given, watchful));
const runs = { numRuns: 200 };

const shuffledKeys = (value: object): object => Object.fromEntries(Object.entries(value).toReversed());

test('the order of sets and of keys means nothing', () => {
  fc.assert(
    fc.property(givenSeries, fc.infiniteStream(fc.nat(6)), (given, places) => {
      const sets = given.sets.map((set) => shuffledKeys(set) as GivenSeries['sets'][number]);
      for (let index = 0; index < sets.length; index += 1) {
        const to = (places.next().value as number) % sets.length;
        [sets[index], sets[to]] = [sets[to] as (typeof sets)[0], sets[index] as (typeof sets)[0]];
      }
      expect(bounds({ ...given, sets })).toEqual(bounds(given));
    }),
    runs,
  );
});

test('a set that is split in two at its instant, or given twice, says the same', () => {
  fc.assert(
    fc.property(givenSeries, fc.nat(6), fc.nat(12), (given, which, where) => {
      const set = given.sets[which % Math.max(1, given.sets.length)];
      if (!set) return;
      const { at, ...said } = set;
      const parts = Object.entries(said);
      const half = where % (parts.length + 1);
      const first = { at, ...Object.fromEntries(parts.slice(0, half)) };
      const second = { at, ...Object.fromEntries(parts.slice(half)) };
      const others = given.sets.filter((each) => each !== set);
      expect(bounds({ ...given, sets: [first, ...others, second] })).toEqual(bounds(given));
      expect(bounds({ ...given, sets: [set, ...given.sets] })).toEqual(bounds(given));
    }),
    runs,
  );
});

test('narrow is inside wide, and every low is at most its high', () => {
  const inputs = inputsOf(watchful);
  const placeOf = new Map(inputs.map(({ name }, index) => [name, index]));
  let differing = 0;
  fc.assert(
    fc.property(givenSeries, (given) => {
      const { narrow, wide } = bounds(given);
      if (narrow !== wide) differing += 1;
      const part = (array: Float64Array, name: string): number => array[placeOf.get(name) ?? -1] as number;
      for (const { name, owner, part: kind, of } of inputs) {
        const [inside, outside] = [part(narrow, name), part(wide, name)];
        if (kind === 'high') {
          const [low, lowWide] = [part(narrow, `${owner}:low`), part(wide, `${owner}:low`)];
          const count = of === 'look_back' && placeOf.has(`${owner}:count`) ? `${owner}:count` : null;
          const [by, byWide] = count ? [part(narrow, count), part(wide, count)] : [1, 1];
          expect(low).toBeLessThanOrEqual(inside);
          expect(lowWide).toBeLessThanOrEqual(outside);
          expect(low / by).toBeGreaterThanOrEqual(lowWide / byWide);
          expect(inside / by).toBeLessThanOrEqual(outside / byWide);
        } else if (kind === 'may' || kind === 'missing' || kind === 'maybe') {
          expect(inside).toBeLessThanOrEqual(outside);
        } else if (kind === 'sure') expect(inside).toBeGreaterThanOrEqual(outside);
        else if (kind !== 'low' && kind !== 'count') expect(inside).toBe(outside);
      }
    }),
    runs,
  );
  expect(differing).toBeGreaterThan(runs.numRuns / 5);
});

test('a set older than anything reaches back changes nothing', () => {
  fc.assert(
    fc.property(givenSeries, givenSeries, (given, old) => {
      const [before] = old.sets;
      if (!before || given.sets.length === 0) return;
      const standing = ['oxygen_scale', 'usual_systolic', 'mean_pressure'];
      const said = Object.entries(before).filter(([name]) => name !== 'at' && !standing.includes(name));
      const earliest = Math.min(...given.sets.map(({ at }) => Date.parse(at)));
      const set = { at: timeAt(earliest - longestReach - 1), ...Object.fromEntries(said) };
      expect(bounds({ ...given, sets: [set, ...given.sets] })).toEqual(bounds(given));
    }),
    runs,
  );
});

test('a timeline that is asked after every set answers as the series so far does', () => {
  fc.assert(
    fc.property(givenSeries, (given) => {
      const series = seriesOf(given, watchful);
      const sets = series.sets.toSorted((left, right) => (left.at ?? 0) - (right.at ?? 0));
      const timeline = new Timeline(watchful, series);
      sets.forEach((set, index) => {
        timeline.push(set);
        const so_far = { ...series, sets: sets.slice(0, index + 1), at: set.at, atText: set.atText };
        expect(timeline.boundsAt(set.at, set.atText)).toEqual(seriesToBounds(watchful, so_far));
      });
      expect(timeline.boundsAt(series.at, series.atText)).toEqual(seriesToBounds(watchful, series));
    }),
    runs,
  );
});
