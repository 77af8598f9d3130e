import type { Logic } from '../../logic/logic.ts';
import { operation, type Logical } from '../../logic/operators.ts';
import { logicToProgram } from './logic-to-program.ts';
import { operations, type Operation } from './operations.ts';

/** A protocol that can be asked: a list of operations over flat bounds, no code made at run time. */
export interface Evaluator {
  /** Works every step out. The result is the evaluator's own array, good until the next call. */
  run(inputs: Float64Array): Float64Array;
  /** A reader of one answer in a result; truths are 1 and 0. */
  reader(logical: Logical): (result: Float64Array) => number;
  /** Where an input or a step stands in a result. Inputs come first, in their order; steps share places with what they only name. */
  slotOf(name: string): number;
  /** How many places a result has. */
  readonly size: number;
}

export function logicToEvaluator(logic: Logic): Evaluator {
  const { work, places, ends, numbers, slotOf, size } = logicToProgram(logic);
  const first = logic.inputs.length;
  const slots = new Float64Array(size);
  slots.set(numbers, size - numbers.length);

  function reader(logical: Logical): (result: Float64Array) => number {
    if (typeof logical !== 'object') return () => Number(logical);
    const inner = operation(logical);
    if (inner) return ofParts(operations[inner[0]], inner[1].map(reader));
    const slot = slotOf((logical as { readonly var: string }).var);
    return (result) => result[slot] as number;
  }

  return {
    run(inputs) {
      slots.set(inputs);
      let at = 0;
      for (let index = 0; index < work.length; index += 1) {
        const end = ends[index] as number;
        slots[first + index] = (work[index] as Operation)(slots, places, at, end);
        at = end;
      }
      return slots;
    },
    reader,
    slotOf,
    size,
  };
}

/** An answer that is itself made of several. */
function ofParts(
  operate: Operation,
  parts: readonly ((result: Float64Array) => number)[],
): (result: Float64Array) => number {
  const values = new Float64Array(parts.length);
  const places = Int32Array.from(parts.keys());
  return (result) => {
    for (let index = 0; index < parts.length; index += 1)
      values[index] = (parts[index] as (typeof parts)[number])(result);
    return operate(values, places, 0, values.length);
  };
}
