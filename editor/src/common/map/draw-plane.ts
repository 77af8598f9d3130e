import * as Plot from '@observablehq/plot';
import { valueAt, type Axis, type ChangedPlane, type Plane, type PlaneLine } from '../../../../src/index.ts';
import {
  boxOf,
  lineBoxes,
  lineTitle,
  pointBox,
  pointWords,
  valuesAt,
  type Box,
  type PlacedWords,
} from './boxes.ts';
import { patternNames, type Fill } from './fill.ts';
import { fillOf, onPaper, type FillBy } from './fills.ts';
import { patterns } from './patterns.ts';
import { domainOf, margins, type Frame, type MapPoint } from './frame.ts';
import { labelsOf } from './labels.ts';

/** A case as a point, in whole steps. */
export interface CasePoint {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly passes: boolean;
}

/** The one point that the map is shown for, and what it is called. */
export interface MarkedPoint extends MapPoint {
  readonly words: string;
}

/** Everything that is drawn. */
export interface Drawing {
  readonly plane: Plane | ChangedPlane;
  readonly by: FillBy;
  readonly frame: Frame;
  readonly points: readonly CasePoint[];
  readonly lines: readonly PlaneLine[];
  readonly here?: MarkedPoint | null;
  /** In greys, for black and white paper. */
  readonly isPaper?: boolean;
  /** Begins the names of patterns, so that two maps on one page do not share them. */
  readonly id: string;
}

const ink = '#1f2430';

/** Draws the map as an SVG element of a document. Protocol text comes in as text nodes alone. */
export function drawPlane(drawing: Drawing, document: Document): SVGSVGElement {
  const { plane, by, frame, points, id } = drawing;
  const { x, y } = plane;
  const ofMedium = drawing.isPaper ? onPaper : (fill: Fill): Fill => fill;
  const fills = plane.answers.map((answer) => ofMedium(fillOf(answer, plane, by)));
  const cells = cellsOf(drawing, fills);
  const sides = { x1: 'x1', x2: 'x2', y1: 'y1', y2: 'y2', shapeRendering: 'crispEdges' } as const;
  const cases = points.filter(({ x: at, y: up }) => isIn(at, frame.x) && isIn(up, frame.y));
  const { words, taken } = wordsOver(drawing, cases);
  const labels = labelsOf(plane, by, frame, taken).map((each) => ({ ...each, fill: ofMedium(each.fill) }));
  const of = (passes: boolean): [number, number][] =>
    cases.filter((each) => each.passes === passes).map((each) => [valueAt(x, each.x), valueAt(y, each.y)]);
  const made = Plot.plot({
    ...frameIn(drawing, document),
    marks: [
      () => patterns(document, id),
      Plot.rect(cells, { ...sides, fill: (each: { fill: Fill }) => each.fill.colour ?? 'none' }),
      ...patternNames.map((name) =>
        Plot.rect(
          cells.filter(({ fill }) => fill.pattern === name),
          { ...sides, fill: `url(#${id}-${name})` },
        ),
      ),
      Plot.frame({ stroke: ink }),
      ...linesOver(drawing.lines),
      Plot.text(labels, {
        x: 'x',
        y: 'y',
        text: 'text',
        fill: ({ fill }: { fill: Fill }) => fill.ink,
        stroke: ({ fill }: { fill: Fill }) => fill.colour ?? '#fff',
        strokeWidth: 6,
        fontWeight: 600,
      }),
      Plot.text(words, { x: 'x', y: 'y', text: 'text', fill: ink, stroke: '#fff', strokeWidth: 5 }),
      Plot.dot(of(true), { r: 5, fill: '#fff', stroke: ink, strokeWidth: 2 }),
      Plot.dot(of(false), { r: 6, symbol: 'times', stroke: '#fff', strokeWidth: 7 }),
      Plot.dot(of(false), { r: 6, symbol: 'times', stroke: ink, strokeWidth: 3.5 }),
      ...markOver(drawing),
    ],
  });
  // No title and no caption are asked for, so that no figure is put around it.
  return made as SVGSVGElement;
}

/** The cells that are seen, as far as they are, in the units of the axes. */
function cellsOf({ plane, frame }: Drawing, fills: readonly Fill[]): DrawnCell[] {
  const { x, y } = plane;
  return plane.cells.flatMap((cell) => {
    const fill = fills[cell.answer];
    const shown = cell.x[1] >= frame.x[0] && cell.x[0] <= frame.x[1] && cell.y[1] >= frame.y[0];
    if (!fill || fill.colour === null || !shown || cell.y[0] > frame.y[1]) return [];
    const [x1, x2] = domainOf(x, within(cell.x, frame.x));
    const [y1, y2] = domainOf(y, within(cell.y, frame.y));
    return [{ x1, x2, y1, y2, fill }];
  });
}

interface DrawnCell {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
  readonly fill: Fill;
}

/** The size of the picture, its letters and its axes. */
const frameIn = ({ plane: { x, y }, frame, id }: Drawing, document: Document): Plot.PlotOptions => ({
  document,
  width: frame.width,
  height: frame.height,
  marginLeft: margins.left,
  marginRight: margins.right,
  marginTop: margins.top,
  marginBottom: margins.bottom,
  className: `map-plot-${id}`,
  style: { fontSize: '13px', fontFamily: 'system-ui, sans-serif', color: ink, background: '#fff' },
  x: {
    domain: domainOf(x, frame.x),
    label: axisWords(x),
    labelAnchor: 'center',
    labelArrow: false,
    labelOffset: margins.bottom - 9,
  },
  y: { domain: domainOf(y, frame.y), label: axisWords(y), labelAnchor: 'center', labelArrow: false },
});

const isIn = (step: number, [low, high]: readonly [number, number]): boolean => step >= low && step <= high;

const within = (
  [from, to]: readonly [number, number],
  [low, high]: readonly [number, number],
): [number, number] => [Math.max(from, low), Math.min(to, high)];

const axisWords = ({ title, unit }: Axis): string => (unit === null ? title : `${title} (${unit})`);

const dashes = ['', '7 4', '2 4', '10 3 2 3'] as const;

/** Each line on a white edge; dashes tell lines apart without colour. */
const linesOver = (lines: readonly PlaneLine[]): Plot.Markish[] =>
  lines.flatMap(({ pieces }, index) =>
    pieces.flatMap((piece) => [
      Plot.line(piece, { stroke: '#fff', strokeWidth: 4, clip: true }),
      Plot.line(piece, {
        stroke: ink,
        strokeWidth: 1.8,
        strokeDasharray: dashes[index % dashes.length] ?? '',
        clip: true,
      }),
    ]),
  );

/** A ring with a dot in it, which nothing else on the map is. */
function markOver({ here, plane: { x, y } }: Drawing): Plot.Markish[] {
  if (!here) return [];
  const at = [[valueAt(x, here.x), valueAt(y, here.y)]] as const;
  return [
    Plot.dot(at, { r: 9, fill: '#fff', stroke: '#fff', strokeWidth: 5 }),
    Plot.dot(at, { r: 8, fill: '#fff', stroke: ink, strokeWidth: 3 }),
    Plot.dot(at, { r: 3, fill: ink }),
  ];
}

/** The titles of lines and of the marked point, and all that the words of regions must keep off. */
function wordsOver(
  { lines, plane, frame, here }: Drawing,
  cases: readonly CasePoint[],
): { readonly words: readonly PlacedWords[]; readonly taken: readonly Box[] } {
  const mark = here ? pointWords(here.words, here, frame) : null;
  const placed = mark ? [mark] : [];
  const points = [...cases, ...(here ? [here] : [])].map((point) => pointBox(point, frame));
  for (const each of lines) {
    const title = lineTitle(each, plane, { frame, taken: [...points, ...placed.map(boxOf)] });
    if (title) placed.push(title);
  }
  const drawn = lines.flatMap((each) => lineBoxes(each, plane, frame));
  return {
    words: placed.map((each) => ({ ...each, ...valuesAt(each, plane, frame) })),
    taken: [...points, ...placed.map(boxOf), ...drawn],
  };
}
