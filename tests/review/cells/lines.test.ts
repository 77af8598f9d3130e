import { expect, test } from 'vitest';
import { linesOverPlane, planeOf, pointInWords, cellInWords } from '../../../src/index.ts';
import { askable } from '../../bundled.ts';
import { seriesOf } from './judged.ts';

const axes = ['systolic', 'diastolic'] as const;
const compiled = askable('pressure_reading');
const held = seriesOf(compiled, {
  age: { value: 58, unit: 'a' },
  pregnancy: 'not_pregnant',
  heart_rate: 100,
});
const lines = linesOverPlane(compiled, { axes, held });
const titled = (title: string): readonly (readonly [number, number])[] =>
  lines.find((line) => line.title === title)?.pieces[0] ?? [];

test('the curve runs through its points', () => {
  const curve = titled('diastolic expected for this systolic');
  expect(curve).toContainEqual([90, 60]);
  expect(curve).toContainEqual([120, 80]);
});

test('a level line lies where the measure has its number', () => {
  const mean = titled('estimated mean pressure = 65 mmHg');
  expect(mean.length).toBeGreaterThan(50);
  for (const [x, y] of mean) expect((x + 2 * y) / 3).toBeCloseTo(65, 9);
  const share = titled('gap as a share of the systolic = 25 %');
  for (const [x, y] of share) expect((x - y) / x).toBeCloseTo(0.25, 9);
});

test('a measure of the first axis alone stands upright', () => {
  const index = lines.find(({ measure }) => measure === 'shock_index');
  const [from = [], to = []] = index?.pieces[0] ?? [];
  expect(from[0]).toBe(to[0]);
  expect(from[1]).toBeLessThan(Number(to[1]));
});

test('a point and a cell are told in words, with what they could be', () => {
  const plane = planeOf(compiled, { axes, held });
  const said = pointInWords(plane, 104, 48);
  expect(said).toContain(
    'systolic pressure 104 mmHg, diastolic pressure 48 mmHg: at least Tell the nurse in charge, not settled; it could be as high as: Emergency call. Rules met: Diastolic low while the systolic looks fine; ',
  );
  expect(said).toContain('Undecided: Measured mean too low; ');
  expect(pointInWords(plane, 100, 110)).toBe(
    'systolic pressure 100 mmHg, diastolic pressure 110 mmHg: not possible: the values are refused.',
  );
  expect(pointInWords(plane, 9999, 110)).toContain('outside the map');
  expect(cellInWords(plane, 0)).toMatch(/^systolic pressure \d+ .*mmHg, diastolic pressure .*mmHg: /);
  expect(plane.held).toContain('heart rate: 100 /min');
  expect(plane.held).toContain('temperature: not taken');
});
