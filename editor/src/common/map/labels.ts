import { valueAt, type Plane } from '../../../../src/index.ts';
import type { Fill } from './fill.ts';
import { fillOf, type FillBy } from './fills.ts';
import { around, ground, letter, line, meets, type Box } from './boxes.ts';
import type { Frame } from './frame.ts';

/** Words inside a region, in a few lines, at a place in the units of the axes. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly fill: Fill;
}

const [columns, rows] = [76, 48];

/** The words of each region that has room for them, where there is most of it, and never over what is taken. */
export function labelsOf(plane: Plane, by: FillBy, frame: Frame, taken: readonly Box[] = []): Label[] {
  const { left, right, top, bottom } = ground(frame);
  const [wide, high] = [(right - left) / columns, (bottom - top) / rows];
  const grid = regionsOf(gridOf(plane, by, frame)).map((row, up) =>
    row.map((region, column) => {
      const here = around(left + (column + 0.5) * wide, bottom - (up + 0.5) * high, wide, high);
      return taken.some((box) => meets(box, here)) ? null : region;
    }),
  );
  const rooms = roomsOf(grid);
  const best = new Map<number, Label & { readonly score: number }>();
  grid.forEach((row, up) => {
    row.forEach((region, column) => {
      if (!region) return;
      for (const text of wrappings(region.fill.words)) {
        const lines = text.split('\n');
        const width = sidewards(Math.max(...lines.map((each) => each.length)) * letter + 8, wide);
        const height = sidewards(lines.length * line + 4, high);
        const room = roomAround(rooms, { up, column, height });
        if (room < width) continue;
        const tall = rooms[up]?.[column]?.tall ?? 0;
        const score = Math.min(room * wide, 180) + 2 * Math.min(tall * high, 70) - 10 * lines.length;
        if (score <= (best.get(region.number)?.score ?? 0)) continue;
        const at = { x: stepAt(column, columns, frame.x), y: stepAt(up, rows, frame.y) };
        best.set(region.number, {
          x: valueAt(plane.x, at.x),
          y: valueAt(plane.y, at.y),
          text,
          fill: region.fill,
          score,
        });
      }
    });
  });
  return [...best.values()];
}

/** So many squares words reach beyond the one that they stand on, to either side. */
const sidewards = (extent: number, square: number): number =>
  Math.max(0, Math.ceil((extent / square - 1) / 2));

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

/** How far the same ground reaches from a square of the grid: to the nearer side, and to the nearer of above and below. */
interface Room {
  readonly wide: number;
  readonly tall: number;
  readonly region: Region | null;
}

function roomsOf(grid: readonly (readonly (Region | null)[])[]): Room[][] {
  const reach = (cells: readonly (Region | null)[]): number[] => {
    const before = runLengths(cells);
    const after = runLengths(cells.toReversed()).toReversed();
    return cells.map((_, at) => Math.min(before[at] ?? 0, after[at] ?? 0));
  };
  const across = grid.map(reach);
  const upright = Array.from({ length: columns }, (_, column) =>
    reach(grid.map((row) => row[column] ?? null)),
  );
  return grid.map((row, up) =>
    row.map((region, column) => ({
      wide: across[up]?.[column] ?? 0,
      tall: upright[column]?.[up] ?? 0,
      region,
    })),
  );
}

/** Of each square, how many like it stand before it. */
function runLengths(cells: readonly (Region | null)[]): number[] {
  let run = -1;
  return cells.map((cell, at) => (run = cell !== null && cell === cells[at - 1] ? run + 1 : 0));
}

/** How wide the same ground is to either side, in every row that words of some height would touch; -1 where it ends before. */
function roomAround(
  rooms: readonly (readonly Room[])[],
  { up, column, height }: { readonly up: number; readonly column: number; readonly height: number },
): number {
  const region = rooms[up]?.[column]?.region;
  let room = Number.POSITIVE_INFINITY;
  for (let row = up - height; row <= up + height; row += 1) {
    const here = rooms[row]?.[column];
    if (!here || here.region !== region) return -1;
    room = Math.min(room, here.wide);
  }
  return room;
}

const mostLines = 4;

/** The words in one line and in more, as even as words allow. */
function wrappings(text: string): string[] {
  const words = text.split(' ');
  const ways = Array.from({ length: mostLines }, (_, index) => {
    const most = Math.max(Math.ceil(text.length / (index + 1)) + 2, ...words.map(({ length }) => length));
    const lines = [''];
    for (const word of words) {
      const last = lines.at(-1) ?? '';
      if (last === '') lines[lines.length - 1] = word;
      else if (last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
      else lines.push(word);
    }
    return lines.join('\n');
  });
  return [...new Set(ways)].filter((way) => way.split('\n').length <= mostLines);
}
