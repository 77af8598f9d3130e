import fc from 'fast-check';
import { drawFrom, type Draw, type Whole } from './draw.ts';

/** A whole number that was drawn, and between which two, both included. */
export interface Drawn {
  readonly first: number;
  readonly last: number;
  readonly value: number;
}

/** Whole numbers from a seed alone, many times quicker than from fast-check: the same seed, the same numbers. */
export function wholeFrom(seed: number): Whole {
  let state = seed >>> 0;
  return (first, last) => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    mixed = (mixed ^ (mixed >>> 15)) >>> 0;
    return first + Math.floor((mixed / 2 ** 32) * (last - first + 1));
  };
}

/** The same numbers, each noted in the list. */
export const noting =
  (whole: Whole, list: Drawn[]): Whole =>
  (first, last) => {
    const value = whole(first, last);
    list.push({ first, last, value });
    return value;
  };

/** The numbers of a list, in order, each brought between the two that are asked for; after the last one always the first. */
function again(values: readonly number[]): Whole {
  let next = 0;
  return (first, last) => {
    const value = values[next] ?? first;
    next += 1;
    return Math.min(last, Math.max(first, value));
  };
}

/** The draws of a list of numbers. */
export const drawAgain = (values: readonly number[]): Draw => drawFrom(again(values));

/**
 * The smallest numbers that fast-check finds, from draws that fail, with which something still fails. It stops looking after some
 * seconds: what it has by then fails too.
 */
export async function smallest(
  drawn: readonly Drawn[],
  fails: (draw: Draw) => Promise<boolean>,
  seconds: number,
): Promise<readonly number[]> {
  const whole = fc.tuple(...drawn.map(({ first, last }) => fc.integer({ min: first, max: last })));
  const before = drawn.map(({ value }) => value);
  const property = fc.asyncProperty(whole, async (values) => !(await fails(drawAgain(values))));
  const settings = {
    numRuns: 1,
    examples: [[before] as [number[]]],
    interruptAfterTimeLimit: 1000 * seconds,
  };
  const { counterexample } = await fc.check(property, settings);
  return counterexample?.[0] ?? before;
}
