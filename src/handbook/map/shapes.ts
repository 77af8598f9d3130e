import type { Grid } from './grid.ts';

/** Where a step of an axis stands in the picture. */
export interface Scale {
  readonly x: (step: number) => number;
  readonly y: (step: number) => number;
}

const short = (value: number): string => String(Math.round(value * 10) / 10);

/** The outline of every square of some answers, as the path of one shape. */
export function areaOf(
  { columns, rows, answers }: Grid,
  isIn: (answer: number) => boolean,
  { x, y }: Scale,
): string {
  const parts: string[] = [];
  answers.forEach((row, up) => {
    for (let from = 0; from < row.length; from += 1) {
      if (!isIn(row[from] as number)) continue;
      let to = from;
      while (to + 1 < row.length && isIn(row[to + 1] as number)) to += 1;
      const [left, right] = [x(columns[from] as number), x(columns[to + 1] as number)];
      const [bottom, top] = [y(rows[up] as number), y(rows[up + 1] as number)];
      parts.push(`M${short(left)} ${short(bottom)}H${short(right)}V${short(top)}H${short(left)}Z`);
      from = to;
    }
  });
  return parts.join('');
}

/** The lines between squares that are filled otherwise, as the path of one shape. `keys` tells how each answer is filled. */
export function edgesOf({ columns, rows, answers }: Grid, keys: readonly string[], { x, y }: Scale): string {
  const key = (up: number, column: number): string => keys[answers[up]?.[column] ?? -1] ?? '';
  const parts: string[] = [];
  answers.forEach((row, up) => {
    row.forEach((_, column) => {
      const [left, right] = [x(columns[column] as number), x(columns[column + 1] as number)];
      const [bottom, top] = [y(rows[up] as number), y(rows[up + 1] as number)];
      if (column > 0 && key(up, column) !== key(up, column - 1))
        parts.push(`M${short(left)} ${short(bottom)}V${short(top)}`);
      if (up > 0 && key(up, column) !== key(up - 1, column))
        parts.push(`M${short(left)} ${short(bottom)}H${short(right)}`);
    });
  });
  return parts.join('');
}

const [across, upward] = [60, 40];

/** The middle of the largest square in which only these answers are, in the units of the picture; null when there is hardly any room. */
export function roomiestOf(
  { columns, rows, answers }: Grid,
  isIn: (answer: number) => boolean,
  { x, y }: Scale,
): { readonly x: number; readonly y: number } | null {
  const place = (cuts: readonly number[], share: number): number => {
    const [low, high] = [cuts[0] as number, cuts.at(-1) as number];
    return low + share * (high - low);
  };
  const indexIn = (cuts: readonly number[], at: number): number => cuts.findLastIndex((cut) => cut <= at);
  const sides: number[][] = [];
  let best = { side: 1, up: 0, column: 0 };
  for (let up = 0; up < upward; up += 1) {
    const row = answers[indexIn(rows, place(rows, (up + 0.5) / upward))] ?? [];
    const own: number[] = [];
    for (let column = 0; column < across; column += 1) {
      const inside = isIn(row[indexIn(columns, place(columns, (column + 0.5) / across))] ?? -1);
      const before = [own[column - 1], sides[up - 1]?.[column], sides[up - 1]?.[column - 1]];
      own[column] = inside ? 1 + Math.min(...before.map((each) => each ?? 0)) : 0;
      if ((own[column] as number) > best.side) best = { side: own[column] as number, up, column };
    }
    sides.push(own);
  }
  if (best.side < 2) return null;
  const middle = (at: number): number => at + 1 - best.side / 2;
  return { x: x(place(columns, middle(best.column) / across)), y: y(place(rows, middle(best.up) / upward)) };
}
