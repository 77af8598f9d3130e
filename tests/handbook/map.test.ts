import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import { gridOf, windowOf } from '../../src/handbook/map/grid.ts';
import { hatchingsOf } from '../../src/handbook/map/hatching.ts';
import { mapPicture } from '../../src/handbook/map/picture.ts';
import { areaOf, roomiestOf } from '../../src/handbook/map/shapes.ts';
import { cellAt, planeOf, type Plane } from '../../src/index.ts';
import { protocolOnMap } from '../../src/teach/on-the-map.ts';
import { askable } from '../bundled.ts';

function planeFor(name: string): Plane {
  const ground = protocolOnMap(askable(name), []);
  if ('why' in ground) throw new Error(ground.why);
  return planeOf(ground.compiled, ground);
}

const plane = planeFor('pressure_reading');

test('the drawn grid is the plane itself: every point is filled with the answer of its cell', () => {
  const window = windowOf(plane);
  const { columns, rows, answers } = gridOf(plane, window);
  expect([columns[0], columns.at(-1)]).toEqual([window.x[0], window.x[1] + 1]);
  for (let x = window.x[0]; x <= window.x[1]; x += 1)
    for (let y = window.y[0]; y <= window.y[1]; y += 7) {
      const [column, row] = [columns, rows].map((cuts, axis) =>
        cuts.findLastIndex((cut) => cut <= (axis === 0 ? x : y)),
      ) as [number, number];
      expect(answers[row]?.[column]).toBe(cellAt(plane, x, y)?.answer);
    }
});

test('each letter stands for one filling, and has its words in the legend', () => {
  const fills = hatchingsOf(plane);
  const byKey = new Map(fills.map(({ key, letter }) => [key, letter]));
  expect(new Set(byKey.values()).size).toBe(byKey.size);
  for (const { key, letter } of fills) expect(byKey.get(key)).toBe(letter);
  const { document } = parseHTML(`<html><body>${mapPicture(plane, 'm').text}</body></html>`) as unknown as {
    document: { querySelectorAll(selector: string): Iterable<{ textContent: string }> };
  };
  const legend = [...document.querySelectorAll('.legend b')].map(({ textContent }) => textContent);
  const letters = [...document.querySelectorAll('.letter')].map(({ textContent }) => textContent);
  expect(new Set(legend).size).toBe(legend.length);
  expect(letters.filter((letter) => !legend.includes(letter))).toEqual([]);
});

test('ground that is settled is hatched otherwise than the same level while it is not', () => {
  const fills = hatchingsOf(plane);
  const patternOf = (words: string): unknown => fills.find((fill) => fill.words === words)?.pattern;
  expect(patternOf('Look again, settled')).toBe('settled-1');
  expect(patternOf('At least: Look again, not settled')).toBe('open-1');
  expect(patternOf('Not possible')).toBeNull();
});

const grid = {
  columns: [0, 1, 2, 3],
  rows: [0, 1, 2],
  answers: [
    [0, 0, 1],
    [0, 0, 0],
  ],
};
const plainly = { x: (step: number): number => step * 10, y: (step: number): number => step * 10 };

test('an area is drawn row by row, and its letter stands where there is most room', () => {
  expect(areaOf(grid, (answer) => answer === 0, plainly)).toBe('M0 0H20V10H0ZM0 10H30V20H0Z');
  expect(areaOf(grid, (answer) => answer === 2, plainly)).toBe('');
  const room = roomiestOf(grid, (answer) => answer === 0, plainly);
  expect(room && room.x < 20 && room.y > 0).toBe(true);
  expect(roomiestOf(grid, (answer) => answer === 2, plainly)).toBeNull();
});
