import { stands, type Atom, type Stand } from './atoms.ts';
import type { Space } from './space.ts';
import type { Node } from './node.ts';

/** Stretches of a line, both ends included, one after the other: `[low, high, low, high, …]`. */
export type Stretches = readonly number[];

/** Something that the points of a node have to keep to, over several dimensions. */
export interface Constraint {
  /** Tells it from every other constraint over the same dimensions. */
  readonly key: string;
  readonly reads: readonly number[];
  /** Where it is kept to along one dimension, while the others that it reads are at `point`. */
  readonly along: (place: number, point: Float64Array) => Stretches;
}

/** What is known of the lines of comparisons and orders, so that none is worked out twice. */
export class Constraints {
  readonly #space: Space;
  readonly #lines = new Map<string, readonly Stretches[]>();
  readonly #orders: readonly Constraint[];
  readonly #lows: Float64Array;
  readonly #highs: Float64Array;

  constructor(space: Space) {
    this.#space = space;
    this.#lows = Float64Array.from(space.dimensions, ({ low }) => low);
    this.#highs = Float64Array.from(space.dimensions, ({ high }) => high);
    this.#orders = space.orders.map(({ lower, higher, by }, index) => ({
      key: `order ${index}`,
      reads: [lower, higher],
      along: (place, point) =>
        place === lower
          ? [this.#lows[lower] as number, (point[higher] as number) - by]
          : [(point[lower] as number) + by, this.#highs[higher] as number],
    }));
  }

  /** All that the points of a node keep to beside its box. */
  of(node: Node, atoms: readonly Atom[]): readonly Constraint[] {
    const settled = atoms.flatMap((atom): Constraint[] => {
      const stand = node.stands[atom.index] as Stand;
      if (stand === stands.open) return [];
      return [
        {
          key: `${atom.index} ${stand}`,
          reads: atom.reads,
          along: (place, point) => this.#line(atom, place, point)[stand] ?? [],
        },
      ];
    });
    return [...this.#orders, ...settled];
  }

  /** The whole line through a point along one dimension, by how the comparison stands there. */
  #line(atom: Atom, place: number, point: Float64Array): readonly Stretches[] {
    const key = `${atom.index} ${place} ${atom.reads.map((each) => (each === place ? '' : point[each])).join(' ')}`;
    const known = this.#lines.get(key);
    if (known) return known;
    const [lows, highs] = [this.#lows.slice(), this.#highs.slice()];
    for (const each of atom.reads) if (each !== place) lows[each] = highs[each] = point[each] as number;
    const { low, high } = this.#space.dimensions[place] as { low: number; high: number };
    const found: number[][] = [[], [], [], []];
    const walk = (from: number, to: number): void => {
      [lows[place], highs[place]] = [from, to];
      const stand = atom.stand(lows, highs);
      // A single point at which nothing is settled has no value there.
      if (stand !== stands.open || from === to)
        return push(found[stand || stands.lacks] as number[], from, to);
      const middle = from + Math.floor((to - from) / 2);
      walk(from, middle);
      walk(middle + 1, to);
    };
    walk(low, high);
    this.#lines.set(key, found);
    return found;
  }
}

function push(stretches: number[], from: number, to: number): void {
  if (stretches.length > 0 && stretches.at(-1) === from - 1) stretches[stretches.length - 1] = to;
  else stretches.push(from, to);
}

/** The points that two lists of stretches share. */
export function shared(first: Stretches, second: Stretches): Stretches {
  const both: number[] = [];
  for (let left = 0, right = 0; left < first.length && right < second.length;) {
    const [low, high] = [
      Math.max(first[left] as number, second[right] as number),
      Math.min(first[left + 1] as number, second[right + 1] as number),
    ];
    if (low <= high) both.push(low, high);
    if ((first[left + 1] as number) < (second[right + 1] as number)) left += 2;
    else right += 2;
  }
  return both;
}
