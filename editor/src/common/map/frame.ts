import { valueAt, type Axis, type Plane } from '../../../../src/index.ts';

/** A point of the map, in whole steps of the axes. */
export interface MapPoint {
  readonly x: number;
  readonly y: number;
}

/** The part of the plane that is shown, in steps, both ends included; and where it stands in the picture, in its units. */
export interface Frame {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly width: number;
  readonly height: number;
}

export const margins = { left: 64, right: 14, top: 14, bottom: 48 } as const;

/** How wide the picture is where nothing else is known, in its units, which are pixels as long as it is not printed. */
export const usualWidth = 760;

/** What is usual to see of where the protocol is for the patient, with a point that must not be left out; or everything that is possible. */
export function frameOf(
  plane: Plane,
  isWhole: boolean,
  { width = usualWidth, here = null }: { readonly width?: number; readonly here?: MapPoint | null } = {},
): Frame {
  const range = (which: 'x' | 'y'): readonly [number, number] => {
    if (isWhole) return plane[which].possible;
    const [low, high] = forPatient(plane, which);
    const at = here?.[which] ?? low;
    return [Math.min(low, at), Math.max(high, at)];
  };
  const height = Math.min(520, Math.round(width * 0.45) + 178);
  return { x: range('x'), y: range('y'), width, height };
}

/** The plausible range of an axis, cut to where the protocol is for the patient and a tenth more; all of it where it is for none. */
function forPatient({ cells, answers, ...axes }: Plane, which: 'x' | 'y'): readonly [number, number] {
  const [low, high] = axes[which].plausible;
  let [from, to] = [high, low];
  for (const cell of cells) {
    const [first, last] = cell[which];
    if (answers[cell.answer]?.level === null || last < low || first > high) continue;
    [from, to] = [Math.min(from, Math.max(first, low)), Math.max(to, Math.min(last, high))];
  }
  if (from >= to) return [low, high];
  const more = Math.ceil((to - from) / 10);
  return [Math.max(low, from - more), Math.min(high, to + more)];
}

/** The ends of an axis in its unit, half a step beyond the first and the last, so that each step has its whole width. */
export function domainOf(axis: Axis, [low, high]: readonly [number, number]): [number, number] {
  return [valueAt(axis, low - 0.5), valueAt(axis, high + 0.5)];
}

/** Where a point stands in the picture. */
export function placeOf({ x, y }: MapPoint, { width, height, ...frame }: Frame): { x: number; y: number } {
  const [across, up] = [share(x, frame.x), share(y, frame.y)];
  return {
    x: margins.left + across * (width - margins.left - margins.right),
    y: height - margins.bottom - up * (height - margins.top - margins.bottom),
  };
}

/** The point at a place of the picture; null beside the map. */
export function pointAt(left: number, top: number, { width, height, ...frame }: Frame): MapPoint | null {
  const across = (left - margins.left) / (width - margins.left - margins.right);
  const up = (height - margins.bottom - top) / (height - margins.top - margins.bottom);
  if (across < 0 || across > 1 || up < 0 || up > 1) return null;
  const step = (at: number, [low, high]: readonly [number, number]): number =>
    Math.min(high, low + Math.floor(at * (high - low + 1)));
  return { x: step(across, frame.x), y: step(up, frame.y) };
}

const share = (step: number, [low, high]: readonly [number, number]): number =>
  (step - low + 0.5) / (high - low + 1);

/**
 * Where a key takes a point: an arrow one step, with shift ten; Home and End to the ends of the row. Null for any other key.
 *
 * `movedBy('ArrowUp', true, { x: 104, y: 48 }, frame)` is `{ x: 104, y: 58 }`.
 */
export function movedBy(key: string, shift: boolean, { x, y }: MapPoint, frame: Frame): MapPoint | null {
  const by = shift ? 10 : 1;
  const to: Readonly<Record<string, MapPoint>> = {
    ArrowLeft: { x: x - by, y },
    ArrowRight: { x: x + by, y },
    ArrowUp: { x, y: y + by },
    ArrowDown: { x, y: y - by },
    Home: { x: frame.x[0], y },
    End: { x: frame.x[1], y },
  };
  const found = Object.hasOwn(to, key) ? to[key] : undefined;
  if (!found) return null;
  const inside = (step: number, [low, high]: readonly [number, number]): number =>
    Math.min(high, Math.max(low, step));
  return { x: inside(found.x, frame.x), y: inside(found.y, frame.y) };
}

/** Where the point stands before anybody moved it: at ordinary values where there are any. */
export function firstPoint({ x, y }: Plane, frame: Frame): MapPoint {
  const start = ({ ordinary }: Axis, [low, high]: readonly [number, number]): number =>
    Math.min(high, Math.max(low, ordinary ?? Math.round((low + high) / 2)));
  return { x: start(x, frame.x), y: start(y, frame.y) };
}
