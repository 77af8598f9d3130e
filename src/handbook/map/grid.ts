import type { Cell, Plane } from '../../review/cells/plane.ts';

/** What of a plane is drawn, in steps, both ends included. */
export interface Window {
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/** A plane cut along every edge of its cells: between two cuts nothing changes, so that nothing is lost by drawing it. */
export interface Grid {
  /** Rising; the first of each column or row, and one beyond the last. */
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  /** The answer of each square, row by row from the lowest. */
  readonly answers: readonly (readonly number[])[];
}

export function gridOf({ cells }: Plane, window: Window): Grid {
  const columns = cutsOf(cells, 'x', window.x);
  const rows = cutsOf(cells, 'y', window.y);
  const answers = rows.slice(0, -1).map((row) => {
    const inRow = cells.filter(({ y: [low, high] }) => low <= row && row <= high);
    return columns
      .slice(0, -1)
      .map((column) => inRow.find(({ x: [low, high] }) => low <= column && column <= high)?.answer ?? -1);
  });
  return { columns, rows, answers };
}

function cutsOf(cells: readonly Cell[], axis: 'x' | 'y', [from, to]: readonly [number, number]): number[] {
  const all = cells
    .flatMap((cell) => [cell[axis][0], cell[axis][1] + 1])
    .filter((at) => at > from && at <= to);
  return [...new Set([from, ...all, to + 1])].toSorted((left, right) => left - right);
}

/** What is usual to see: the plausible values, cut to where the protocol is for the patient and a tenth more. */
export const windowOf = (plane: Plane): Window => ({ x: rangeOf(plane, 'x'), y: rangeOf(plane, 'y') });

function rangeOf(plane: Plane, axis: 'x' | 'y'): readonly [number, number] {
  const [low, high] = plane[axis].plausible;
  const used = plane.cells.filter(
    (cell) => plane.answers[cell.answer]?.level && cell[axis][1] >= low && cell[axis][0] <= high,
  );
  if (used.length === 0) return [low, high];
  const from = Math.max(low, Math.min(...used.map((cell) => cell[axis][0])));
  const to = Math.min(high, Math.max(...used.map((cell) => cell[axis][1])));
  const more = Math.ceil((to - from) / 10);
  return [Math.max(low, from - more), Math.min(high, to + more)];
}
