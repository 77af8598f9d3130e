import { stands, type Atom, type Stand } from './atoms.ts';
import type { Asking } from './asking.ts';
import { Constraints } from './constraints.ts';
import { Points } from './points.ts';
import { narrowed, settledAs, type Node } from './node.ts';
import type { Section } from './space.ts';

/** Sets that all come out in the same other way. No two regions of one question share a set. */
export interface Region<Change> {
  readonly node: Node;
  /** One of them, as near to ordinary values as the search met it first. */
  readonly witness: Float64Array;
  readonly change: Change;
}

export interface Parted<Change> {
  readonly regions: readonly Region<Change>[];
  /** Nodes that could not be looked into: the search grew too large. */
  readonly unsettled: readonly Node[];
}

/** What is found of one node: nothing changes; it has to be cut; or all of it comes out in one other way. */
export type Verdict<Change> =
  | { readonly kind: 'same' }
  | { readonly kind: 'cut'; readonly by: Atom }
  | { readonly kind: 'other'; readonly change: Change };

/** Answers for all sets of a node at once. `point`: one set of it, once nothing is left to cut. */
export type Question<Change> = (node: Node, find: () => Float64Array | null) => Verdict<Change>;

/**
 * Parts all complete sets by what happens to them. A node about which something is open is cut by a comparison that can settle it; one
 * that holds no set at all is left. What is said of a node holds for each of its sets, so that the regions are exact.
 */
export class Partitioner {
  readonly #asking: Asking;
  readonly #constraints: Constraints;
  readonly #points: Points;

  constructor(asking: Asking) {
    this.#asking = asking;
    this.#constraints = new Constraints(asking.space);
    this.#points = new Points(asking.space);
  }

  /** `within`: where to look; nothing is asked outside of it. */
  part<Change>(question: Question<Change>, within: readonly Section[] | null = null): Parted<Change> {
    const regions: Region<Change>[] = [];
    const unsettled: Node[] = [];
    const { space, atoms, most } = this.#asking;
    const open: { node: Node; witness: Float64Array | null }[] = (within ?? space.sections).map(
      (section) => ({
        node: {
          ...section,
          stands: new Uint8Array(atoms.all.length),
          seen: new Uint8Array(atoms.all.length),
        },
        witness: null,
      }),
    );
    let looked = 0;
    for (let next = open.pop(); next; next = open.pop()) {
      const { node } = next;
      if ((looked += 1) > most) {
        unsettled.push(node);
        continue;
      }
      const verdict = question(node, () => known(next.witness ?? this.find(node)));
      if (verdict.kind === 'same') continue;
      const witness = next.witness ?? this.find(node);
      if (witness === 'too_large') unsettled.push(node);
      if (typeof witness === 'string') continue;
      if (verdict.kind === 'other') regions.push({ node, witness, change: verdict.change });
      else
        for (const part of this.#cut(node, verdict.by))
          open.push({ node: part, witness: this.#in(part, witness) });
    }
    return { regions, unsettled };
  }

  /** A set of a node; that there is none; or that it is too much to find out. */
  find(node: Node): Float64Array | 'none' | 'too_large' {
    return this.#points.find(node, this.#constraints.of(node, this.#asking.atoms.all));
  }

  /** How many sets a node has, over some dimensions; null when that is too much to work out. */
  count(node: Node, over: ReadonlySet<number>): bigint | null {
    return this.#points.count(node, this.#constraints.of(node, this.#asking.atoms.all), over);
  }

  /** The parts of a node in which a comparison is settled, or at least nearer to it. */
  #cut(node: Node, by: Atom): Node[] {
    if (by.askew) {
      const ways: Stand[] = by.mayLack
        ? [stands.holds, stands.fails, stands.lacks]
        : [stands.holds, stands.fails];
      return ways.map((stand) => settledAs(node, by, stand));
    }
    const { place, at } = this.#edge(node, by);
    const all = this.#asking.atoms.all;
    return [
      narrowed(node, place, node.lows[place] as number, at - 1, all),
      narrowed(node, place, at, node.highs[place] as number, all),
    ];
  }

  /** Where to cut a box: at an edge of what is asked, if any is inside; else in the middle. */
  #edge({ lows, highs }: Node, { reads }: Atom): { place: number; at: number } {
    let best: { place: number; at: number } | null = null;
    let most = 0;
    for (const place of reads) {
      const [low, high] = [lows[place] as number, highs[place] as number];
      if (low === high) continue;
      const inside = (this.#asking.cuts[place] ?? []).filter((at) => at > low && at <= high);
      const isNumber = this.#asking.space.dimensions[place]?.kind === 'number';
      // An edge first, then a choice; only then is a number cut where nothing turns.
      const weight = inside.length > 0 ? 1e15 + inside.length : isNumber ? high - low : 1e14;
      if (best && weight <= most) continue;
      most = weight;
      best = { place, at: inside[inside.length >> 1] ?? low + Math.ceil((high - low) / 2) };
    }
    if (!best) throw new Error('a comparison over a single point is settled');
    return best;
  }

  /** The point, where it is in the node; else null. */
  #in({ lows, highs, stands: settled }: Node, point: Float64Array): Float64Array | null {
    for (let place = 0; place < point.length; place += 1) {
      const value = point[place] as number;
      if (value < (lows[place] as number) || value > (highs[place] as number)) return null;
    }
    for (const atom of this.#asking.atoms.all) {
      const stand = settled[atom.index];
      if (stand !== stands.open && (atom.stand(point, point) || stands.lacks) !== stand) return null;
    }
    return point;
  }
}

const known = (found: Float64Array | 'none' | 'too_large'): Float64Array | null =>
  typeof found === 'string' ? null : found;
