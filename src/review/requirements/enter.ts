import type { Box } from './box.ts';
import type { Leaf } from './program.ts';
import { order, put, type Enter } from './twin.ts';
import type { Space } from './space.ts';

/** How a variable stands in the second set of a pair, beside the first. */
export type Second =
  /** So many steps on, downwards when below zero. */
  | { readonly kind: 'moved'; readonly by: number }
  /** Moved with something that it reads: anything up to so many steps on. */
  | { readonly kind: 'drifts'; readonly by: number }
  /** As another variable says. */
  | { readonly kind: 'as'; readonly variable: number }
  /** Whatever it can be. */
  | { readonly kind: 'any' }
  /** Zero in the first set, and as it says in the second. */
  | { readonly kind: 'only_here' };

type Range = readonly [number, number];

/** Enters the leaves of a program for the pairs of a box. What is not among `seconds` is the same in both sets. */
export function enterOf(box: Box, space: Space, seconds: ReadonlyMap<number, Second>): Enter {
  const range = (variable: number): Range => [box.low[variable] as number, box.high[variable] as number];
  return (leaf, place, known) => {
    const { variable, table } = leaf;
    const second = seconds.get(variable);
    const own = range(variable);
    const { low: base, high: top } = space.variables[variable] as { low: number; high: number };
    const of = (each: Range): Range => (table ? ends(table, each[0] - base, each[1] - base) : each);
    let first = of(second?.kind === 'only_here' ? [0, 0] : own);
    let then = first;
    let [rises, falls] = second ? [0, 0] : [1, 1];
    if (second) {
      const there = thereOf(second, own, range, [base, top]);
      then = of(there);
      if (second.kind === 'moved' || second.kind === 'drifts')
        [rises, falls] =
          table && second.kind === 'moved' ? turns(table, own, base, second.by) : wayOf(table, second.by);
    }
    const { blank } = leaf;
    if (blank) {
      const [least, most] = range(blank.by);
      // What lacks in both sets is the same in both; what may lack, and moves where it does not, may do either.
      const stays = Number(!second || least > 0);
      if (most > 0) [rises, falls] = blank.both ? [stays, stays] : wayOfPart(blank.widens);
      if (blank.both) first = mixed(first, blank, least, most);
      then = blank.both && !second ? first : mixed(then, blank, least, most);
    }
    put(known, place, [...first, ...then]);
    order(known, place, rises, falls);
  };
}

function thereOf(
  second: Second,
  [low, high]: Range,
  range: (variable: number) => Range,
  whole: Range,
): Range {
  switch (second.kind) {
    case 'moved':
      return [low + second.by, high + second.by];
    case 'drifts':
      return [low + Math.min(0, second.by), high + Math.max(0, second.by)];
    case 'as':
      return range(second.variable);
    case 'any':
      return whole;
    case 'only_here':
      return [low, high];
  }
}

/** Without a table a number moves as it is moved; with one, nobody knows. */
const wayOf = (table: Float64Array | null, by: number): [number, number] =>
  table ? [0, 0] : [Number(by >= 0), Number(by <= 0)];

const wayOfPart = (widens: NonNullable<Leaf['blank']>['widens']): [number, number] => [
  Number(widens === 'up'),
  Number(widens === 'down'),
];

/** What is lacking has the values of a lack; what may be lacking those of both. */
function mixed(given: Range, { low, high }: NonNullable<Leaf['blank']>, least: number, most: number): Range {
  if (most === 0) return given;
  if (least > 0) return [low, high];
  return [Math.min(given[0], low), Math.max(given[1], high)];
}

function ends(table: Float64Array, from: number, to: number): Range {
  let [low, high] = [Infinity, -Infinity];
  for (let at = Math.max(0, from); at <= Math.min(to, table.length - 1); at += 1) {
    const value = table[at] as number;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}

/** Whether a table never falls, and whether it never rises, from each value of a range to the one so many steps on. */
function turns(table: Float64Array, [from, to]: Range, base: number, by: number): [number, number] {
  let [rises, falls] = [1, 1];
  for (let at = from - base; at <= to - base; at += 1) {
    const change = (table[at + by] as number) - (table[at] as number);
    if (change < 0) rises = 0;
    if (change > 0) falls = 0;
  }
  return [rises, falls];
}
