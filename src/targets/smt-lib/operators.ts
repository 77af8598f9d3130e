import { operation, operators, type Logical } from '../../logic/operators.ts';
import type { PerOperator } from '../target.ts';
import { Smt, smt } from './smt.ts';

const list = (parts: readonly Smt[]): Smt => Smt.joined(parts, ' ');

/** The lower and the higher of two, which SMT-LIB lacks. A name of a protocol never holds a blank, so that none is one of these. */
export const helpers = smt`(define-fun |the lower| ((a Int) (b Int)) Int (ite (<= a b) a b))
(define-fun |the higher| ((a Int) (b Int)) Int (ite (<= a b) b a))`;

/** Several as two at a time, halves first: solvers take long over a chain of many. One by itself stays what it is. */
function folded(parts: readonly Smt[], two: (one: Smt, other: Smt) => Smt): Smt {
  if (parts.length === 1) return parts[0] as Smt;
  const half = parts.length >> 1;
  return two(folded(parts.slice(0, half), two), folded(parts.slice(half), two));
}

/** Each operator. One that is forgotten does not compile. */
const written: PerOperator<Smt> = {
  '+': (parts) => (parts.length === 1 ? (parts[0] as Smt) : smt`(+ ${list(parts)})`),
  '-': (parts) => smt`(- ${list(parts)})`,
  '*': (parts) => smt`(* ${list(parts)})`,
  min: (parts) => folded(parts, (one, other) => smt`(|the lower| ${one} ${other})`),
  max: (parts) => folded(parts, (one, other) => smt`(|the higher| ${one} ${other})`),
  '<': (parts) => smt`(< ${list(parts)})`,
  '<=': (parts) => smt`(<= ${list(parts)})`,
  and: (parts) => (parts.length === 1 ? (parts[0] as Smt) : smt`(and ${list(parts)})`),
  or: (parts) => (parts.length === 1 ? (parts[0] as Smt) : smt`(or ${list(parts)})`),
  '!': (parts) => smt`(not ${list(parts)})`,
  if: (parts) => branches(parts),
};

/** `if a 1 b 2 3` as one choice inside the other, from the last. */
function branches(parts: readonly Smt[]): Smt {
  let made = parts.at(-1) as Smt;
  for (let at = parts.length - 3; at >= 0; at -= 2)
    made = smt`(ite ${parts[at] as Smt} ${parts[at + 1] as Smt} ${made})`;
  return made;
}

/** An expression of logic. Inputs and steps stand under their own names. */
export function expression(logical: Logical): Smt {
  if (typeof logical !== 'object') return smt`${logical}`;
  const inner = operation(logical);
  if (!inner) return smt`${(logical as { readonly var: string }).var}`;
  return written[inner[0]](inner[1].map(expression));
}

/** What an expression comes to, for SMT-LIB, which keeps truths and numbers apart. */
export type Sort = 'Int' | 'Bool';

export function sortOf(logical: Logical, sorts: ReadonlyMap<string, Sort>): Sort {
  if (typeof logical !== 'object') return typeof logical === 'number' ? 'Int' : 'Bool';
  const inner = operation(logical);
  if (inner) return operators[inner[0]].gives === 'number' ? 'Int' : 'Bool';
  const { var: name } = logical as { readonly var: string };
  const sort = sorts.get(name);
  if (!sort) throw new Error(`no input and no earlier step is called ${name}`);
  return sort;
}
