import { valueAt, type Plane } from '../../../../src/index.ts';
import { fillOf, type Fill, type FillBy } from './fills.ts';
import { margins, type Frame } from './frame.ts';

/** Words inside a region, in a few lines, at a place in the units of the axes. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly fill: Fill;
}

const [columns, rows] = [76, 48];
/** About how wide a letter is, and how high a line, in units of the picture. */
const letter = 7.4;
const line = 17;

/** The words of each region that has room for them, in its widest place. */
export function labelsOf(plane: Plane, by: FillBy, frame: Frame): Label[] {
  const grid = regionsOf(gridOf(plane, by, frame));
  const best = new Map<number, Label & { readonly room: number }>();
  const [wide, high] = [
    (frame.width - margins.left - margins.right) / columns,
    (frame.height - margins.top - margins.bottom) / rows,
  ];
  grid.forEach((row, up) => {
    for (const { from, to, region } of runsOf(row)) {
      const { fill } = region;
      const middle = (from + to) >> 1;
      const room = { width: (to - from + 1) * wide, height: standing(grid, up, middle) * high };
      const text = fitting(fill.words, room.width, room.height);
      const score = Math.min(room.width, 400) * Math.min(room.height, 120);
      if (text === null || score <= (best.get(region.number)?.room ?? 0)) continue;
      const at = { x: stepAt(middle, columns, frame.x), y: stepAt(up, rows, frame.y) };
      best.set(region.number, {
        x: valueAt(plane.x, at.x),
        y: valueAt(plane.y, at.y),
        text,
        fill,
        room: score,
      });
    }
  });
  return [...best.values()];
}

const stepAt = (index: number, count: number, [low, high]: readonly [number, number]): number =>
  Math.min(high, Math.floor(low + ((index + 0.5) / count) * (high - low + 1)));

function gridOf(plane: Plane, by: FillBy, frame: Frame): Fill[][] {
  const fills = plane.answers.map((answer) => fillOf(answer, plane, by));
  const xs = Array.from({ length: columns }, (_, index) => stepAt(index, columns, frame.x));
  return Array.from({ length: rows }, (_, up) => {
    const y = stepAt(up, rows, frame.y);
    const inRow = plane.cells.filter((cell) => cell.y[0] <= y && cell.y[1] >= y);
    return xs.flatMap((x) => {
      const cell = inRow.find((each) => each.x[0] <= x && each.x[1] >= x);
      const fill = fills[cell?.answer ?? -1];
      return fill ? [fill] : [];
    });
  });
}

/** Ground that hangs together and is filled alike. */
interface Region {
  readonly number: number;
  readonly fill: Fill;
}

function regionsOf(grid: readonly (readonly Fill[])[]): Region[][] {
  const found: Region[][] = grid.map(() => []);
  let count = 0;
  const spread = (row: number, column: number, region: Region): void => {
    const open = [[row, column] as const];
    for (let next = open.pop(); next; next = open.pop()) {
      const [up, right] = next;
      if (grid[up]?.[right]?.key !== region.fill.key || found[up]?.[right]) continue;
      (found[up] as Region[])[right] = region;
      open.push([up + 1, right], [up - 1, right], [up, right + 1], [up, right - 1]);
    }
  };
  grid.forEach((fills, row) => {
    fills.forEach((fill, column) => {
      if (!found[row]?.[column]) spread(row, column, { number: (count += 1), fill });
    });
  });
  return found;
}

function runsOf(row: readonly Region[]): { from: number; to: number; region: Region }[] {
  const runs: { from: number; to: number; region: Region }[] = [];
  row.forEach((region, at) => {
    const last = runs.at(-1);
    if (last?.region === region) last.to = at;
    else runs.push({ from: at, to: at, region });
  });
  return runs;
}

/** How many rows of the region lie above and below, taken evenly on both sides. */
function standing(grid: readonly (readonly Region[])[], row: number, column: number): number {
  const region = grid[row]?.[column];
  let far = 0;
  while (grid[row + far + 1]?.[column] === region && grid[row - far - 1]?.[column] === region) far += 1;
  return 2 * far + 1;
}

const mostLines = 3;

/** The words in as few lines as the room asks for, three at most; null where they do not fit. */
function fitting(words: string, width: number, height: number): string | null {
  const most = Math.floor(width / letter);
  const lines = [''];
  for (const word of words.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (word.length > most) return null;
    if (last === '') lines[lines.length - 1] = word;
    else if (last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.length <= mostLines && lines.length * line <= height ? lines.join('\n') : null;
}
