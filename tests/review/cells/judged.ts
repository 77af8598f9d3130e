import { readSet, type Compiled } from '../../../src/index.ts';
import { answersOf } from '../../../src/outcome/answers.ts';
import type { Plane, PlaneAnswer } from '../../../src/review/cells/plane.ts';
import { seriesToBounds } from '../../../src/series/series-to-bounds.ts';
import type { Series } from '../../../src/series/series.ts';

export function seriesOf(compiled: Compiled, set: object): Series {
  const { series, problems } = readSet('set.json', JSON.stringify(set), compiled);
  if (!series) throw new Error(problems.map(({ says }) => says).join('\n'));
  return series;
}

/** The series with a number on each axis of its one set, in steps. */
function withPoint(held: Series, { x, y }: Plane, point: readonly [number, number]): Series {
  const { at, atText } = held;
  const set = held.sets[0] ?? { at, atText, observed: new Map() };
  const observed = new Map(set.observed);
  [x, y].forEach(({ name }, index) => {
    const value = point[index] as number;
    observed.set(name, { kind: 'number', low: value, high: value, value, given: { text: '', moved: false } });
  });
  return { ...held, sets: [{ ...set, observed }] };
}

/** What the evaluator says of one point, in the form of a cell's answer. */
export function evaluatorAt(
  compiled: Compiled,
  held: Series,
  plane: Plane,
  point: readonly [number, number],
): PlaneAnswer {
  const bounds = seriesToBounds(compiled.protocol, withPoint(held, plane, point));
  const { applies, level, rules } = answersOf(compiled, bounds);
  const refused = [plane.x.name, plane.y.name].filter(
    (name) => bounds.facts.present.get(name)?.state === 'refused',
  );
  return { refused, applies, level, states: applies === 'no' ? [] : rules.map(({ state }) => state) };
}

/** The corners of every cell, and the points one step outside them, inside the plane; each once. */
export function edgePoints({ cells, x, y }: Plane): (readonly [number, number])[] {
  const found = new Map<string, readonly [number, number]>();
  for (const cell of cells) {
    for (const [cx, dx] of [
      [cell.x[0], -1],
      [cell.x[1], 1],
    ] as const)
      for (const [cy, dy] of [
        [cell.y[0], -1],
        [cell.y[1], 1],
      ] as const)
        for (const at of [
          [cx, cy],
          [cx + dx, cy],
          [cx, cy + dy],
        ] as const)
          found.set(at.join(), at);
  }
  const isIn = (step: number, [low, high]: readonly [number, number]): boolean => step >= low && step <= high;
  return [...found.values()].filter((at) => isIn(at[0], x.possible) && isIn(at[1], y.possible));
}

/** Looks points up by their column: for tests that ask a thousand cells ten thousand times. */
export function finder({
  cells,
  answers,
  x,
}: Plane): (point: readonly [number, number]) => PlaneAnswer | undefined {
  const [left, right] = x.possible;
  const columns = Array.from({ length: Math.min(right - left, 2000) + 1 }, (_, index) =>
    cells.filter((cell) => cell.x[0] <= left + index && cell.x[1] >= left + index),
  );
  const all = (at: number): Plane['cells'] => columns[at - left] ?? cells;
  return ([at, up]) => {
    const found = all(at).find((c) => c.x[0] <= at && c.x[1] >= at && c.y[0] <= up && c.y[1] >= up);
    return found && answers[found.answer];
  };
}
