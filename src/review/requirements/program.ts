import { operation, type Logical, type Operator } from '../../logic/operators.ts';

/** What a node of a program does. Truths are 0 and 1, so that `and` is `min` and `or` is `max`. */
export type Kind = 'leaf' | 'add' | 'less' | 'times' | 'min' | 'max' | 'below' | 'at_most' | 'not' | 'if';

/** Where a number enters a program: a variable, as it is or by a table over its values. */
export interface Leaf {
  readonly variable: number;
  /** By value, from the lowest of the variable on; null: the value itself. */
  readonly table: Float64Array | null;
  /** Set where it may be lacking: then it has other values. */
  readonly blank?: Blank;
}

/** What a number is while its observation has no value. */
export interface Blank {
  /** The variable that is above zero while there is no value. */
  readonly by: number;
  readonly low: number;
  readonly high: number;
  /** Whether it lacks in both sets of a pair, or in the second alone. */
  readonly both: boolean;
  /** Which way the number surely goes when the value is taken away. */
  readonly widens: 'up' | 'down' | null;
}

export interface Node {
  readonly kind: Kind;
  readonly parts: readonly number[];
  readonly leaf: Leaf | null;
  /** Set for a number that never changes. */
  readonly constant: number | null;
  /** The variables that it depends on, in order. */
  readonly behind: readonly number[];
  /** Its value for every combination of these, the last one turning fastest; null where they are too many. */
  readonly all: Float64Array | null;
}

/** What a variable can be, in whole numbers, both ends included. */
export interface Domain {
  readonly low: number;
  readonly high: number;
}

/** Tables have so many values at most. */
const mostValues = 4096;

/**
 * Logic as a list of nodes, each after those that it reads. Nodes that are surely the same are one node: those built alike, and those that
 * have the same value for every combination of the few variables behind them. So one logic of a complete set and the other, which say the
 * same of it, fall together.
 */
export class Program {
  readonly nodes: Node[] = [];
  readonly #domains: readonly Domain[];
  readonly #known = new Map<string, number>();
  readonly #tabled: boolean;

  /** `tabled`: each variable has one value in a set, so that tables can stand for what is built on few of them. */
  constructor(domains: readonly Domain[], tabled: boolean) {
    [this.#domains, this.#tabled] = [domains, tabled];
  }

  domain(variable: number): Domain {
    return this.#domains[variable] as Domain;
  }

  constant(value: number): number {
    return this.#add(`c${value}`, {
      kind: 'leaf',
      parts: [],
      leaf: null,
      constant: value,
      behind: [],
      all: Float64Array.of(value),
    });
  }

  leaf(leaf: Leaf): number {
    const { low, high } = this.#domains[leaf.variable] as Domain;
    const size = high - low + 1;
    const all =
      this.#tabled && size <= mostValues
        ? (leaf.table ?? Float64Array.from({ length: size }, (_, index) => low + index))
        : null;
    const { blank, table } = leaf;
    const key = `v${leaf.variable} ${blank ? JSON.stringify(blank) : ''} ${table ? table.join() : ''}`;
    return this.#add(key, { kind: 'leaf', parts: [], leaf, constant: null, behind: [leaf.variable], all });
  }

  /** Writes an expression; `named` gives the node of an input or of an earlier step. */
  write(logical: Logical, named: (name: string) => number): number {
    if (typeof logical !== 'object') return this.constant(Number(logical));
    const inner = operation(logical);
    if (!inner) return named((logical as { readonly var: string }).var);
    const [operator, parts] = inner;
    return this.#operation(
      operator,
      parts.map((part) => this.write(part, named)),
    );
  }

  #operation(operator: Operator, parts: readonly number[]): number {
    const [first, second] = parts as [number, number];
    switch (operator) {
      case '+':
        return this.#sum(parts);
      case '-':
        return parts.length === 1
          ? this.#node('less', [this.constant(0), first])
          : this.#node('less', [first, second]);
      case '*':
        return this.#node('times', parts);
      case 'min':
      case 'and':
        return this.min(parts);
      case 'max':
      case 'or':
        return this.max(parts);
      case '<':
        return first === second ? this.constant(0) : this.#node('below', parts);
      case '<=':
        return first === second ? this.constant(1) : this.#node('at_most', parts);
      case '!':
        return this.not(first);
      case 'if':
        return this.#if(parts);
    }
  }

  /** What is built on the same few variables is added first, so that a variable which stands in several terms counts once. */
  #sum(parts: readonly number[]): number {
    const terms = parts.flatMap((part) => {
      const { kind, parts: inside } = this.nodes[part] as Node;
      return kind === 'add' ? inside : [part];
    });
    const groups = new Map<string, number[]>();
    for (const part of terms) {
      const { behind, all } = this.nodes[part] as Node;
      const key = all ? behind.join() : `alone ${part}`;
      groups.set(key, [...(groups.get(key) ?? []), part]);
    }
    const added = [...groups.values()].map((group) =>
      group.length === 1 ? (group[0] as number) : this.#node('add', group),
    );
    return added.length === 1 ? (added[0] as number) : this.#node('add', added);
  }

  not(part: number): number {
    const { kind, parts } = this.nodes[part] as Node;
    if (kind === 'not') return parts[0] as number;
    // So that what is written as "none of these" and as "each of these not" is one node.
    if ((kind === 'min' || kind === 'max') && parts.every((each) => this.isTruth(each)))
      return this.#end(
        kind === 'min' ? 'max' : 'min',
        parts.map((each) => this.not(each)),
      );
    return this.#node('not', [part]);
  }

  min(parts: readonly number[]): number {
    return this.#end('min', parts);
  }

  max(parts: readonly number[]): number {
    return this.#end('max', parts);
  }

  choose(truth: number, first: number, second: number): number {
    return this.#if([truth, first, second]);
  }

  #if([truth, first, ...rest]: readonly number[]): number {
    if (first === undefined) return truth as number;
    const other = this.#if(rest);
    const { constant } = this.nodes[truth as number] as Node;
    if (constant !== null) return constant === 0 ? other : first;
    return first === other ? first : this.#node('if', [truth as number, first, other]);
  }

  /** The lowest or the highest: each part once, and what never wins left out. */
  #end(kind: 'min' | 'max', parts: readonly number[]): number {
    const nested = parts.flatMap((part) => {
      const { kind: inner, parts: inside } = this.nodes[part] as Node;
      return inner === kind ? inside : [part];
    });
    const open = this.#withoutAbsorbed(kind, [...new Set(nested)]).sort((left, right) => left - right);
    return open.length === 1 ? (open[0] as number) : this.#node(kind, open);
  }

  /** Of `a and (a or b)` only `a` is left, and of `a or (a and b)` as well. */
  #withoutAbsorbed(kind: 'min' | 'max', parts: readonly number[]): number[] {
    const there = new Set(parts);
    const isThere = (part: number): boolean => {
      const inner = this.nodes[part] as Node;
      return there.has(part) || (inner.kind === kind && inner.parts.every((each) => there.has(each)));
    };
    return parts.filter((part) => {
      const { kind: inner, parts: inside } = this.nodes[part] as Node;
      return inner === kind || (inner !== 'min' && inner !== 'max') || !inside.some(isThere);
    });
  }

  #node(kind: Kind, given: readonly number[]): number {
    const parts = this.#withoutIdle(kind, given);
    if (parts.length === 1 && (kind === 'min' || kind === 'max')) return parts[0] as number;
    const nodes = parts.map((part) => this.nodes[part] as Node);
    const behind = [...new Set(nodes.flatMap((node) => node.behind))].sort((left, right) => left - right);
    const all = this.#table(kind, nodes, behind);
    if (all?.every((value) => value === all[0])) return this.constant(all[0] as number);
    const [only] = behind;
    if (all && only !== undefined && behind.length === 1) return this.leaf({ variable: only, table: all });
    const key = all ? `t${behind.join()} ${all.join()}` : `${kind} ${parts.join()}`;
    return this.#add(key, { kind, parts, leaf: null, constant: null, behind, all });
  }

  /** Of truths: what holds never changes an `and`, what does not never an `or`, and the other way round either decides it. */
  #withoutIdle(kind: Kind, parts: readonly number[]): readonly number[] {
    if (kind !== 'min' && kind !== 'max') return parts;
    if (!parts.every((part) => this.isTruth(part))) return parts;
    const [idle, deciding] = kind === 'min' ? [1, 0] : [0, 1];
    const decided = parts.find((part) => this.nodes[part]?.constant === deciding);
    if (decided !== undefined) return [decided];
    const open = parts.filter((part) => this.nodes[part]?.constant !== idle);
    return open.length === 0 ? parts.slice(0, 1) : open;
  }

  /** Whether a node is 0 or 1, whatever the set. */
  isTruth(part: number): boolean {
    const { kind, constant, all, parts, leaf } = this.nodes[part] as Node;
    if (constant !== null) return constant === 0 || constant === 1;
    if (all) return all.every((value) => value === 0 || value === 1);
    if (kind === 'min' || kind === 'max') return parts.every((each) => this.isTruth(each));
    return kind === 'below' || kind === 'at_most' || kind === 'not' || isFlag(leaf);
  }

  #table(kind: Kind, nodes: readonly Node[], behind: readonly number[]): Float64Array | null {
    if (!this.#tabled || nodes.some(({ all }) => all === null)) return null;
    const sizes = behind.map((each) => sizeOf(this.#domains[each] as Domain));
    const size = sizes.reduce((product, each) => product * each, 1);
    if (size > mostValues) return null;
    const strides = nodes.map((node) => stridesOf(node, behind, this.#domains));
    const values = new Float64Array(nodes.length);
    return Float64Array.from({ length: size }, (_, index) => {
      nodes.forEach((node, which) => {
        values[which] = (node.all as Float64Array)[placeOf(index, sizes, strides[which] ?? [])] as number;
      });
      return valueOf(kind, values);
    });
  }

  #add(key: string, node: Node): number {
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    this.#known.set(key, this.nodes.length);
    return this.nodes.push(node) - 1;
  }
}

/** A number that enters as yes or no, whether it may be lacking or not. */
function isFlag(leaf: Leaf | null): boolean {
  const [low, high] = leaf?.blank ? [leaf.blank.low, leaf.blank.high] : [0, 1];
  return leaf?.table?.every((value) => value === 0 || value === 1) === true && low >= 0 && high <= 1;
}

const sizeOf = ({ low, high }: Domain): number => high - low + 1;

/** How far each variable of `behind` moves in the table of a node that may depend on fewer. */
function stridesOf(node: Node, behind: readonly number[], domains: readonly Domain[]): readonly number[] {
  const own = new Map<number, number>();
  let stride = 1;
  for (const each of [...node.behind].reverse()) {
    own.set(each, stride);
    stride *= sizeOf(domains[each] as Domain);
  }
  return behind.map((each) => own.get(each) ?? 0);
}

function placeOf(index: number, sizes: readonly number[], strides: readonly number[]): number {
  let [rest, place] = [index, 0];
  for (let which = sizes.length - 1; which >= 0; which -= 1) {
    const size = sizes[which] as number;
    place += (rest % size) * (strides[which] as number);
    rest = Math.floor(rest / size);
  }
  return place;
}

function valueOf(kind: Kind, values: Float64Array): number {
  const [first, second, third] = values as unknown as [number, number, number];
  switch (kind) {
    case 'add':
      return values.reduce((total, each) => total + each, 0);
    case 'less':
      return first - second;
    case 'times':
      return first * second;
    case 'min':
      return Math.min(...values);
    case 'max':
      return Math.max(...values);
    case 'below':
      return Number(first < second);
    case 'at_most':
      return Number(first <= second);
    case 'not':
      return Number(first === 0);
    case 'if':
      return first === 0 ? third : second;
    case 'leaf':
      return first;
  }
}
