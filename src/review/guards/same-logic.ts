import { operation, type Logical } from '../../logic/operators.ts';
import type { Compiled } from '../../outcome/compile.ts';
import { lookBackKey } from '../look-back-key.ts';

/**
 * Numbers that two expressions share exactly when they are built alike from the same inputs and limits, whatever their steps are
 * called.
 *
 * One table serves several protocols: an answer with the same number in both cannot differ.
 */
export class SameLogic {
  readonly #numbers = new Map<string, number>();

  /** How the expressions of one protocol's logic are numbered. A limit of another value is another input, and so is a look back that is asked otherwise. */
  of({ logic, protocol }: Pick<Compiled, 'logic' | 'protocol'>): (logical: Logical) => number {
    const steps = new Map<string, number>();
    const own = new Map(
      logic.inputs.flatMap(({ name, of, owner }) => {
        const limit = of === 'limit' ? protocol.limits.get(owner) : undefined;
        if (limit) return [[name, `input ${name} ${limit.value}/${limit.stepsPerUnit.toFraction()}`]];
        const how = of === 'look_back' ? protocol.measures.get(owner)?.how : undefined;
        return how && 'over' in how ? [[name, `input ${name} ${lookBackKey(owner, how)}`]] : [];
      }),
    );
    const numberOf = (logical: Logical): number => {
      if (typeof logical !== 'object') return this.#number(String(logical));
      const inner = operation(logical);
      if (inner) return this.#number(`${inner[0]}(${inner[1].map(numberOf).join(' ')})`);
      const { var: name } = logical as { readonly var: string };
      return steps.get(name) ?? this.#number(own.get(name) ?? `input ${name}`);
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
