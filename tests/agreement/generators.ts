import type fc from 'fast-check';
import { drawn, type Draw } from './draw.ts';
import { drawProtocol, type MadeProtocol, type Plain } from './protocols.ts';
import { drawSet } from './sets.ts';

/** A made-up protocol and what it is asked about. */
export interface Example {
  readonly made: MadeProtocol;
  readonly sets: readonly Plain[];
}

/** More completions than this would keep the judge too long. */
const mostCompletions = 4000;

/** A protocol that `check` accepts, with so many sets or series. */
export function drawExample(draw: Draw, count: number): Example {
  const { series, ...made } = drawProtocol(draw);
  return { made, sets: Array.from({ length: count }, () => drawSet(draw, made, series, mostCompletions)) };
}

export const examples = (count: number): fc.Arbitrary<Example> => drawn((draw) => drawExample(draw, count));
