import type { Input } from '../../logic/inputs.ts';
import { operation, type Logical } from '../../logic/operators.ts';
import type { Named } from './numbers-behind.ts';

/** A number as a sum: each input with the whole number that it is multiplied by, and what is added. */
export interface LinearSum {
  readonly terms: ReadonlyMap<Input, number>;
  readonly constant: number;
}

/** An expression as a sum; null where it is none. `limit` gives the number that a limit stands for. */
export function linearSum(
  logical: Logical,
  named: ReadonlyMap<string, Named>,
  limit: (input: Input) => number,
): LinearSum | null {
  const of = (each: Logical): LinearSum | null => linearSum(each, named, limit);
  if (typeof logical !== 'object') return { terms: new Map(), constant: Number(logical) };
  const inner = operation(logical);
  if (!inner) {
    const what = named.get((logical as { readonly var: string }).var);
    if (!what) return null;
    if (what.kind === 'step') return of(what.is);
    return what.input.of === 'limit'
      ? { terms: new Map(), constant: limit(what.input) }
      : { terms: new Map([[what.input, 1]]), constant: 0 };
  }
  const [operator, parts] = inner;
  const sums = parts.map(of);
  if (sums.some((each) => each === null)) return null;
  const [first, second] = sums as [LinearSum, LinearSum?];
  switch (operator) {
    case '+':
      return (sums as LinearSum[]).reduce((left, right) => added(left, right, 1));
    case '-':
      return second ? added(first, second, -1) : multiplied(first, -1);
    case '*':
      if (!second) return null;
      if (first.terms.size === 0) return multiplied(second, first.constant);
      return second.terms.size === 0 ? multiplied(first, second.constant) : null;
    default:
      return null;
  }
}

/** The second, so many times, added to the first. */
export function added(left: LinearSum, right: LinearSum, times: number): LinearSum {
  const terms = new Map(left.terms);
  for (const [input, factor] of right.terms) terms.set(input, (terms.get(input) ?? 0) + factor * times);
  return { terms, constant: left.constant + right.constant * times };
}

const multiplied = (sum: LinearSum, by: number): LinearSum =>
  added({ terms: new Map(), constant: 0 }, sum, by);
