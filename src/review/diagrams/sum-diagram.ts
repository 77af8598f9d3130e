import type { Diagram } from './diagrams.ts';
import { partOf } from './input-diagrams.ts';
import type { LinearSum } from './linear-sum.ts';
import type { Space } from './space.ts';
import { piecesOf, type Variable } from './variables.ts';

/** One variable of a sum: what each of its pieces adds, from the lowest that it can to the highest. */
interface Term {
  readonly place: number;
  readonly pieces: number;
  readonly values: number;
  readonly adds: (piece: number) => number;
  readonly least: number;
  readonly most: number;
}

/**
 * Where a sum is zero or less (`strict`: below zero), as a function of the set; null where something in it is not asked step by step. What was
 * added so far is all that matters for what comes after, so equal sums go on as one.
 */
export function sumDiagram(sum: LinearSum, strict: boolean, space: Space): Diagram | null {
  const terms = termsOf(sum, space);
  if (!terms) return null;
  const { store } = space;
  const least = restOf(terms, (term) => term.least);
  const most = restOf(terms, (term) => term.most);
  const known = terms.map(() => new Map<number, Diagram>());
  const holds = (total: number): boolean => (strict ? total < 0 : total <= 0);
  const below = (index: number, total: number): Diagram => {
    if (holds(total + (most[index] as number))) return store.yes;
    if (!holds(total + (least[index] as number))) return store.no;
    const before = known[index]?.get(total);
    if (before !== undefined) return before;
    const term = terms[index] as Term;
    const made =
      index === terms.length - 1
        ? last(term, (piece) => (holds(total + term.adds(piece)) ? store.yes : store.no), space)
        : each(term, (piece) => below(index + 1, total + term.adds(piece)), space);
    known[index]?.set(total, made);
    return made;
  };
  return below(0, sum.constant);
}

function each({ place, pieces }: Term, kid: (piece: number) => Diagram, { store }: Space): Diagram {
  const all = [...Array(pieces).keys()];
  return store.node(place, all, all.map(kid));
}

/** Along the last variable the truth turns once at most among the values, because each adds as much more as the one before. */
function last({ place, pieces, values }: Term, kid: (piece: number) => Diagram, { store }: Space): Diagram {
  const ends: number[] = [];
  const begin = kid(0);
  let [low, high] = [0, values - 1];
  if (kid(high) !== begin) {
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (kid(middle) === begin) low = middle;
      else high = middle;
    }
    ends.push(low);
  }
  ends.push(values - 1);
  for (let piece = values; piece < pieces; piece += 1) ends.push(piece);
  return store.node(place, ends, ends.map(kid));
}

function termsOf({ terms }: LinearSum, space: Space): Term[] | null {
  const parts = new Map<number, [Parameters<typeof partOf>[0], number][]>();
  for (const [input, factor] of terms) {
    const place = space.placeOf.get(input.owner);
    if (input.of !== 'observation' || place === undefined || !space.isStepwise(input.owner)) return null;
    if (input.part !== 'low' && input.part !== 'high') return null;
    parts.set(place, [...(parts.get(place) ?? []), [input, factor]]);
  }
  return [...parts].sort(([left], [right]) => left - right).map(([place, all]) => termOf(place, all, space));
}

function termOf(
  place: number,
  all: readonly (readonly [Parameters<typeof partOf>[0], number])[],
  { variables }: Space,
): Term {
  const variable = variables[place] as Variable;
  const { values } = variable;
  const adds = (piece: number): number =>
    all.reduce((total, [input, factor]) => {
      const lack = variable.lacks[piece - values] ?? null;
      return total + factor * partOf(input, variable, piece, lack);
    }, 0);
  const corners = [adds(0), adds(values - 1), ...variable.lacks.map((_, index) => adds(values + index))];
  return {
    place,
    pieces: piecesOf(variable),
    values,
    adds,
    least: Math.min(...corners),
    most: Math.max(...corners),
  };
}

/** For each term what it and all after it come to; zero after the last. */
function restOf(terms: readonly Term[], of: (term: Term) => number): number[] {
  const rest = [0];
  for (const term of [...terms].reverse()) rest.unshift((rest[0] as number) + of(term));
  return rest;
}
