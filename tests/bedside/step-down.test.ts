import { expect, test } from 'vitest';
import { stepDownOf, type StepDown } from '../../src/bedside/step-down.ts';
import { readSet } from '../../src/index.ts';
import { askable } from '../bundled.ts';

const hour = 3_600_000;

/** The count after systolic pressures at whole hours; null is a set in which none was taken. */
function after(...systolics: (number | null)[]): StepDown | null {
  const compiled = askable('lessons/one_threshold');
  const sets = systolics.map((systolic, index) => ({
    at: `2026-03-02T${String(8 + index).padStart(2, '0')}:00:00Z`,
    ...(systolic === null ? {} : { systolic }),
  }));
  const { series } = readSet('set.json', JSON.stringify({ sets }), compiled);
  if (!series) throw new Error('the sets cannot be read');
  return stepDownOf(compiled, series);
}

test('nothing is counted before a level was reached, nor while it is called for', () => {
  expect(after(120, 118)).toBeNull();
  expect(after(120, 88)).toBeNull();
  expect(after(88, 120, 85)).toBeNull();
});

test('sets in a row below the level are counted, with the time that they span', () => {
  expect(after(88, 120)).toMatchObject({
    level: 3,
    counted: 1,
    wanted: 2,
    spans: 0,
    over: 2 * hour,
    complete: false,
  });
  expect(after(88, 120, 121)).toMatchObject({ counted: 2, spans: hour, complete: false });
  expect(after(88, 120, 121, 122)).toMatchObject({ counted: 3, spans: 2 * hour, complete: true });
});

test('a set that could still be as high breaks the row', () => {
  expect(after(88, 120, null)).toMatchObject({ counted: 0, complete: false });
  expect(after(88, 120, null, 121)).toMatchObject({ counted: 1, spans: 0, complete: false });
});
