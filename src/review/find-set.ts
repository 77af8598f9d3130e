import { cutPoints } from '../logic/cut-points.ts';
import type { Logic } from '../logic/logic.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Evaluator } from '../targets/evaluator/logic-to-evaluator.ts';
import { boxToInputs, everySet, type Box } from './box.ts';
import { searchBoxes, type Asked } from './search-boxes.ts';

/** What is looked for, answered for many sets at once: yes for every one of them, no for every one, or open. */
export type Goal = (result: Float64Array) => Asked;

/** A set that was found; or that there is none; or that the search was too large to finish. */
export type Found =
  { readonly kind: 'found'; readonly set: Box } | { readonly kind: 'none' } | { readonly kind: 'too_large' };

export interface Searchable {
  readonly protocol: Protocol;
  readonly logic: Logic;
  readonly evaluator: Evaluator;
}

/** The most boxes that one search looks into. */
const mostBoxes = 20_000;

/**
 * Looks for a set of a protocol. `reads` are the observations that the answer can depend on. A single set that is still open
 * lacks a value (a curve beyond its points): it is no example of anything.
 */
export function findSet(
  { protocol, logic, evaluator }: Searchable,
  reads: readonly string[],
  goal: Goal,
): Found {
  const searched = searchBoxes({
    protocol,
    start: everySet(protocol),
    cuts: cutPoints(protocol),
    reads: [new Set(reads)],
    ask: (box) => goal(evaluator.run(boxToInputs(box, protocol, logic.inputs))),
    most: mostBoxes,
  });
  if (searched.kind === 'found') return { kind: 'found', set: searched.set };
  return { kind: searched.kind === 'too_large' ? 'too_large' : 'none' };
}
