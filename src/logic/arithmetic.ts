import Fraction from 'fraction.js';
import {
  absolute,
  constant,
  floor,
  isConstant,
  minus,
  ofNode,
  over1,
  plus,
  sameLinear,
  scaled,
  wholeTerms,
  type Linear,
  type Node,
  type Ratio,
} from './linear.ts';
import { highest, lessOrSame, lowest, sum, times, type Logical } from './operators.ts';
import type { StepWriter } from './step-writer.ts';

/** How a comparison with a number stands over all values that are still possible. */
export interface Truth {
  readonly certain: Logical;
  readonly possible: Logical;
}

export const opposite = ({ certain, possible }: Truth): Truth => ({
  certain: typeof possible === 'boolean' ? !possible : { '!': [possible] },
  possible: typeof certain === 'boolean' ? !certain : { '!': [certain] },
});

/** A number as `factor × node + rest`. */
export interface OneNode {
  readonly node: Node | null;
  readonly factor: Fraction;
  readonly rest: Fraction;
}

/** A sum with more terms than this becomes a step of its own, so that no chain of sums grows with its length. */
const mostTerms = 8;

/** Exact arithmetic over whole numbers: sums, products and quotients of numbers that are known as ranges. */
export class Arithmetic {
  readonly #writer: StepWriter;
  readonly #sums = new Map<string, Node>();

  constructor(writer: StepWriter) {
    this.#writer = writer;
  }

  /** A sum brought down to one node. */
  oneNode(linear: Linear, owner: string): OneNode {
    if (isConstant(linear)) return { node: null, factor: new Fraction(0), rest: linear.constant };
    const { terms, factor } = wholeTerms(linear);
    const [first] = terms;
    if (terms.length === 1 && first?.[1] === 1n) return { node: first[0], factor, rest: linear.constant };
    const key = terms.map(([node, by]) => `${by}·${node.name}`).join(' ');
    const known = this.#sums.get(key) ?? this.#sumNode(terms, owner);
    this.#sums.set(key, known);
    return { node: known, factor, rest: linear.constant };
  }

  #sumNode(terms: readonly (readonly [Node, bigint])[], owner: string): Node {
    const side = (low: boolean): Logical =>
      sum(terms.map(([node, by]) => times(Number(by), by > 0n === low ? node.low : node.high)));
    const end = (low: boolean): bigint =>
      terms.reduce((total, [node, by]) => total + by * (by > 0n === low ? node.least : node.most), 0n);
    const reach = terms.reduce((total, [node, by]) => total + absolute(by) * furthest(node), 0n);
    const nodes = terms.map(([node]) => node);
    this.#writer.reach(reach, owner, nodes);
    const name = `${owner}/sum`;
    const low = this.#writer.define(`${name}:low`, side(true));
    const high = this.#writer.define(`${name}:high`, side(false));
    return this.#writer.node({ name, low, high, least: end(true), most: end(false) }, owner, nodes);
  }

  #short(linear: Linear, owner: string): Linear {
    if (linear.terms.size <= mostTerms) return linear;
    const { node, factor, rest } = this.oneNode(linear, owner);
    return node ? plus(scaled(ofNode(node), factor), constant(rest)) : linear;
  }

  add(left: Ratio, right: Ratio, owner: string): Ratio {
    if (sameLinear(left.bottom, right.bottom)) {
      return { top: this.#short(plus(left.top, right.top), owner), bottom: left.bottom };
    }
    const top = plus(
      this.#product(left.top, right.bottom, owner),
      this.#product(right.top, left.bottom, owner),
    );
    return { top: this.#short(top, owner), bottom: this.#product(left.bottom, right.bottom, owner) };
  }

  multiply(left: Ratio, right: Ratio, owner: string): Ratio {
    return {
      top: this.#product(left.top, right.top, owner),
      bottom: this.#product(left.bottom, right.bottom, owner),
    };
  }

  /** The right side is above zero for every possible set. */
  divide(left: Ratio, right: Ratio, owner: string): Ratio {
    if (isConstant(right.top) && isConstant(right.bottom) && right.top.constant.compare(0) > 0) {
      return { top: scaled(left.top, right.bottom.constant.div(right.top.constant)), bottom: left.bottom };
    }
    return {
      top: this.#product(left.top, right.bottom, owner),
      bottom: this.#product(left.bottom, right.top, owner),
    };
  }

  #product(left: Linear, right: Linear, owner: string): Linear {
    if (isConstant(left)) return scaled(right, left.constant);
    if (isConstant(right)) return scaled(left, right.constant);
    const [a, b] = [this.#asNode(left, owner), this.#asNode(right, owner)];
    const ends = [
      a.node.least * b.node.least,
      a.node.least * b.node.most,
      a.node.most * b.node.least,
      a.node.most * b.node.most,
    ];
    const [least, most] = [ends.reduce((x, y) => (y < x ? y : x)), ends.reduce((x, y) => (y > x ? y : x))];
    const name = `${owner}/product`;
    const corners = cornersOf(a.node, b.node);
    const low = this.#writer.define(`${name}:low`, lowest(corners.low));
    const high = this.#writer.define(`${name}:high`, highest(corners.high));
    const made = this.#writer.node({ name, low, high, least, most }, owner, [a.node, b.node]);
    return scaled(ofNode(made), new Fraction(1n, a.scale * b.scale));
  }

  /** A sum as one node over a whole scale. */
  #asNode(linear: Linear, owner: string): { node: Node; scale: bigint } {
    const { node, factor, rest } = this.oneNode(linear, owner);
    if (node && rest.equals(0) && factor.s > 0n && factor.n === 1n) return { node, scale: factor.d };
    const scale = commonScale([factor, rest]);
    return { node: this.wholeNode(linear, scale, `${owner}/whole`, owner), scale };
  }

  /** A sum times `scale` in whole numbers: `scale` must make it whole. */
  wholeNode(linear: Linear, scale: bigint, name: string, owner: string): Node {
    const { node, factor, rest } = this.oneNode(linear, owner);
    const restSteps = wholeOf(rest, scale);
    if (!node) {
      const value = Number(restSteps);
      return this.#writer.node(
        { name, low: value, high: value, least: restSteps, most: restSteps },
        owner,
        [],
      );
    }
    const by = wholeOf(factor, scale);
    if (by === 1n && restSteps === 0n) return node;
    this.#writer.reach(absolute(by) * furthest(node) + absolute(restSteps), owner, [node]);
    const side = (low: boolean): Logical =>
      sum([times(Number(by), by > 0n === low ? node.low : node.high), Number(restSteps)]);
    const [x, y] = [by * node.least + restSteps, by * node.most + restSteps];
    const low = this.#writer.define(`${name}:low`, side(true));
    const high = this.#writer.define(`${name}:high`, side(false));
    const [least, most] = x < y ? [x, y] : [y, x];
    return this.#writer.node({ name, low, high, least, most }, owner, [node]);
  }

  /** Whether `ratio >= 0`, or with `strict` `ratio > 0`. */
  atLeastZero(ratio: Ratio, strict: boolean, owner: string): Truth {
    const { node, factor, rest } = this.oneNode(ratio.top, owner);
    if (!node) return truth(strict ? rest.compare(0) > 0 : rest.compare(0) >= 0);
    const edge = rest.neg().div(factor);
    // factor × node + rest >= 0 is node >= edge, or node <= edge when the factor is below zero.
    if (factor.s > 0n) {
      const least = strict ? floor(edge) + 1n : -floor(edge.neg());
      return (
        clear(node, least, null) ?? {
          certain: lessOrSame(Number(least), node.low),
          possible: lessOrSame(Number(least), node.high),
        }
      );
    }
    const most = strict ? -floor(edge.neg()) - 1n : floor(edge);
    return (
      clear(node, null, most) ?? {
        certain: lessOrSame(node.high, Number(most)),
        possible: lessOrSame(node.low, Number(most)),
      }
    );
  }
}

/** Corners whose lowest and highest bound a product; fewer when a side never goes below zero. */
function cornersOf(a: Node, b: Node): { low: Logical[]; high: Logical[] } {
  const at = (x: Logical, y: Logical): Logical => ({ '*': [x, y] });
  if (a.least >= 0n && b.least >= 0n) return { low: [at(a.low, b.low)], high: [at(a.high, b.high)] };
  const all = [at(a.low, b.low), at(a.low, b.high), at(a.high, b.low), at(a.high, b.high)];
  return { low: all, high: all };
}

/** A threshold beyond what the node can ever be answers itself. */
function clear(node: Node, least: bigint | null, most: bigint | null): Truth | null {
  if (least !== null && least <= node.least) return truth(true);
  if (least !== null && least > node.most) return truth(false);
  if (most !== null && most >= node.most) return truth(true);
  if (most !== null && most < node.least) return truth(false);
  return null;
}

export const truth = (holds: boolean): Truth => ({ certain: holds, possible: holds });

const furthest = (node: Node): bigint =>
  absolute(node.least) > absolute(node.most) ? absolute(node.least) : absolute(node.most);

/** The least whole number that makes each of these whole. */
export function commonScale(values: readonly Fraction[]): bigint {
  return values.reduce((scale, each) => {
    let [a, b] = [scale, each.d];
    while (b !== 0n) [a, b] = [b, a % b];
    return (scale / a) * each.d;
  }, 1n);
}

/** A fraction times a scale that makes it whole. */
export const wholeOf = (value: Fraction, scale: bigint): bigint => (value.s * value.n * scale) / value.d;

/** The difference of two quotients as one: its sign is their comparison's. */
export function difference(left: Ratio, right: Ratio, arithmetic: Arithmetic, owner: string): Ratio {
  if (sameLinear(left.bottom, right.bottom)) return over1(minus(left.top, right.top));
  return arithmetic.add(left, { top: scaled(right.top, -1), bottom: right.bottom }, owner);
}
