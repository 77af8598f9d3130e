import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readProtocol, type Compiled } from '../../../src/index.ts';
import { axesOf } from '../../../src/review/cells/axes-of.ts';
import { planeOf } from '../../../src/review/cells/plane-of.ts';
import type { Plane } from '../../../src/review/cells/plane.ts';
import type { Series } from '../../../src/series/series.ts';
import { askable, bundledLadder, bundledNames, bundledText, lessonNames } from '../../bundled.ts';
import { edgePoints, evaluatorAt, finder, seriesOf } from './judged.ts';

const all = [...bundledNames, ...lessonNames];
const adult = { age: { value: 58, unit: 'a' }, pregnancy: 'not_pregnant' };
const ordinary = {
  ...adult,
  heart_rate: 104,
  respiratory_rate: 23,
  temperature: 38.2,
  consciousness: 'alert',
  oxygen_saturation: 95,
  on_oxygen: true,
};

/** What a protocol can be told of these. */
const known = (compiled: Compiled, set: object): object =>
  Object.fromEntries(Object.entries(set).filter(([name]) => compiled.protocol.vocabulary.has(name)));

function plane(name: string, set: object, axes?: readonly [string, string]): [Compiled, Series, Plane] {
  const compiled = askable(name);
  const held = seriesOf(compiled, known(compiled, set));
  const [x = '', y = ''] = axes ?? axesOf(compiled).map((axis) => axis.name);
  return [compiled, held, planeOf(compiled, { axes: [x, y], held })];
}

/** The points of a list at which the plane and the evaluator differ. */
function differing(
  [compiled, held, made]: [Compiled, Series, Plane],
  points: readonly (readonly [number, number])[],
): (readonly [number, number])[] {
  const find = finder(made);
  return points.filter(
    (point) => JSON.stringify(find(point)) !== JSON.stringify(evaluatorAt(compiled, held, made, point)),
  );
}

const randomPoints = ({ x, y }: Plane, count: number): (readonly [number, number])[] =>
  fc.sample(fc.tuple(...[x, y].map(({ possible: [min, max] }) => fc.integer({ min, max }))), {
    numRuns: count,
    seed: 4,
  }) as unknown as (readonly [number, number])[];

/** Where a plane is wrong: of 1,000 points, and of those on both sides of every edge. */
const wrong = (made: [Compiled, Series, Plane]): (readonly [number, number])[] =>
  differing(made, [...randomPoints(made[2], 1000), ...edgePoints(made[2])]);

test.each(all.filter((name) => axesOf(askable(name)).length > 1))(
  '%s: every cell says what the evaluator says, at 1,000 points and on both sides of every edge',
  (name) => {
    expect(wrong(plane(name, ordinary))).toEqual([]);
    expect(wrong(plane(name, {}))).toEqual([]);
  },
);

test('an age, in steps of a sixteenth of a day, is an axis like any other', () => {
  expect(wrong(plane('pressure_reading', ordinary, ['age', 'systolic']))).toEqual([]);
  expect(wrong(plane('child_low_pressure', { systolic: 90, diastolic: 40 }, ['age', 'heart_rate']))).toEqual(
    [],
  );
});

test('axes that no comparison couples are cut at their own numbers alone', () => {
  const made = plane('early_warning_score', ordinary, ['temperature', 'heart_rate']);
  expect(wrong(made)).toEqual([]);
  expect(made[2].cells.length).toBeLessThan(60);
});

test('what contradicts a held number is refused, and so is that number', () => {
  const made = plane('pressure_reading', { ...ordinary, mean_pressure: 80 });
  expect(wrong(made)).toEqual([]);
  const roughly = { value: 80, low: 70, high: 84 };
  expect(
    wrong(
      plane('pressure_reading', { ...ordinary, mean_pressure: roughly, heart_rate: { low: 90, high: 99 } }),
    ),
  ).toEqual([]);
});

test('a fault of technique that is known makes every reading a range, cut at the ends of what is possible', () => {
  const faults = askable('reading_technique').protocol.faults;
  expect(faults.length).toBeGreaterThan(0);
  const made = plane('reading_technique', { ...ordinary, technique_faults: ['cuff_too_small', 'talking'] });
  expect(wrong(made)).toEqual([]);
});

test('a limit that was changed for this patient moves the edge', () => {
  const compiled = askable('lessons/a_limit_to_change');
  const patient = { limits: { mean_floor: { value: 80, unit: 'mm[Hg]', by: 'Dr Ash' } } };
  const held = seriesOf(compiled, { patient, sets: [{ at: '2026-03-02T08:00:00Z' }] });
  expect(wrong([compiled, held, planeOf(compiled, { axes: ['systolic', 'diastolic'], held })])).toEqual([]);
});

test('a threshold that differs by one step is found', () => {
  const text = bundledText('lessons/a_curve/protocol.yaml');
  const other = text.replace(/at_least: 14\b/, 'at_least: 15');
  expect(other).not.toBe(text);
  const [broken] = [readProtocol('protocol.yaml', other, { ladder: bundledLadder() }).protocol as Compiled];
  const [compiled, held] = plane('lessons/a_curve', ordinary);
  const ofBroken = planeOf(broken, { axes: ['systolic', 'diastolic'], held });
  expect(differing([compiled, held, ofBroken], edgePoints(ofBroken)).length).toBeGreaterThan(0);
});

test('earlier sets cannot be held', () => {
  const compiled = askable('lessons/a_curve');
  const at = (hour: number): object => ({ at: `2026-03-02T0${hour}:00:00Z`, systolic: 120 });
  const held = seriesOf(compiled, { sets: [at(7), at(8)] });
  expect(() => planeOf(compiled, { axes: ['systolic', 'diastolic'], held })).toThrow(RangeError);
  expect(() => planeOf(compiled, { axes: ['systolic', 'systolic'], held: seriesOf(compiled, {}) })).toThrow(
    RangeError,
  );
});
