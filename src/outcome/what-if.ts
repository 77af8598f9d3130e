import type { Observation } from '../protocol/protocol.ts';
import { levelFrom, stateFrom, type State } from './answers.ts';
import { piecesOf } from './pieces.ts';
import type { RuleReaders } from './rule-readers.ts';
import type { Situation } from './situation.ts';
import { suppose, type Piece } from './suppose.ts';

/** What would be found if an observation had a value of one piece. */
export interface PieceAnswer {
  readonly piece: Piece;
  readonly couldBe: number;
  /** By the name of the rule; only of those that are undecided now. */
  readonly states: ReadonlyMap<string, State>;
}

/** Asks what each value of an observation would decide, piece by piece. Null where that cannot be said. */
export function whatIf(
  observation: Observation,
  undecided: readonly RuleReaders[],
  situation: Situation,
): readonly PieceAnswer[] | null {
  const pieces = piecesOf(observation, situation);
  return pieces && pieces.map((piece) => answer(observation, piece, undecided, situation));
}

/** What would be found for one piece. */
export function answer(
  observation: Observation,
  piece: Piece,
  undecided: readonly RuleReaders[],
  situation: Situation,
): PieceAnswer {
  const { compiled } = situation;
  const supposed = suppose(observation, piece, situation);
  const isOne = supposed.narrow === supposed.wide;
  const first = compiled.evaluator.run(supposed.narrow);
  const narrow = isOne ? first : first.slice();
  const wide = isOne ? first : compiled.evaluator.run(supposed.wide);
  return {
    piece,
    couldBe: levelFrom(compiled, narrow, wide).couldBe,
    states: new Map(undecided.map((each) => [each.rule.name, stateFrom(each, narrow, wide)])),
  };
}
