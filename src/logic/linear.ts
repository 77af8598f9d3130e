import Fraction from 'fraction.js';
import type { Logical } from './operators.ts';

/** A whole number that is worked out at run time: an input or a step, with the range that it can have. */
export interface Node {
  readonly name: string;
  /** Expressions for its lowest and its highest value in the set at hand. */
  readonly low: Logical;
  readonly high: Logical;
  /** The least and the most that it can be in any set. */
  readonly least: bigint;
  readonly most: bigint;
}

/** A sum of nodes, each times a fraction, and a constant. Each node stands once, so that what is shared cancels exactly. */
export interface Linear {
  readonly constant: Fraction;
  readonly terms: ReadonlyMap<Node, Fraction>;
}

/** A number as a quotient of two sums; the bottom is above zero for every possible set. */
export interface Ratio {
  readonly top: Linear;
  readonly bottom: Linear;
}

export const constant = (value: Fraction | number): Linear => ({
  constant: new Fraction(value),
  terms: new Map(),
});
export const one: Linear = constant(1);
export const over1 = (top: Linear): Ratio => ({ top, bottom: one });
export const isConstant = ({ terms }: Linear): boolean => terms.size === 0;

/** A node divided by a scale: the value of an observation from its steps. */
export function ofNode(node: Node, scale: Fraction | number = 1): Linear {
  return { constant: new Fraction(0), terms: new Map([[node, new Fraction(scale).inverse()]]) };
}

export function plus(left: Linear, right: Linear): Linear {
  const terms = new Map(left.terms);
  for (const [node, factor] of right.terms) {
    const total = (terms.get(node) ?? new Fraction(0)).add(factor);
    if (total.equals(0)) terms.delete(node);
    else terms.set(node, total);
  }
  return { constant: left.constant.add(right.constant), terms };
}

export function scaled(linear: Linear, factor: Fraction | number): Linear {
  const by = new Fraction(factor);
  if (by.equals(1)) return linear;
  if (by.equals(0)) return constant(0);
  return {
    constant: linear.constant.mul(by),
    terms: new Map([...linear.terms].map(([node, each]) => [node, each.mul(by)])),
  };
}

export const minus = (left: Linear, right: Linear): Linear => plus(left, scaled(right, -1));

export function sameLinear(left: Linear, right: Linear): boolean {
  return (
    left.constant.equals(right.constant) &&
    left.terms.size === right.terms.size &&
    [...left.terms].every(([node, factor]) => right.terms.get(node)?.equals(factor) ?? false)
  );
}

/** Terms in whole numbers without a common divisor, the first above zero; and what they were divided by. */
export interface WholeTerms {
  readonly terms: readonly (readonly [Node, bigint])[];
  readonly factor: Fraction;
}

/** `1/2 a − b` is `1/2 × (a − 2 b)`. */
export function wholeTerms({ terms }: Linear): WholeTerms {
  const all = [...terms];
  const common = all.reduce((scale, [, each]) => leastCommonMultiple(scale, each.d), 1n);
  const raised = all.map(([node, each]) => [node, each.s * each.n * (common / each.d)] as const);
  const divisor = raised.reduce((shared, [, each]) => greatestCommonDivisor(shared, absolute(each)), 0n);
  const sign = (raised[0]?.[1] ?? 1n) < 0n ? -1n : 1n;
  const by = divisor === 0n ? 1n : sign * divisor;
  return { terms: raised.map(([node, each]) => [node, each / by]), factor: new Fraction(by, common) };
}

export const absolute = (value: bigint): bigint => (value < 0n ? -value : value);

function greatestCommonDivisor(left: bigint, right: bigint): bigint {
  let [a, b] = [left, right];
  while (b !== 0n) [a, b] = [b, a % b];
  return a;
}

function leastCommonMultiple(left: bigint, right: bigint): bigint {
  return (left / greatestCommonDivisor(left, right)) * right;
}

/** The greatest whole number that is not above a fraction. */
export function floor(value: Fraction): bigint {
  const signed = value.s * value.n;
  const quotient = signed / value.d;
  return signed < 0n && signed % value.d !== 0n ? quotient - 1n : quotient;
}
