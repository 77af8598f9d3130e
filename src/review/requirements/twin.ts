import type { Assumed } from './assume.ts';
import type { Leaf, Node, Program } from './program.ts';

/**
 * What is known of a number in two sets at once, of all pairs of sets that are still looked at: its lowest and its highest in the first and in
 * the second, whether it is surely no lower in the second (`rises`), and whether surely no higher (`falls`).
 */
export interface Known {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly secondLow: Float64Array;
  readonly secondHigh: Float64Array;
  readonly rises: Uint8Array;
  readonly falls: Uint8Array;
}

/** What is known of one leaf: five numbers and truths, written at its place. */
export type Enter = (leaf: Leaf, place: number, known: Known) => void;

const room = (size: number): Known => ({
  low: new Float64Array(size),
  high: new Float64Array(size),
  secondLow: new Float64Array(size),
  secondHigh: new Float64Array(size),
  rises: new Uint8Array(size),
  falls: new Uint8Array(size),
});

/** Runs a program on a pair of sets, of which only ranges are known. What it says holds for every such pair. */
export class Twin {
  readonly known: Known;
  readonly #program: Program;
  /** The nodes that the wanted ones depend on, in their order. */
  readonly #needed: readonly number[];

  constructor(program: Program, wanted: readonly number[]) {
    this.#program = program;
    this.known = room(program.nodes.length);
    this.#needed = neededFor(program, wanted);
    for (const place of this.#needed) {
      const { constant } = program.nodes[place] as Node;
      if (constant === null) continue;
      put(this.known, place, [constant, constant, constant, constant]);
      order(this.known, place, 1, 1);
    }
  }

  /**
   * `first` and `second` are what must hold in either set for the pair to matter. It is taken for granted where it is open; where it surely
   * does not hold, no pair matters. Gives which of this it was.
   */
  run(enter: Enter, first: Assumed, second: Assumed): 'known' | 'assumed' | 'none' {
    const { known } = this;
    let found: 'known' | 'assumed' = 'known';
    for (const place of this.#needed) {
      const node = this.#program.nodes[place] as Node;
      if (node.constant !== null) continue;
      if (node.leaf) enter(node.leaf, place, known);
      else work(node, place, known);
      const [one, two] = [first.get(place), second.get(place)];
      if (one !== undefined || two !== undefined) {
        const taken = suppose(known, place, one, two);
        if (taken === 'none') return taken;
        if (taken === 'assumed') found = taken;
      }
      if ((known.secondLow[place] as number) >= (known.high[place] as number)) known.rises[place] = 1;
      if ((known.secondHigh[place] as number) <= (known.low[place] as number)) known.falls[place] = 1;
    }
    return found;
  }
}

function neededFor({ nodes }: Program, wanted: readonly number[]): readonly number[] {
  const needed = new Uint8Array(nodes.length);
  for (const place of wanted) needed[place] = 1;
  for (let place = nodes.length - 1; place >= 0; place -= 1)
    if (needed[place]) for (const part of (nodes[place] as Node).parts) needed[part] = 1;
  return [...needed.keys()].filter((place) => needed[place] === 1);
}

/** Takes a truth for granted in either set. */
function suppose(
  { low, high, secondLow, secondHigh }: Known,
  place: number,
  one: number | undefined,
  two: number | undefined,
): 'known' | 'assumed' | 'none' {
  let taken: 'known' | 'assumed' = 'known';
  const sides = [
    [low, high, one],
    [secondLow, secondHigh, two],
  ] as const;
  for (const [from, to, value] of sides) {
    if (value === undefined || (from[place] === value && to[place] === value)) continue;
    if ((from[place] as number) > value || (to[place] as number) < value) return 'none';
    from[place] = to[place] = value;
    taken = 'assumed';
  }
  return taken;
}

/** Lowest and highest in the first set, then in the second. */
export function put(
  known: Known,
  place: number,
  [a, b, c, d]: readonly [number, number, number, number],
): void {
  known.low[place] = a;
  known.high[place] = b;
  known.secondLow[place] = c;
  known.secondHigh[place] = d;
}

export function order(known: Known, place: number, rises: boolean | number, falls: boolean | number): void {
  known.rises[place] = Number(rises);
  known.falls[place] = Number(falls);
}

function work({ kind, parts }: Node, place: number, known: Known): void {
  switch (kind) {
    case 'add':
      return added(parts, place, known);
    case 'less':
      return subtracted(parts as [number, number], place, known);
    case 'times':
      return multiplied(parts as [number, number], place, known);
    case 'min':
    case 'max':
      return kind === 'min' ? lowest(parts, place, known) : highest(parts, place, known);
    case 'below':
    case 'at_most':
      return compared(parts as [number, number], place, known, kind === 'below');
    case 'not':
      return opposite(parts[0] as number, place, known);
    case 'if':
      return chosen(parts as [number, number, number], place, known);
    case 'leaf':
  }
}

const at = (list: Float64Array | Uint8Array, place: number): number => list[place] as number;

function added(parts: readonly number[], place: number, known: Known): void {
  let [a, b, c, d, rises, falls] = [0, 0, 0, 0, 1, 1];
  for (const part of parts) {
    a += at(known.low, part);
    b += at(known.high, part);
    c += at(known.secondLow, part);
    d += at(known.secondHigh, part);
    rises &= at(known.rises, part);
    falls &= at(known.falls, part);
  }
  put(known, place, [a, b, c, d]);
  order(known, place, rises, falls);
}

function subtracted([x, y]: readonly [number, number], place: number, known: Known): void {
  const { low, high, secondLow, secondHigh, rises, falls } = known;
  put(known, place, [
    at(low, x) - at(high, y),
    at(high, x) - at(low, y),
    at(secondLow, x) - at(secondHigh, y),
    at(secondHigh, x) - at(secondLow, y),
  ]);
  order(known, place, at(rises, x) & at(falls, y), at(falls, x) & at(rises, y));
}

function multiplied([x, y]: readonly [number, number], place: number, known: Known): void {
  const { low, high, secondLow, secondHigh, rises, falls } = known;
  const corners = (from: Float64Array, to: Float64Array): number[] => [
    at(from, x) * at(from, y),
    at(from, x) * at(to, y),
    at(to, x) * at(from, y),
    at(to, x) * at(to, y),
  ];
  const [first, second] = [corners(low, high), corners(secondLow, secondHigh)];
  put(known, place, [Math.min(...first), Math.max(...first), Math.min(...second), Math.max(...second)]);
  const least = (part: number): number => Math.min(at(low, part), at(secondLow, part));
  const most = (part: number): number => Math.max(at(high, part), at(secondHigh, part));
  const same = (part: number): boolean => (at(rises, part) & at(falls, part)) === 1;
  if (least(x) >= 0 && least(y) >= 0)
    return order(known, place, at(rises, x) & at(rises, y), at(falls, x) & at(falls, y));
  const [still, moved] = same(x) ? [x, y] : [y, x];
  if (same(still) && least(still) >= 0) return order(known, place, at(rises, moved), at(falls, moved));
  if (same(still) && most(still) <= 0) return order(known, place, at(falls, moved), at(rises, moved));
  order(known, place, 0, 0);
}

/** It is no lower in the second set when each part is no lower, or at least as high as some part there surely is. */
function highest(parts: readonly number[], place: number, known: Known): void {
  const { low, high, secondLow, secondHigh } = known;
  let [a, b, c, d] = [-Infinity, -Infinity, -Infinity, -Infinity];
  for (const part of parts) {
    a = Math.max(a, at(low, part));
    b = Math.max(b, at(high, part));
    c = Math.max(c, at(secondLow, part));
    d = Math.max(d, at(secondHigh, part));
  }
  put(known, place, [a, b, c, d]);
  let [rises, falls] = [1, 1];
  for (const part of parts) {
    if (!at(known.rises, part) && at(high, part) > c) rises = 0;
    if (!at(known.falls, part) && at(secondHigh, part) > a) falls = 0;
  }
  order(known, place, rises, falls);
}

function lowest(parts: readonly number[], place: number, known: Known): void {
  const { low, high, secondLow, secondHigh } = known;
  let [a, b, c, d] = [Infinity, Infinity, Infinity, Infinity];
  for (const part of parts) {
    a = Math.min(a, at(low, part));
    b = Math.min(b, at(high, part));
    c = Math.min(c, at(secondLow, part));
    d = Math.min(d, at(secondHigh, part));
  }
  put(known, place, [a, b, c, d]);
  let [rises, falls] = [1, 1];
  for (const part of parts) {
    if (!at(known.rises, part) && at(secondLow, part) < b) rises = 0;
    if (!at(known.falls, part) && at(low, part) < d) falls = 0;
  }
  order(known, place, rises, falls);
}

function compared([x, y]: readonly [number, number], place: number, known: Known, strict: boolean): void {
  const { low, high, secondLow, secondHigh, rises, falls } = known;
  const holds = (left: number, right: number): number => Number(strict ? left < right : left <= right);
  put(known, place, [
    holds(at(high, x), at(low, y)),
    holds(at(low, x), at(high, y)),
    holds(at(secondHigh, x), at(secondLow, y)),
    holds(at(secondLow, x), at(secondHigh, y)),
  ]);
  order(known, place, at(rises, y) & at(falls, x), at(falls, y) & at(rises, x));
}

function opposite(part: number, place: number, known: Known): void {
  const { low, high, secondLow, secondHigh, rises, falls } = known;
  put(known, place, [
    1 - at(high, part),
    1 - at(low, part),
    1 - at(secondHigh, part),
    1 - at(secondLow, part),
  ]);
  order(known, place, at(falls, part), at(rises, part));
}

function chosen([truth, x, y]: readonly [number, number, number], place: number, known: Known): void {
  const { low, high, secondLow, secondHigh, rises, falls } = known;
  const first = ends(truth, [x, y], low, high);
  const second = ends(truth, [x, y], secondLow, secondHigh);
  put(known, place, [...first, ...second]);
  const stays = (list: Uint8Array): boolean =>
    (at(high, truth) === 0 || at(secondHigh, truth) === 0 || at(list, x) === 1) &&
    (at(low, truth) === 1 || at(secondLow, truth) === 1 || at(list, y) === 1);
  // From the one branch in the first set to the other in the second.
  const mayTurnOn = at(falls, truth) === 0 && at(low, truth) === 0 && at(secondHigh, truth) === 1;
  const mayTurnOff = at(rises, truth) === 0 && at(high, truth) === 1 && at(secondLow, truth) === 0;
  order(
    known,
    place,
    stays(rises) &&
      (!mayTurnOn || at(secondLow, x) >= at(high, y)) &&
      (!mayTurnOff || at(secondLow, y) >= at(high, x)),
    stays(falls) &&
      (!mayTurnOn || at(secondHigh, x) <= at(low, y)) &&
      (!mayTurnOff || at(secondHigh, y) <= at(low, x)),
  );
}

function ends(
  truth: number,
  [x, y]: readonly [number, number],
  low: Float64Array,
  high: Float64Array,
): [number, number] {
  if (at(low, truth) === 1) return [at(low, x), at(high, x)];
  if (at(high, truth) === 0) return [at(low, y), at(high, y)];
  return [Math.min(at(low, x), at(low, y)), Math.max(at(high, x), at(high, y))];
}
