import type { Logic } from '../../logic/logic.ts';
import { operation, type Logical } from '../../logic/operators.ts';

/**
 * Numbers that two expressions share exactly when they are built alike from the same inputs, whatever their steps are called.
 *
 * One table serves several protocols: an answer with the same number in both cannot differ.
 */
export class SameLogic {
  readonly #numbers = new Map<string, number>();

  /** How the expressions of one logic are numbered. */
  of(logic: Logic): (logical: Logical) => number {
    const steps = new Map<string, number>();
    const numberOf = (logical: Logical): number => {
      if (typeof logical !== 'object') return this.#number(String(logical));
      const inner = operation(logical);
      if (inner) return this.#number(`${inner[0]}(${inner[1].map(numberOf).join(' ')})`);
      const { var: name } = logical as { readonly var: string };
      return steps.get(name) ?? this.#number(`input ${name}`);
    };
    // Each step stands after those that it reads.
    for (const { name, is } of logic.steps) steps.set(name, numberOf(is));
    return numberOf;
  }

  #number(of: string): number {
    const known = this.#numbers.get(of) ?? this.#numbers.size;
    this.#numbers.set(of, known);
    return known;
  }
}
