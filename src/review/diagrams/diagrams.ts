import { DoneTable } from './done-table.ts';

/** A function of a set, as a number: the same function has the same number. Good only for the store that made it. */
export type Diagram = number;

/** An operation on two values at the ends of diagrams. */
export interface Pairwise {
  readonly name: string;
  readonly of: (left: number, right: number) => number;
  /** The result when one side is this value, whatever the other is; or null. */
  readonly decides?: (value: number) => number | null;
}

/** How many values a variable has, which of its pieces are lacks that count, and the last of all its pieces. */
export interface Lacking {
  readonly values: number;
  readonly lacks: readonly number[];
  readonly last: number;
}

/** That a function of sets has too many pieces to be held. Caught where the question is asked; nobody else sees it. */
export class TooManyPieces extends Error {}

/** So many stretches of values are held in all. */
const mostStretches = 3_000_000;

/** The place of an end among variables: after every one of them. */
export const atEnd = 0x7fffffff;

/**
 * Functions of a set, held as decision diagrams: variables are asked in one order, each asked for the stretch of pieces that its
 * value lies in. Equal functions are one and the same diagram, so that two are compared by their numbers.
 */
export class Diagrams {
  /** The two truths. */
  readonly no: Diagram = 0;
  readonly yes: Diagram = 1;
  readonly #variables: number[] = [];
  readonly #ends: (readonly number[])[] = [];
  readonly #kids: (readonly Diagram[])[] = [];
  readonly #values: number[] = [];
  readonly #leaves = new Map<number, Diagram>();
  readonly #known = new Map<number, Diagram[]>();
  readonly #done = new DoneTable();
  readonly #operations = new Map<string, number>();
  #stretches = 0;

  constructor() {
    this.leaf(0);
    this.leaf(1);
  }

  /** What is the same number for every set. */
  leaf(value: number): Diagram {
    const known = this.#leaves.get(value);
    if (known !== undefined) return known;
    const made = this.#add(atEnd, [], [], value);
    this.#leaves.set(value, made);
    return made;
  }

  /** The number of an end; of anything else that is a bug. */
  valueOf(diagram: Diagram): number {
    return this.#values[diagram] as number;
  }

  /** Which variable is asked first; `atEnd` when none is. */
  variableOf(diagram: Diagram): number {
    return this.#variables[diagram] as number;
  }

  /** The last piece of each stretch. */
  endsOf(diagram: Diagram): readonly number[] {
    return this.#ends[diagram] as readonly number[];
  }

  kidsOf(diagram: Diagram): readonly Diagram[] {
    return this.#kids[diagram] as readonly Diagram[];
  }

  /** Asks a variable: up to each end, itself included, the function goes on as the kid beside it. A stretch without a piece is none. */
  node(variable: number, ends: readonly number[], kids: readonly Diagram[]): Diagram {
    const [lastOnes, rest] = [[] as number[], [] as Diagram[]];
    let before = -1;
    for (let index = 0; index < kids.length; index += 1) {
      const kid = kids[index] as Diagram;
      const end = ends[index] as number;
      if (end <= before) continue;
      before = end;
      if (rest.length > 0 && rest.at(-1) === kid) lastOnes[lastOnes.length - 1] = end;
      else {
        lastOnes.push(end);
        rest.push(kid);
      }
    }
    return rest.length === 1 ? (rest[0] as Diagram) : this.#shared(variable, lastOnes, rest);
  }

  /** The kid for one piece. */
  at(diagram: Diagram, piece: number): Diagram {
    const ends = this.endsOf(diagram);
    let [low, high] = [0, ends.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((ends[middle] as number) < piece) low = middle + 1;
      else high = middle;
    }
    return this.kidsOf(diagram)[low] as Diagram;
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
    return this.#once(`choose ${truth}`, first, second, () =>
      this.#over([truth, first, second], ([a, b, c]) =>
        this.choose(a as Diagram, b as Diagram, c as Diagram),
      ),
    );
  }

  /** One operation on every pair of values. */
  pair(operation: Pairwise, left: Diagram, right: Diagram): Diagram {
    const decided = this.#decided(operation, left) ?? this.#decided(operation, right);
    if (decided !== null) return decided;
    if (this.variableOf(left) === atEnd && this.variableOf(right) === atEnd)
      return this.leaf(operation.of(this.valueOf(left), this.valueOf(right)));
    return this.#once(operation.name, left, right, () =>
      this.#over([left, right], ([a, b]) => this.pair(operation, a as Diagram, b as Diagram)),
    );
  }

  /** The same function asked of a piece so many further on along one variable; beyond its ends anything. */
  shifted(diagram: Diagram, variable: number, by: number, last: number): Diagram {
    const own = this.variableOf(diagram);
    if (own > variable) return diagram;
    return this.#once(`shift ${variable} ${by}`, diagram, diagram, () => {
      const [ends, kids] = [this.endsOf(diagram), this.kidsOf(diagram)];
      if (own < variable)
        return this.node(
          own,
          ends,
          kids.map((kid) => this.shifted(kid, variable, by, last)),
        );
      const moved = ends.map((end, index) => (index === ends.length - 1 ? last : end - by));
      const kept = moved.flatMap((end, index) =>
        end >= 0 && (moved[index - 1] ?? -1) < last ? [index] : [],
      );
      return this.node(
        own,
        kept.map((index) => Math.min(last, moved[index] as number)),
        kept.map((index) => kids[index] as Diagram),
      );
    });
  }

  /** The same function with one variable asked of other pieces: of each, the piece that stands at its place. */
  relabelled(diagram: Diagram, variable: number, pieces: readonly number[]): Diagram {
    const own = this.variableOf(diagram);
    if (own > variable) return diagram;
    return this.#once(`relabel ${variable} ${pieces.join()}`, diagram, diagram, () => {
      if (own < variable)
        return this.node(
          own,
          this.endsOf(diagram),
          this.kidsOf(diagram).map((kid) => this.relabelled(kid, variable, pieces)),
        );
      return this.node(
        own,
        [...pieces.keys()],
        pieces.map((piece) => this.at(diagram, piece)),
      );
    });
  }

  /** The same function with a truth in the place of a variable of two pieces. The truth asks nothing that comes before the variable. */
  substituted(diagram: Diagram, variable: number, truth: Diagram): Diagram {
    const own = this.variableOf(diagram);
    if (own > variable) return diagram;
    return this.#once(`put ${variable} ${truth}`, diagram, diagram, () => {
      if (own === variable) return this.choose(truth, this.at(diagram, 1), this.at(diagram, 0));
      return this.node(
        own,
        this.endsOf(diagram),
        this.kidsOf(diagram).map((kid) => this.substituted(kid, variable, truth)),
      );
    });
  }

  /** Whether the function can hold when each of some variables has its own piece or lacks it; a lack itself is asked of no more. */
  orLacking(diagram: Diagram, lacks: ReadonlyMap<number, Lacking>): Diagram {
    const name = `or lacking ${[...lacks.keys()].join()}`;
    const of = (each: Diagram): Diagram => {
      const own = this.variableOf(each);
      if (own === atEnd) return each;
      return this.#once(name, each, each, () => {
        const kids = this.kidsOf(each).map(of);
        const here = lacks.get(own);
        if (!here) return this.node(own, this.endsOf(each), kids);
        const lacking = this.or(...here.lacks.map((piece) => of(this.at(each, piece))));
        const ends = [...this.endsOf(each).filter((end) => end < here.values - 1), here.values - 1];
        const values = ends.map((_, index) => this.or(kids[index] as Diagram, lacking));
        return this.node(own, [...ends, here.last], [...values, lacking]);
      });
    };
    return of(diagram);
  }

  #decided({ decides }: Pairwise, diagram: Diagram): Diagram | null {
    if (!decides || this.variableOf(diagram) !== atEnd) return null;
    const value = decides(this.valueOf(diagram));
    return value === null ? null : this.leaf(value);
  }

  /** Does the same below each stretch over which none of some diagrams changes; one that does not ask the variable stays itself. */
  #over(all: readonly Diagram[], next: (kids: readonly Diagram[]) => Diagram): Diagram {
    let variable = atEnd;
    for (const each of all) variable = Math.min(variable, this.variableOf(each));
    const at: number[] = [];
    const parts = [...all];
    for (const each of all) at.push(this.variableOf(each) === variable ? 0 : -1);
    const [ends, kids] = [[] as number[], [] as Diagram[]];
    for (let goesOn = true; goesOn;) {
      let end = Infinity;
      for (let index = 0; index < all.length; index += 1) {
        const place = at[index] as number;
        if (place < 0) continue;
        end = Math.min(end, this.endsOf(all[index] as Diagram)[place] as number);
        parts[index] = this.kidsOf(all[index] as Diagram)[place] as Diagram;
      }
      ends.push(end);
      kids.push(next(parts));
      goesOn = false;
      for (let index = 0; index < all.length; index += 1) {
        const place = at[index] as number;
        if (place < 0) continue;
        const own = this.endsOf(all[index] as Diagram);
        if (own[place] === end) at[index] = place + 1;
        if ((at[index] as number) < own.length) goesOn = true;
      }
    }
    return this.node(variable, ends, kids);
  }

  #once(name: string, left: Diagram, right: Diagram, make: () => Diagram): Diagram {
    const operation = this.#operations.get(name) ?? this.#operations.size;
    this.#operations.set(name, operation);
    const known = this.#done.get(operation, left, right);
    if (known !== -1) return known;
    const made = make();
    this.#done.set(operation, left, right, made);
    return made;
  }

  #shared(variable: number, ends: readonly number[], kids: readonly Diagram[]): Diagram {
    let hash = variable;
    for (let index = 0; index < kids.length; index += 1)
      hash =
        (Math.imul(hash, 31) + (ends[index] as number) + Math.imul(kids[index] as number, 0x9e3779b1)) | 0;
    const alike = this.#known.get(hash) ?? [];
    const known = alike.find(
      (each) =>
        this.#variables[each] === variable && same(this.endsOf(each), ends) && same(this.kidsOf(each), kids),
    );
    if (known !== undefined) return known;
    const made = this.#add(variable, ends, kids, NaN);
    alike.push(made);
    this.#known.set(hash, alike);
    return made;
  }

  #add(variable: number, ends: readonly number[], kids: readonly Diagram[], value: number): Diagram {
    this.#stretches += ends.length + 1;
    if (this.#stretches > mostStretches) throw new TooManyPieces();
    this.#variables.push(variable);
    this.#ends.push(ends);
    this.#kids.push(kids);
    return this.#values.push(value) - 1;
  }
}

const same = (left: readonly number[], right: readonly number[]): boolean =>
  left.length === right.length && left.every((each, index) => each === right[index]);

const both: Pairwise = {
  name: 'and',
  of: (left, right) => (left !== 0 && right !== 0 ? 1 : 0),
  decides: (value) => (value === 0 ? 0 : null),
};
const either: Pairwise = {
  name: 'or',
  of: (left, right) => (left !== 0 || right !== 0 ? 1 : 0),
  decides: (value) => (value === 0 ? null : 1),
};
const differs: Pairwise = { name: 'differs', of: (left, right) => (left === right ? 0 : 1) };
