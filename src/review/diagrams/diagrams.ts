import { DoneTable } from './done-table.ts';
import { atEnd, Nodes } from './nodes.ts';
import { both, differs, either, type Pairwise } from './pairwise.ts';

export { atEnd, TooManyPieces } from './nodes.ts';

/** A function of a set, as a number: the same function has the same number. Good only for the store that made it. */
export type Diagram = number;

/**
 * Functions of a set, held as decision diagrams: variables are asked in one order, each asked for the stretch of pieces that its
 * value lies in. Equal functions are one and the same diagram, so that two are compared by their numbers.
 */
export class Diagrams {
  /** The two truths. */
  readonly no: Diagram = 0;
  readonly yes: Diagram = 1;
  readonly #nodes = new Nodes();
  readonly #leaves = new Map<number, Diagram>();
  readonly #done = new DoneTable();
  readonly #operations = new Map<string, number>();

  constructor() {
    this.leaf(0);
    this.leaf(1);
  }

  /** What is the same number for every set. */
  leaf(value: number): Diagram {
    const known = this.#leaves.get(value);
    if (known !== undefined) return known;
    const made = this.#nodes.addEnd(value);
    this.#leaves.set(value, made);
    return made;
  }

  /** The number of an end; of anything else that is a bug. */
  valueOf(diagram: Diagram): number {
    return this.#nodes.valueOf(diagram);
  }

  /** Which variable is asked first; `atEnd` when none is. */
  variableOf(diagram: Diagram): number {
    return this.#nodes.variableOf(diagram);
  }

  /** The last piece of each stretch. */
  endsOf(diagram: Diagram): readonly number[] {
    const nodes = this.#nodes;
    const [from, to] = [nodes.first(diagram), nodes.first(diagram + 1)];
    return Array.from({ length: to - from }, (_, index) => nodes.endAt(from + index));
  }

  /** Asks a variable: up to each end, itself included, the function goes on as the kid beside it. */
  node(variable: number, ends: readonly number[], kids: readonly Diagram[]): Diagram {
    const begun = this.#nodes.begin();
    kids.forEach((kid, index) => this.#nodes.push(begun, ends[index] as number, kid));
    return this.#nodes.made(begun, variable);
  }

  /** The kid for one piece. */
  at(diagram: Diagram, piece: number): Diagram {
    const nodes = this.#nodes;
    let [low, high] = [nodes.first(diagram), nodes.first(diagram + 1) - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (nodes.endAt(middle) < piece) low = middle + 1;
      else high = middle;
    }
    return nodes.kidAt(low);
  }

  and = (...all: readonly Diagram[]): Diagram => all.reduce((left, right) => this.pair(both, left, right), 1);
  or = (...all: readonly Diagram[]): Diagram =>
    all.reduce((left, right) => this.pair(either, left, right), 0);
  /** Whether two functions have another value. */
  differ = (left: Diagram, right: Diagram): Diagram => this.pair(differs, left, right);
  not = (diagram: Diagram): Diagram => this.pair(differs, diagram, 1);

  /** The first where the truth holds, else the second. */
  choose(truth: Diagram, first: Diagram, second: Diagram): Diagram {
    if (truth === this.yes || first === second) return first;
    if (truth === this.no) return second;
    if (first === this.yes && second === this.no) return truth;
    const number = this.#numberOf(`choose ${truth}`);
    const known = this.#done.get(number, first, second);
    if (known !== -1) return known;
    const made = this.#chosen([truth, first, second]);
    this.#done.set(number, first, second, made);
    return made;
  }

  /** One operation on every pair of values. */
  pair(operation: Pairwise, left: Diagram, right: Diagram): Diagram {
    return this.#pair(operation, this.#numberOf(operation.name), left, right);
  }

  /** The same function asked of a piece so many further on along one variable; beyond its ends anything. */
  shifted(diagram: Diagram, variable: number, by: number, last: number): Diagram {
    const number = this.#numberOf(`shift ${variable} ${by}`);
    const shift = (each: Diagram): Diagram => {
      const own = this.variableOf(each);
      if (own > variable) return each;
      const known = this.#done.get(number, each, each);
      if (known !== -1) return known;
      const made = own < variable ? this.#below(each, shift) : this.#moved(each, by, last);
      this.#done.set(number, each, each, made);
      return made;
    };
    return shift(diagram);
  }

  #pair(operation: Pairwise, number: number, left: Diagram, right: Diagram): Diagram {
    const [first, second] = operation.commutes && left > right ? [right, left] : [left, right];
    const settled = operation.settles?.(first, second) ?? -1;
    if (settled !== -1) return settled;
    const nodes = this.#nodes;
    const [own, other] = [nodes.variableOf(first), nodes.variableOf(second)];
    if (own === atEnd && other === atEnd)
      return this.leaf(operation.of(nodes.valueOf(first), nodes.valueOf(second)));
    const known = this.#done.get(number, first, second);
    if (known !== -1) return known;
    const begun = nodes.begin();
    const variable = Math.min(own, other);
    let [one, two] = [nodes.first(first), nodes.first(second)];
    const [endOne, endTwo] = [nodes.first(first + 1), nodes.first(second + 1)];
    const [asksOne, asksTwo] = [own === variable, other === variable];
    while (asksOne ? one < endOne : two < endTwo) {
      const end = Math.min(asksOne ? nodes.endAt(one) : Infinity, asksTwo ? nodes.endAt(two) : Infinity);
      const a = asksOne ? nodes.kidAt(one) : first;
      const b = asksTwo ? nodes.kidAt(two) : second;
      nodes.push(begun, end, this.#pair(operation, number, a, b));
      if (asksOne && nodes.endAt(one) === end) one += 1;
      if (asksTwo && nodes.endAt(two) === end) two += 1;
    }
    const made = nodes.made(begun, variable);
    this.#done.set(number, first, second, made);
    return made;
  }

  /** A choice below each stretch over which none of the three changes; one that does not ask the variable stays itself. */
  #chosen(all: readonly [Diagram, Diagram, Diagram]): Diagram {
    const nodes = this.#nodes;
    const variable = Math.min(...all.map((each) => nodes.variableOf(each)));
    const asks = all.map((each) => nodes.variableOf(each) === variable);
    const [at, past] = [all.map((each) => nodes.first(each)), all.map((each) => nodes.first(each + 1))];
    const leader = asks.indexOf(true);
    const begun = nodes.begin();
    while ((at[leader] as number) < (past[leader] as number)) {
      const ends = at.map((place, index) => (asks[index] ? nodes.endAt(place) : Infinity));
      const end = Math.min(...ends);
      const [truth, first, second] = all.map((each, index) =>
        asks[index] ? nodes.kidAt(at[index] as number) : each,
      ) as [Diagram, Diagram, Diagram];
      nodes.push(begun, end, this.choose(truth, first, second));
      ends.forEach((each, index) => {
        if (each === end) at[index] = (at[index] as number) + 1;
      });
    }
    return nodes.made(begun, variable);
  }

  /** The same done below each stretch of a diagram. */
  #below(diagram: Diagram, next: (kid: Diagram) => Diagram): Diagram {
    const nodes = this.#nodes;
    const begun = nodes.begin();
    for (let at = nodes.first(diagram); at < nodes.first(diagram + 1); at += 1)
      nodes.push(begun, nodes.endAt(at), next(nodes.kidAt(at)));
    return nodes.made(begun, nodes.variableOf(diagram));
  }

  /** The stretches of a diagram so many pieces before where they were, the last one up to the last piece. */
  #moved(diagram: Diagram, by: number, last: number): Diagram {
    const nodes = this.#nodes;
    const begun = nodes.begin();
    let before = -1;
    for (let at = nodes.first(diagram); at < nodes.first(diagram + 1) && before < last; at += 1) {
      const end = at + 1 === nodes.first(diagram + 1) ? last : Math.min(last, nodes.endAt(at) - by);
      if (end < 0) continue;
      nodes.push(begun, end, nodes.kidAt(at));
      before = end;
    }
    return nodes.made(begun, nodes.variableOf(diagram));
  }

  #numberOf(name: string): number {
    const known = this.#operations.get(name);
    if (known !== undefined) return known;
    this.#operations.set(name, this.#operations.size);
    return this.#operations.size - 1;
  }
}
