import { parseHTML } from 'linkedom';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import {
  boxOf,
  lineBoxes,
  lineTitle,
  meets,
  pointBox,
  pointWords,
  ground,
} from '../../editor/src/common/map/boxes.ts';
import { drawPlane, type Drawing } from '../../editor/src/common/map/draw-plane.ts';
import { exportSvg } from '../../editor/src/common/map/export-svg.ts';
import { fillOf, legendOf, onPaper } from '../../editor/src/common/map/fills.ts';
import { firstPoint, frameOf, movedBy, placeOf, pointAt } from '../../editor/src/common/map/frame.ts';
import { labelsOf } from '../../editor/src/common/map/labels.ts';
import { PlaneMap } from '../../editor/src/common/map/plane-map.tsx';
import { rangesAt } from '../../editor/src/common/map/regions.tsx';
import { caution, linesOverPlane, planeOf, readSet, type Plane } from '../../src/index.ts';
import { askable } from '../bundled.ts';

const compiled = askable('pressure_reading');
const axes = ['systolic', 'diastolic'] as const;
const held = readSet(
  'set.json',
  JSON.stringify({ age: { value: 58, unit: 'a' }, pregnancy: 'not_pregnant', respiratory_rate: 18 }),
  compiled,
).series as NonNullable<ReturnType<typeof readSet>['series']>;
const plane = planeOf(compiled, { axes, held });
const lines = linesOverPlane(compiled, { axes, held });
const frame = frameOf(plane, false);

const page = (): Document => parseHTML('<html><body></body></html>').document;
const drawing = (of: Plane): Drawing => ({
  plane: of,
  by: 'at_least',
  frame,
  points: [
    { name: 'Quiet and flushed', x: 104, y: 48, passes: true },
    { name: 'Bleeding', x: 88, y: 70, passes: false },
  ],
  lines,
  id: 'm1',
});
const saved = (of: Plane): string => exportSvg(drawing(of), page(), (element) => element.outerHTML);

test('a saved picture has title, edition, digest, axes, legend, what is held and the caution', () => {
  const svg = saved(plane);
  const { document } = parseHTML(svg);
  const words = [...document.querySelectorAll('text')].map((each) => each.textContent).join(' ');
  expect(words).toContain('Reading an adult blood pressure as output and tone');
  expect(words).toContain(`Edition ${plane.protocol.edition}, digest ${plane.protocol.digest.slice(7, 19)}.`);
  expect(words).toContain('systolic pressure (mmHg)');
  expect(words).toContain('diastolic pressure (mmHg)');
  for (const { words: legend } of legendOf(plane, 'at_least')) expect(words).toContain(legend);
  expect(words).toContain('Held: heart rate: not taken; respiratory rate: 18 /min;');
  expect(words).toContain(caution);
  expect(words).not.toMatch(/20\d\d-\d\d-\d\d/);
  expect(svg).not.toMatch(/href|<script|\son\w+=/);
});

test('hostile words never become markup', () => {
  const hostile = '</svg><script>alert(1)</script><img src=x onerror=alert(1)>"\'&';
  const named = { name: 'x', title: hostile };
  const bad: Plane = {
    ...plane,
    protocol: { ...plane.protocol, title: hostile },
    levels: plane.levels.map(() => named),
    rules: plane.rules.map(() => named),
    held: [hostile],
    x: { ...plane.x, title: hostile, unit: hostile },
  };
  const svg = saved(bad);
  expect(svg).not.toMatch(/<script|<img/);
  expect(svg.match(/<\/svg>/g)).toHaveLength(2);
  const markup = renderToStaticMarkup(createElement(PlaneMap, { plane: bad, points: [], lines }));
  expect(markup).not.toMatch(/<script|<img/);
});

test('the page has the map’s words before any picture: legend, point, table and controls', () => {
  const markup = renderToStaticMarkup(
    createElement(PlaneMap, { plane, lines, points: drawing(plane).points, onExport: () => undefined }),
  );
  const { document } = parseHTML(markup);
  expect(document.querySelector('output')?.textContent).toMatch(
    /^systolic pressure 120 mmHg, diastolic pressure 80 mmHg: /,
  );
  expect(document.querySelector('label[for]')?.textContent).toBe('Fill by');
  expect(document.querySelectorAll('.map-legend li').length).toBe(legendOf(plane, 'at_least').length + 1);
  expect(document.querySelectorAll('.map-regions tbody tr').length).toBeGreaterThan(10);
  expect(document.querySelector('[role=application]')?.getAttribute('tabindex')).toBe('0');
});

test('what is not settled is marked by a pattern, and what is impossible is blank', () => {
  for (const answer of plane.answers) {
    const { colour, pattern } = fillOf(answer, plane, 'at_least');
    if (answer.refused.length > 0) expect(colour).toBeNull();
    else expect(pattern === 'lines').toBe(answer.level?.settled === false);
  }
  const svg = drawPlane(drawing(plane), page());
  expect(
    svg.querySelectorAll('[fill="url(#m1-lines)"] rect, rect[fill="url(#m1-lines)"]').length,
  ).toBeGreaterThan(0);
});

test('a rule by itself fills the map by its state', () => {
  const rule = { rule: plane.rules[0]?.name ?? '' };
  const words = legendOf(plane, rule).map((fill) => fill.words);
  expect(words).toEqual(expect.arrayContaining(['Met', 'Not met', 'Not possible']));
});

test('keys move by a step or by ten, and stay inside', () => {
  const at = { x: 104, y: 48 };
  expect(movedBy('ArrowLeft', false, at, frame)).toEqual({ x: 103, y: 48 });
  expect(movedBy('ArrowUp', true, at, frame)).toEqual({ x: 104, y: 58 });
  expect(movedBy('Home', false, at, frame)).toEqual({ x: frame.x[0], y: 48 });
  expect(movedBy('End', false, at, frame)).toEqual({ x: frame.x[1], y: 48 });
  expect(movedBy('ArrowDown', true, { x: 104, y: frame.y[0] + 3 }, frame)).toEqual({ x: 104, y: frame.y[0] });
  expect(movedBy('Tab', false, at, frame)).toBeNull();
  expect(firstPoint(plane, frame)).toEqual({ x: 120, y: 80 });
});

test('a place of the picture and a point lead to each other', () => {
  for (const point of [
    { x: frame.x[0], y: frame.y[1] },
    { x: 104, y: 48 },
  ]) {
    const { x, y } = placeOf(point, frame);
    expect(pointAt(x, y, frame)).toEqual(point);
  }
  expect(pointAt(2, 2, frame)).toBeNull();
});

test('each large region says what it is', () => {
  const texts = labelsOf(plane, 'at_least', frame).map(({ text }) => text.replaceAll('\n', ' '));
  expect(texts).toContain('Not possible');
  expect(texts.filter((text) => text.includes('Call the doctor')).length).toBeGreaterThan(1);
});

/** The rectangle that the words of a region stand in, in units of the picture. */
const labelBox = (
  { text, x, y }: ReturnType<typeof labelsOf>[number],
  of: typeof frame,
): ReturnType<typeof boxOf> => {
  const rows = text.split('\n');
  const place = placeOf({ x, y }, of);
  const widest = Math.max(...rows.map(({ length }) => length)) * 7.4;
  const tall = rows.length * 17;
  return {
    left: place.x - widest / 2,
    right: place.x + widest / 2,
    top: place.y - tall / 2,
    bottom: place.y + tall / 2,
  };
};

test.each([340, 500, 760])('no words lie over a line, a point or other words, %i wide', (width) => {
  const here = { x: 108, y: 54, words: 'This case' };
  const narrow = frameOf(plane, false, { width, here });
  const mark = pointWords(here.words, here, narrow);
  const curve = lines.filter(({ kind }) => kind === 'curve');
  expect(curve.length).toBeGreaterThan(0);
  const points = [pointBox(here, narrow)];
  const titles = curve.flatMap((each) => {
    const title = lineTitle(each, plane, { frame: narrow, taken: [...points, boxOf(mark)] });
    return title ? [title] : [];
  });
  const drawn = curve.flatMap((each) => lineBoxes(each, plane, narrow));
  for (const title of titles)
    for (const box of [...points, boxOf(mark), ...drawn]) expect(meets(boxOf(title), box)).toBe(false);
  const taken = [...points, boxOf(mark), ...titles.map(boxOf), ...drawn];
  const labels = labelsOf(plane, 'at_least', narrow, taken).map((each) => labelBox(each, narrow));
  expect(labels.length).toBeGreaterThan(0);
  for (const label of labels) {
    expect(taken.filter((box) => meets(box, label))).toEqual([]);
    expect(label.left).toBeGreaterThanOrEqual(ground(narrow).left);
    expect(label.right).toBeLessThanOrEqual(ground(narrow).right);
  }
});

test('the marked point is never left out, however unusual', () => {
  const here = { x: plane.x.possible[1], y: plane.y.possible[0] };
  const wide = frameOf(plane, false, { here });
  expect([wide.x[1], wide.y[0]]).toEqual([here.x, here.y]);
  const svg = drawPlane({ ...drawing(plane), frame: wide, here: { ...here, words: 'This case' } }, page());
  expect(svg.textContent).toContain('This case');
});

test('on paper there is no colour, and neighbouring levels are apart by their grey', () => {
  const greys = legendOf(plane, 'at_least').map((fill) => onPaper(fill).colour ?? '#ffffff');
  for (const grey of greys) expect(grey).toMatch(/^#(..)\1\1$/);
  const svg = drawPlane({ ...drawing(plane), isPaper: true }, page());
  const drawn = [...svg.querySelectorAll('rect')].map((each): string => each.getAttribute('fill') ?? '');
  const light = (grey: string): number => (parseInt(grey.slice(1, 3), 16) / 255) ** 2.2 + 0.05;
  const used: string[] = [...new Set<string>(drawn.filter((fill) => fill.startsWith('#')))];
  expect(used.length).toBeGreaterThan(2);
  const lights: number[] = used.map((grey) => light(grey));
  lights.sort((one, other) => other - one);
  lights.slice(1).forEach((each, index) => expect((lights[index] ?? 0) / each).toBeGreaterThan(1.3));
});

test('the table tells a column in ranges that follow on each other', () => {
  const ranges = rangesAt(100, { plane, by: 'at_least', frame });
  expect(ranges[0]).toMatch(/^10 to \d+ mmHg: At least: Call the doctor/);
  expect(ranges.at(-1)).toBe('100 to 150 mmHg: Not possible');
});
