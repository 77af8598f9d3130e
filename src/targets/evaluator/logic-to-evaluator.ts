import type { Logic } from '../../logic/logic.ts';
import { operation, type Logical } from '../../logic/operators.ts';
import { closures, type Work } from './closures.ts';

/** A protocol that can be asked: closures over flat bounds, no code made at run time. */
export interface Evaluator {
  /** Works every step out. The result is the evaluator's own array, good until the next call. */
  run(inputs: Float64Array): Float64Array;
  /** A reader of one answer in a result; truths are 1 and 0. */
  reader(logical: Logical): (result: Float64Array) => number;
}

/** Compiles logic to closures. */
export function logicToEvaluator(logic: Logic): Evaluator {
  const slotOf = new Map<string, number>();
  for (const input of logic.inputs) slotOf.set(input.name, slotOf.size);
  const inputCount = slotOf.size;
  const steps: Work[] = [];
  for (const step of logic.steps) {
    steps.push(compile(step.is));
    slotOf.set(step.name, slotOf.size);
  }
  const slots = new Float64Array(slotOf.size);

  function compile(logical: Logical): Work {
    if (typeof logical === 'number') return () => logical;
    if (typeof logical === 'boolean') return logical ? () => 1 : () => 0;
    const inner = operation(logical);
    if (inner) return closures[inner[0]](inner[1].map(compile));
    const name = (logical as { readonly var: string }).var;
    const slot = slotOf.get(name);
    if (slot === undefined) throw new Error(`no input and no earlier step is called ${name}`);
    return (from) => from[slot] as number;
  }

  return {
    run(inputs) {
      slots.set(inputs);
      for (let index = 0; index < steps.length; index += 1)
        slots[inputCount + index] = (steps[index] as Work)(slots);
      return slots;
    },
    reader: compile,
  };
}
