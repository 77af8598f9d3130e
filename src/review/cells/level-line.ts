import type { Compiled } from '../../outcome/compile.ts';
import type { Exact } from '../../outcome/exact.ts';
import { axisNamed } from './axes-of.ts';
import type { Ground } from './ground.ts';
import { valueAt, type Axis } from './plane.ts';
import { Tracer } from './tracer.ts';

type Point = readonly [number, number];

export interface LevelAsked {
  readonly compiled: Compiled;
  readonly measure: string;
  /** The number that it has on the line, in its own unit. */
  readonly at: Exact;
  /** Columns of the first axis; and of the second. */
  readonly grounds: readonly [Ground, Ground];
  readonly axes: readonly [string, string];
}

/** So many columns are asked at most: a line is for looking at. */
const mostColumns = 300;

/** Where a measure has one number: pieces of points, in the units of the axes. */
export function levelLine({ compiled, measure, at, grounds, axes }: LevelAsked): Point[][] {
  const [x, y] = axes.map((name) => axisNamed(name, compiled.protocol)) as [Axis, Axis];
  const gap = gapOf(compiled, measure, at);
  if (!gap) return [];
  const [low, high] = x.possible;
  const every = Math.max(1, Math.ceil((high - low) / mostColumns));
  let moves = false;
  const columns: Point[][] = [];
  for (let column = low; column <= high; column += every) {
    const found = rootsAlong(gap, grounds[0], column, y.possible);
    moves ||= found.moves;
    columns.push(found.roots.map((root) => [valueAt(x, column), valueAt(y, root)]));
  }
  if (moves) return joined(columns);
  // It moves with the first axis alone: the line stands upright.
  const upright = y.plausible.flatMap((row) => rootsAlong(gap, grounds[1], row, x.possible).roots);
  return [...new Set(upright)].map((root) =>
    y.possible.map((end): Point => [valueAt(x, root), valueAt(y, end)]),
  );
}

interface Gap {
  readonly tracer: Tracer;
  /** How far the measure is above the number, times something above zero; its change; null where it has no one value. */
  readonly ask: () => readonly [number, number] | null;
}

function gapOf({ logic }: Compiled, measure: string, { n, d }: Exact): Gap | null {
  const found = logic.measures.find((each) => each.measure === measure);
  if (!found) return null;
  const { low, high, bottomLow, bottomHigh, sure } = found;
  const tracer = new Tracer(logic, [low, high, bottomLow, bottomHigh, sure]);
  const [ofLow, ofHigh, ofBottom, ofBottomHigh, isSure] = [low, high, bottomLow, bottomHigh, sure].map(
    (each) => tracer.asker(each),
  ) as [() => Point, () => Point, () => Point, () => Point, () => Point];
  const [top, bottom] = [Number(found.bottomScale) * Number(d), Number(found.topScale) * Number(n)];
  return {
    tracer,
    ask: () => {
      const [value, change] = ofLow();
      const [divisor, change2] = ofBottom();
      if (isSure()[0] === 0 || ofHigh()[0] !== value || ofBottomHigh()[0] !== divisor) return null;
      return [value * top - divisor * bottom, change * top - change2 * bottom];
    },
  };
}

/** The places of one column at which the gap is zero, in steps, most often between two. */
function rootsAlong(
  { tracer, ask }: Gap,
  ground: Ground,
  column: number,
  [bottom, top]: Point,
): { readonly roots: number[]; readonly moves: boolean } {
  const roots: number[] = [];
  let moves = false;
  for (const stretch of ground.stretches(column, bottom, top)) {
    const { narrow, refused } = ground.inputs(column, stretch);
    if (refused.length > 0) continue;
    tracer.load(narrow.start, narrow.slopes);
    let by = 0;
    for (let from = stretch.from; from <= stretch.to; from += by) {
      const reach = tracer.run(tracer.steps, by);
      by = Math.min(reach, stretch.to - from + 1);
      const [gap, change] = ask() ?? [0, 0];
      moves ||= change !== 0;
      const root = -gap / change;
      if (change !== 0 && root >= 0 && (from + by > stretch.to ? root <= by - 1 : root < by))
        roots.push(from + root);
    }
  }
  return { roots, moves };
}

/** Joins the points of neighbouring columns as long as each column has as many. */
function joined(columns: readonly (readonly Point[])[]): Point[][] {
  const done: Point[][] = [];
  let open: Point[][] = [];
  for (const points of columns) {
    if (points.length !== open.length) {
      done.push(...open);
      open = points.map(() => []);
    }
    points.forEach((point, index) => open[index]?.push(point));
  }
  return [...done, ...open].filter((piece) => piece.length > 1);
}
