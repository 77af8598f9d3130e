import type { Logic } from '../../logic/logic.ts';
import { operation, type Logical } from '../../logic/operators.ts';
import { neededSteps, numberKinds, reads, readersOf } from './steps-read.ts';
import { tracedOperators, type Trace, type Traced } from './traced-operators.ts';

/**
 * Runs logic along a line of sets: at one set, and at once for all those after it that are answered alike.
 *
 * Its slots are its own: inputs, then steps. `copyTo` puts them where whatever reads an evaluator's results finds them. Only the steps
 * that the wanted answers depend on are worked out.
 */
export class Tracer {
  /** The steps that are worked out, in their order. */
  readonly steps: readonly number[];
  readonly #logic: Logic;
  readonly #wanted: readonly Logical[];
  readonly #slotOf = new Map<string, number>();
  readonly #trace: Trace;
  readonly #first: number;
  readonly #works: readonly (Traced | null)[];
  /** Answers that are no step of their own are asked as well. */
  readonly #inline: readonly Traced[];
  readonly #readBy: readonly (readonly number[])[];
  /** Steps that read something that came out otherwise than was foreseen. */
  readonly #stale: Uint8Array;
  /** The first place of the walk at which a step's truths may turn. */
  readonly #until: Float64Array;
  /** What each wanted answer was when it was asked last. */
  readonly #before: Float64Array;
  readonly #answers: readonly (Traced | null)[];
  #movingInputs: readonly number[] = [];
  #position = 0;

  constructor(logic: Logic, wanted: readonly Logical[]) {
    [this.#logic, this.#wanted] = [logic, wanted];
    for (const { name } of [...logic.inputs, ...logic.steps]) this.#slotOf.set(name, this.#slotOf.size);
    const { size } = this.#slotOf;
    this.#trace = {
      values: new Float64Array(size),
      slopes: new Float64Array(size),
      slope: 0,
      reach: Infinity,
    };
    this.#first = logic.inputs.length;
    const needed = neededSteps(logic, wanted);
    this.#works = logic.steps.map(({ name, is }) => (needed.has(name) ? this.#compile(is) : null));
    this.steps = this.#works.flatMap((work, index) => (work ? [index] : []));
    this.#inline = wanted.filter((each) => operation(each) !== null).map((each) => this.#compile(each));
    this.#readBy = readersOf(logic, needed);
    this.#stale = new Uint8Array(logic.steps.length);
    this.#until = new Float64Array(logic.steps.length);
    this.#before = new Float64Array(wanted.length).fill(NaN);
    this.#answers = wanted.map((each) => (operation(each) ? null : this.#compile(each)));
  }

  get values(): Float64Array {
    return this.#trace.values;
  }

  /** Puts what was worked out into a result of the evaluator of the same logic, at the places that it says. */
  copyTo(result: Float64Array, places: readonly number[]): Float64Array {
    const { values } = this.#trace;
    for (let input = 0; input < this.#first; input += 1) result[input] = values[input] as number;
    for (const index of this.steps) result[places[index] as number] = values[this.#first + index] as number;
    return result;
  }

  /** Begins a walk: sets the inputs, and how each changes from step to step of the walk. */
  load(inputs: Float64Array, slopes: Float64Array): void {
    this.#trace.values.set(inputs);
    this.#trace.slopes.set(slopes);
    this.#movingInputs = [...slopes.keys()].filter((place) => slopes[place] !== 0);
    this.#position = 0;
    this.#stale.fill(1);
  }

  /**
   * Goes so many sets on, and works some steps out, in their order: those only that can differ from what was foreseen. Gives for how
   * many sets of the walk, the present one included, nothing asked in those steps changes.
   */
  run(some: readonly number[], by: number): number {
    const { values, slopes } = this.#trace;
    const [stale, until] = [this.#stale, this.#until];
    this.#position += by;
    const position = this.#position;
    for (const place of this.#movingInputs)
      values[place] = (values[place] as number) + (slopes[place] as number) * by;
    let reach = Infinity;
    for (const index of some) {
      const place = this.#first + index;
      const foreseen = (values[place] as number) + (slopes[place] as number) * by;
      if (stale[index] === 0 && (until[index] as number) > position) values[place] = foreseen;
      else this.#workOut(index, foreseen);
      reach = Math.min(reach, (until[index] as number) - position);
    }
    this.#trace.reach = reach;
    for (const each of this.#inline) each(this.#trace);
    return this.#trace.reach;
  }

  #workOut(index: number, foreseen: number): void {
    const trace = this.#trace;
    const place = this.#first + index;
    trace.reach = Infinity;
    const value = (this.#works[index] as Traced)(trace);
    if (value !== foreseen || trace.slope !== trace.slopes[place])
      for (const reader of this.#readBy[index] ?? []) this.#stale[reader] = 1;
    this.#stale[index] = 0;
    this.#until[index] = this.#position + trace.reach;
    trace.values[place] = value;
    trace.slopes[place] = trace.slope;
  }

  /** The steps whose numbers or truths can change with some inputs; and the others. */
  changingWith(places: ReadonlySet<number>): {
    readonly moving: readonly number[];
    readonly still: readonly number[];
  } {
    const changing = new Set(places);
    for (const index of this.steps)
      if (reads(this.#is(index), (name) => changing.has(this.#slot(name)))) changing.add(this.#first + index);
    return {
      moving: this.steps.filter((index) => changing.has(this.#first + index)),
      still: this.steps.filter((index) => !changing.has(this.#first + index)),
    };
  }

  /** Whether some comparison reads inputs of both kinds at once, so that the one moves where the other turns. */
  couples(one: ReadonlySet<number>, other: ReadonlySet<number>): boolean {
    const kinds = new Map<number, number>();
    for (const place of one) kinds.set(place, 1);
    for (const place of other) kinds.set(place, (kinds.get(place) ?? 0) | 2);
    const found = { coupled: false };
    const kindOf = (name: string): number => kinds.get(this.#slot(name)) ?? 0;
    for (const index of this.steps)
      kinds.set(this.#first + index, numberKinds(this.#is(index), kindOf, found));
    for (const each of this.#wanted) numberKinds(each, kindOf, found);
    return found.coupled;
  }

  /** Asks an expression where the walk stands: its value, and its change at one step. */
  asker(logical: Logical): () => readonly [number, number] {
    const work = this.#compile(logical);
    return () => [work(this.#trace), this.#trace.slope];
  }

  /** Whether some wanted answer is another one than when this was asked last; one that is no step may always be. */
  hasTurned(): boolean {
    let turned = false;
    for (let index = 0; index < this.#before.length; index += 1) {
      const now = this.#answers[index]?.(this.#trace) ?? NaN;
      if (now === this.#before[index]) continue;
      this.#before[index] = now;
      turned = true;
    }
    return turned;
  }

  #is(index: number): Logical {
    return (this.#logic.steps[index] as { readonly is: Logical }).is;
  }

  #slot(name: string): number {
    const found = this.#slotOf.get(name);
    if (found === undefined) throw new Error(`no input and no step is called ${name}`);
    return found;
  }

  #compile(logical: Logical): Traced {
    return compiled(logical, (name) => this.#slot(name));
  }
}

function compiled(logical: Logical, slot: (name: string) => number): Traced {
  if (typeof logical === 'number' || typeof logical === 'boolean') {
    const value = Number(logical);
    return (trace) => {
      trace.slope = 0;
      return value;
    };
  }
  const inner = operation(logical);
  if (inner) return tracedOperators[inner[0]](inner[1].map((part) => compiled(part, slot)));
  const at = slot((logical as { readonly var: string }).var);
  return (trace) => {
    trace.slope = trace.slopes[at] as number;
    return trace.values[at] as number;
  };
}
