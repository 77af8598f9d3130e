import type { Logic } from '../../logic/logic.ts';
import { operation, type Logical } from '../../logic/operators.ts';
import { operations, type Operation } from './operations.ts';

/** Operations in the order in which they are worked out. Slots stand in three rows: inputs, results, numbers. */
export interface Program {
  /** Each fills the next slot of the results. */
  readonly work: readonly Operation[];
  /** The slots of the parts of all operations, one after the other; where those of each operation end, excluded. */
  readonly places: Int32Array;
  readonly ends: Int32Array;
  /** What stands in the last slots from the beginning: numbers, and truths as 1 and 0. */
  readonly numbers: Float64Array;
  /** How many slots there are. */
  readonly size: number;
  /** Where an input or a step stands. */
  readonly slotOf: (name: string) => number;
}

/**
 * Logic as a flat list of operations.
 *
 * Each part of a step that is itself an operation gets a slot too, so that an operation reads slots and nothing else. All are worked
 * out, also those that an `and` or an `if` could leave: that takes less time than asking first, and none of them can fail.
 */
export function logicToProgram({ inputs, steps }: Logic): Program {
  const slots = new Map(inputs.map(({ name }, index) => [name, index]));
  const numbers = new Map<number, number>();
  const work: Operation[] = [];
  const places: number[] = [];
  const ends: number[] = [];

  /** The slot of an expression; of a number its place among numbers, counted down from -1 until all slots are known. */
  function slotFor(logical: Logical): number {
    if (typeof logical !== 'object') return numberAt(Number(logical));
    const inner = operation(logical);
    if (!inner) return found(slots, (logical as { readonly var: string }).var);
    const parts = inner[1].map(slotFor);
    places.push(...parts);
    ends.push(places.length);
    return inputs.length + work.push(operations[inner[0]]) - 1;
  }

  function numberAt(value: number): number {
    const known = numbers.get(value) ?? -1 - numbers.size;
    numbers.set(value, known);
    return known;
  }

  for (const { name, is } of steps) slots.set(name, slotFor(is));
  const before = inputs.length + work.length;
  const settled = (slot: number): number => (slot < 0 ? before - 1 - slot : slot);
  return {
    work,
    places: Int32Array.from(places, settled),
    ends: Int32Array.from(ends),
    numbers: Float64Array.from(numbers.keys()),
    size: before + numbers.size,
    slotOf: (name) => settled(found(slots, name)),
  };
}

function found(slots: ReadonlyMap<string, number>, name: string): number {
  const slot = slots.get(name);
  if (slot === undefined) throw new Error(`no input and no earlier step is called ${name}`);
  return slot;
}
