import type { Cell, Plane } from './plane.ts';

/** The cell of a point in whole steps; null outside the plane. */
export function cellAt({ cells }: Pick<Plane, 'cells'>, x: number, y: number): Cell | null {
  const isIn = ([low, high]: readonly [number, number], step: number): boolean => step >= low && step <= high;
  return cells.find((cell) => isIn(cell.x, x) && isIn(cell.y, y)) ?? null;
}
