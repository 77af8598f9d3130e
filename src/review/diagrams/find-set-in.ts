import { atEnd, TooManyPieces, type Diagram } from './diagrams.ts';
import { bestIn, eitherWay, lastPiece, type Preferred } from './preferred.ts';
import type { Space } from './space.ts';
import type { Variable } from './variables.ts';

/** The piece of each variable, in their order; what was never asked is as ordinary as can be. */
export type Pieces = readonly number[];

/** So many ways that lead nowhere are remembered in one search. */
const mostHopeless = 100_000;

/** A set for which all of some truths hold, ordinary where it can be; null when there is none. */
export function findSetIn(space: Space, truths: readonly Diagram[], preferred: Preferred): Pieces | null {
  return new Search(space, preferred).found(truths, 2, space.valid);
}

/**
 * Two sets that are a step of one number apart, of which truths hold for the first and others for the second; null when there are none.
 * The first of each are put together first: they are to say what turns.
 */
export function findStepIn(
  space: Space,
  asked: { readonly from: readonly Diagram[]; readonly to: readonly Diagram[]; readonly along: number },
  preferred: Preferred,
): { readonly from: Pieces; readonly to: Pieces } | null {
  for (const by of [1, -1]) {
    const found = stepBy(space, { ...asked, by }, preferred);
    if (found)
      return { from: found, to: found.map((piece, at) => (at === asked.along ? piece + by : piece)) };
  }
  return null;
}

function stepBy(
  space: Space,
  { from, to, along, by }: Parameters<typeof findStepIn>[1] & { readonly by: number },
  preferred: Preferred,
): Pieces | null {
  const { store, valid, variables } = space;
  const { values, lacks } = variables[along] as Variable;
  const last = values + lacks.length - 1;
  const beside = (each: Diagram): Diagram => store.shifted(each, along, by, last);
  const [first, end] = [Math.max(0, -by), values - 1 - Math.max(0, by)];
  if (first > end) return null;
  const both = store.node(
    along,
    [...(first > 0 ? [first - 1] : []), end, ...(end < last ? [last] : [])],
    [...(first > 0 ? [store.no] : []), store.yes, ...(end < last ? [store.no] : [])],
  );
  const turning = [both, ...from.slice(0, 1), ...to.slice(0, 1).map(beside)];
  const rest = [...from.slice(1), ...to.slice(1).map(beside)];
  return new Search(space, preferred).found([...turning, ...rest], turning.length, [
    ...valid,
    ...valid.map(beside),
  ]);
}

/**
 * A search through the variables in their order, the most ordinary way first. The truths are put together once the first number of the
 * last cluster is fixed: before, what they come to can be very large, and behind it is small. What makes a set one stays apart, always: each
 * of it is simple, and all of it together is not.
 */
class Search {
  readonly #space: Space;
  readonly #preferred: Preferred;
  readonly #pieces: number[];
  /** Ways that lead nowhere. */
  readonly #hopeless = new Set<string>();

  constructor(space: Space, preferred: Preferred) {
    [this.#space, this.#preferred] = [space, preferred];
    this.#pieces = preferred.map((each) => bestIn(each, 0, Infinity)?.piece ?? -1);
  }

  /** The first few of the truths say the most, and are put together before. */
  found(truths: readonly Diagram[], first: number, valid: readonly Diagram[]): Pieces | null {
    const { store, variables } = this.#space;
    if (this.#pieces.includes(-1)) return null;
    const most = this.#together(truths.slice(0, first));
    const rest = [...new Set(truths.slice(first))].filter((each) => each !== store.yes);
    return this.#look([most, ...rest], [...new Set(valid)]) ? this.#pieces.slice(0, variables.length) : null;
  }

  #together(truths: readonly Diagram[]): Diagram {
    const { store } = this.#space;
    let all = store.yes;
    for (const each of truths) {
      all = store.and(all, each);
      if (all === store.no) break;
    }
    return all;
  }

  #look(truths: readonly Diagram[], valid: readonly Diagram[]): boolean {
    const { store } = this.#space;
    if (truths.includes(store.no) || valid.includes(store.no)) return false;
    const all = [...truths, ...valid];
    const variable = all.reduce((least, each) => Math.min(least, store.variableOf(each)), atEnd);
    if (variable === atEnd) return true;
    if (truths.length > 1 && variable > this.#space.lastHub)
      return this.#look([this.#together(truths)], valid);
    const key = all.join(' ');
    if (this.#hopeless.has(key)) return false;
    for (const piece of this.#piecesOf(variable, all)) {
      const next = (each: Diagram): Diagram =>
        store.variableOf(each) === variable ? store.at(each, piece) : each;
      const isOpen = (each: Diagram): boolean => each !== store.yes;
      if (!this.#look(truths.map(next).filter(isOpen), valid.map(next).filter(isOpen))) continue;
      this.#pieces[variable] = piece;
      return true;
    }
    this.#hopeless.add(key);
    if (this.#hopeless.size > mostHopeless) throw new TooManyPieces();
    return false;
  }

  /** One piece of each stretch over which nothing turns, the most ordinary first. */
  #piecesOf(variable: number, open: readonly Diagram[]): readonly number[] {
    const { store, variables } = this.#space;
    const preference = this.#preferred[variable] ?? eitherWay;
    const asking = open.filter((each) => store.variableOf(each) === variable);
    const ends = [
      ...new Set([...asking.flatMap((each) => store.endsOf(each)), lastPiece(variables[variable])]),
    ];
    ends.sort((left, right) => left - right);
    const best = ends.flatMap((end, index) => bestIn(preference, (ends[index - 1] ?? -1) + 1, end) ?? []);
    return best.sort((left, right) => left.far - right.far).map(({ piece }) => piece);
  }
}
