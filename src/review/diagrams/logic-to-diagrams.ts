import { operation, type Logical, type Operator } from '../../logic/operators.ts';
import type { Logic } from '../../logic/logic.ts';
import type { Input } from '../../logic/inputs.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import type { Diagram, Diagrams } from './diagrams.ts';
import { inputDiagram } from './input-diagrams.ts';
import { numbersBehind, stepsOfLogic, type Named } from './numbers-behind.ts';
import { atMost, below, higher, lower, minus, plus, times, type Pairwise } from './pairwise.ts';
import { rowsOf } from './rows.ts';
import type { Space } from './space.ts';

const pairwise: Readonly<Partial<Record<Operator, Pairwise>>> = {
  '+': plus,
  '-': minus,
  '*': times,
  min: lower,
  max: higher,
  '<': below,
  '<=': atMost,
};

/**
 * The answers of one logic as functions of the set. What two logics share is worked out once: they are told apart by how they are
 * built, not by the names of their steps.
 *
 * A comparison that reads earlier sets is a question of its own, free of all others: what is shown to hold for each of its answers
 * holds for every series.
 */
export class LogicDiagrams {
  readonly #space: Space;
  readonly #logic: Logic;
  readonly #protocol: Protocol;
  readonly #numberOf: (logical: Logical) => number;
  readonly #named: ReadonlyMap<string, Named>;

  /** `protocol`: whose limits and look backs the logic reads. */
  constructor(space: Space, logic: Logic, protocol: Protocol = space.protocol) {
    [this.#space, this.#logic, this.#protocol] = [space, logic, protocol];
    this.#numberOf = space.same.of({ logic, protocol });
    this.#named = stepsOfLogic(logic);
  }

  /** One answer, as a function of the set. */
  of(logical: Logical): Diagram {
    const { known } = this.#space;
    const key = this.#numberOf(logical);
    const before = known.get(key);
    if (before !== undefined) return before;
    const made = this.#make(logical, key);
    known.set(key, made);
    return made;
  }

  get #store(): Diagrams {
    return this.#space.store;
  }

  #make(logical: Logical, key: number): Diagram {
    if (typeof logical !== 'object') return this.#store.leaf(Number(logical));
    const inner = operation(logical);
    if (inner) return this.#operation(inner[0], inner[1], key);
    const named = this.#named.get((logical as { readonly var: string }).var) as Named;
    return named.kind === 'step' ? this.of(named.is) : this.#input(named.input, key);
  }

  #input(input: Input, key: number): Diagram {
    if (input.of === 'limit') return this.#store.leaf(this.#protocol.limits.get(input.owner)?.value ?? 0);
    return inputDiagram(input, this.#space, this.#store) ?? this.#space.free(`input ${key}`);
  }

  #operation(operator: Operator, parts: readonly Logical[], key: number): Diagram {
    const store = this.#store;
    switch (operator) {
      case 'and':
        return store.and(...parts.map((part) => this.of(part)));
      case 'or':
        return store.or(...parts.map((part) => this.of(part)));
      case '!':
        return store.not(this.of(parts[0] as Logical));
      case 'if':
        return this.#firstThat(parts, (part) => this.of(part));
      case '<':
      case '<=':
        return this.#compare(operator, parts[0] as Logical, parts[1] as Logical, key);
      default:
        return this.#reckon(operator, parts);
    }
  }

  #reckon(operator: Operator, parts: readonly Logical[]): Diagram {
    const all = parts.map((part) => this.of(part));
    const [first, ...rest] = all as [Diagram, ...Diagram[]];
    const operate = pairwise[operator] as Pairwise;
    if (operator === '-' && rest.length === 0) return this.#store.pair(operate, this.#store.leaf(0), first);
    return rest.reduce((left, right) => this.#store.pair(operate, left, right), first);
  }

  #firstThat(parts: readonly Logical[], of: (part: Logical) => Diagram): Diagram {
    let made = of(parts.at(-1) as Logical);
    for (let at = parts.length - 3; at >= 0; at -= 2)
      made = this.#store.choose(this.of(parts[at] as Logical), of(parts[at + 1] as Logical), made);
    return made;
  }

  /** Choices and extremes are drawn out of a comparison, so that each comparison that is left is one of plain numbers. */
  #compare(operator: '<' | '<=', left: Logical, right: Logical, key: number): Diagram {
    const store = this.#store;
    const [a, b] = [this.#plain(left), this.#plain(right)];
    const again = (first: Logical, second: Logical): Diagram => this.of({ [operator]: [first, second] });
    const [inA, inB] = [operation(a), operation(b)];
    if (inA?.[0] === 'if') return this.#firstThat(inA[1], (part) => again(part, b));
    if (inB?.[0] === 'if') return this.#firstThat(inB[1], (part) => again(a, part));
    if (inA?.[0] === 'min') return store.or(...inA[1].map((part) => again(part, b)));
    if (inA?.[0] === 'max') return store.and(...inA[1].map((part) => again(part, b)));
    if (inB?.[0] === 'min') return store.and(...inB[1].map((part) => again(a, part)));
    if (inB?.[0] === 'max') return store.or(...inB[1].map((part) => again(a, part)));
    const behind = numbersBehind([a, b], this.#named);
    if (behind.some(({ of }) => of === 'look_back')) return this.#space.free(`comparison ${key}`);
    const reckoned = behind.some(({ owner }) => this.#space.isStepwise(owner));
    if (!reckoned) return store.pair(pairwise[operator] as Pairwise, this.of(a), this.of(b));
    return rowsOf({ [operator]: [a, b] }, { logic: this.#logic, protocol: this.#protocol }, this.#space);
  }

  /** What a step is, not what it is called. */
  #plain(logical: Logical): Logical {
    if (typeof logical !== 'object' || !('var' in logical)) return logical;
    const named = this.#named.get(logical.var);
    return named?.kind === 'step' ? this.#plain(named.is) : logical;
  }
}
