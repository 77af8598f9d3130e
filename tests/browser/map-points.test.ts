import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { frameOf, placeOf, type Frame, type MapPoint } from '../../editor/src/common/map/frame.ts';
import { ordinaryValues, planeOf, readSet } from '../../src/index.ts';
import { seriesToOutcome } from '../../src/outcome/series-to-outcome.ts';
import { askable } from '../bundled.ts';
import { inBrowser } from './in-browser.ts';
import { openWrite } from './write-room.ts';

// What is drawn in the page is held against the evaluator: at a thousand points, and on both sides of every edge.

const rooms = inBrowser();
const compiled = askable('pressure_reading');
const held = Object.fromEntries(
  ordinaryValues(compiled.protocol)
    .filter(({ name }) => name !== 'systolic' && name !== 'diastolic')
    .map(({ name, unit, value }) => [name, typeof value === 'number' ? { value, unit } : value]),
);

/** The level of a point as the evaluator has it; null where the pair is refused, which is left blank. */
function levelAt({ x, y }: MapPoint): string | null {
  const { series } = readSet('set', JSON.stringify({ ...held, systolic: x, diastolic: y }), compiled);
  if (!series) throw new Error('the set cannot be read');
  const { level, refused } = seriesToOutcome(compiled, series);
  return refused.length > 0 ? null : (level?.at_least ?? 'none');
}

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill: string;
}

/** Every filled piece of the map, in the units of the picture, and how large the picture is. */
const drawnIn = async (page: Page): Promise<{ rects: Rect[]; width: number; height: number }> =>
  page.evaluate(`(() => {
    const svg = document.querySelector('.map-plot svg');
    const [group] = svg.querySelectorAll('g[aria-label="rect"]');
    const number = (each, name) => Number(each.getAttribute(name));
    const rects = [...group.querySelectorAll('rect')].map((each) => ({
      x: number(each, 'x'), y: number(each, 'y'), width: number(each, 'width'), height: number(each, 'height'),
      fill: each.getAttribute('fill') ?? group.getAttribute('fill'),
    }));
    return { rects, width: number(svg, 'width'), height: number(svg, 'height') };
  })()`);

const inside = ({ x, y, width, height }: Rect, at: { x: number; y: number }): boolean =>
  at.x > x && at.x < x + width && at.y > y && at.y < y + height;

/** The points in the corners of a piece, and those beside them outside it. */
function aroundEdges(frame: Frame, rects: readonly Rect[]): MapPoint[] {
  const columns = range(frame.x);
  const rows = range(frame.y);
  const sides = (all: readonly number[], holds: (step: number) => boolean): number[] => {
    const within = all.filter(holds);
    const [first, last] = [within[0] as number, within.at(-1) as number];
    return [first - 1, first, last, last + 1].filter((step) => all.includes(step));
  };
  return rects.flatMap((rect) => {
    const across = sides(columns, (x) =>
      isBetween(placeOf({ x, y: frame.y[0] }, frame).x, rect.x, rect.width),
    );
    const up = sides(rows, (y) => isBetween(placeOf({ x: frame.x[0], y }, frame).y, rect.y, rect.height));
    return across.flatMap((x) => up.map((y) => ({ x, y })));
  });
}

const isBetween = (at: number, from: number, length: number): boolean => at > from && at < from + length;
const range = ([low, high]: readonly [number, number]): number[] =>
  Array.from({ length: high - low + 1 }, (_, index) => low + index);

test('a thousand points, and both sides of every edge, are filled as the evaluator answers', async () => {
  const { page } = await openWrite(rooms.browser, `${rooms.site.origin}/#/write/pressure_reading`);
  await page.getByRole('tab', { name: 'Map' }).click();
  await page.locator('.map-plot svg').waitFor();
  const { rects, width, height } = await drawnIn(page);
  expect(rects.length).toBeGreaterThan(20);
  const { series } = readSet('held', JSON.stringify(held), compiled);
  if (!series) throw new Error('what is held cannot be read');
  const frame = {
    ...frameOf(planeOf(compiled, { axes: ['systolic', 'diastolic'], held: series }), false),
    width,
    height,
  };
  const [columns, rows] = [range(frame.x), range(frame.y)];
  // A walk that meets every column and row, and in all more than a thousand points.
  const points = Array.from({ length: 1200 }, (_, index): MapPoint => ({
    x: columns[(index * 7) % columns.length] as number,
    y: rows[(index * 11 + Math.floor(index / columns.length)) % rows.length] as number,
  }));
  const levelOfFill = new Map<string, string>();
  const seen = new Set<string>();
  for (const point of [...points, ...aroundEdges(frame, rects)]) {
    const key = `${point.x}/${point.y}`;
    if (seen.has(key)) continue;
    seen.add(key);
    const found = rects.filter((rect) => inside(rect, placeOf(point, frame)));
    const level = levelAt(point);
    expect([key, found.length]).toEqual([key, level === null ? 0 : 1]);
    const fill = found[0]?.fill;
    if (fill === undefined || level === null) continue;
    levelOfFill.set(fill, levelOfFill.get(fill) ?? level);
    expect([key, levelOfFill.get(fill)]).toEqual([key, level]);
  }
  expect(seen.size).toBeGreaterThan(1000);
  // One fill for each level, and none for two.
  expect(new Set(levelOfFill.values()).size).toBe(levelOfFill.size);
  expect(levelOfFill.size).toBeGreaterThan(3);
});
