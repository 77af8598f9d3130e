import type { Space, Variable } from './space.ts';

/** Many sets at once, or pairs of sets: for each variable the lowest and the highest value, both included. */
export interface Box {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

export const wholeBox = ({ variables }: Space): Box => ({
  low: Float64Array.from(variables, ({ low }) => low),
  high: Float64Array.from(variables, ({ high }) => high),
});

/** The same box with one variable narrowed. */
export function narrowed({ low, high }: Box, variable: number, from: number, to: number): Box {
  const made = { low: low.slice(), high: high.slice() };
  made.low[variable] = from;
  made.high[variable] = to;
  return made;
}

/** How many variables cannot be ordinary, and then how many steps they are away at least. */
export interface Distance {
  readonly away: number;
  readonly steps: number;
}

export function distanceOf({ low, high }: Box, { variables }: Space): Distance {
  let [away, steps] = [0, 0];
  variables.forEach(({ of, ordinary }, index) => {
    if (ordinary === null) return;
    const distance = Math.max((low[index] as number) - ordinary, ordinary - (high[index] as number));
    if (distance <= 0) return;
    away += 1;
    // A choice is as far away as any other.
    steps += of === 'number' || of === 'look_back' ? distance : 1;
  });
  return { away, steps };
}

/** The value of a variable in a box that is nearest to ordinary. */
export function nearest({ low, high }: Box, index: number, { ordinary }: Variable): number {
  return Math.min(high[index] as number, Math.max(low[index] as number, ordinary ?? (low[index] as number)));
}

/** Two parts of a box, cut where answers can change, or in the middle; null when the variable has one value. */
export function halves(box: Box, index: number, { cuts }: Variable): readonly [Box, Box] | null {
  const [low, high] = [box.low[index] as number, box.high[index] as number];
  if (low === high) return null;
  const inside = cuts.filter((at) => at > low && at <= high);
  const at = inside[inside.length >> 1] ?? low + Math.ceil((high - low) / 2);
  return [narrowed(box, index, low, at - 1), narrowed(box, index, at, high)];
}
