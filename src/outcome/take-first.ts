import type { Observation } from '../protocol/protocol.ts';
import type { Piece } from './suppose.ts';
import type { PieceAnswer } from './what-if.ts';

/** What taking one missing observation would tell. */
interface Telling {
  readonly observation: Observation;
  /** The highest that the level could still be, at the worst of its values. */
  readonly worst: number;
  /** How many rules it decides whatever its value, and at best. */
  readonly always: number;
  readonly best: number;
  /** The same over all of its possible values, on average. */
  readonly average: number;
}

/**
 * Missing observations, the most telling first: the one that leaves the lowest worst level; then the one that decides the most
 * rules whatever its value, at best, and over all its possible values; then in the order in which they came.
 */
export function inOrderOfTelling(
  missing: readonly { readonly observation: Observation; readonly answers: readonly PieceAnswer[] }[],
): readonly Observation[] {
  return missing
    .map(({ observation, answers }) => tellingOf(observation, answers))
    .toSorted(
      (left, right) =>
        left.worst - right.worst ||
        right.always - left.always ||
        right.best - left.best ||
        right.average - left.average,
    )
    .map(({ observation }) => observation);
}

function tellingOf(observation: Observation, answers: readonly PieceAnswer[]): Telling {
  const decided = answers.map(
    ({ states }) => [...states.values()].filter((state) => state !== 'undecided').length,
  );
  const sizes = answers.map(({ piece }) => sizeOf(piece));
  const whole = sizes.reduce((sum, size) => sum + size, 0);
  const weighed = decided.reduce((sum, count, index) => sum + count * (sizes[index] ?? 0), 0);
  return {
    observation,
    worst: Math.max(...answers.map(({ couldBe }) => couldBe)),
    always: Math.min(...decided),
    best: Math.max(...decided),
    average: weighed / whole,
  };
}

const sizeOf = (piece: Piece): number => (piece.kind === 'range' ? piece.high - piece.low + 1 : 1);
