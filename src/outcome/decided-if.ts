import type { Observation } from '../protocol/protocol.ts';
import type { State } from './answers.ts';
import type { RuleReaders } from './rule-readers.ts';
import type { Situation } from './situation.ts';
import type { NumberPiece, Piece } from './suppose.ts';
import { answer, type PieceAnswer } from './what-if.ts';

/** Values of an observation that decide a rule, each of them on its own. */
export interface Deciding {
  readonly observation: Observation;
  readonly state: Exclude<State, 'undecided'>;
  /** Steps, both included; null for what is no number. */
  readonly range: readonly [number, number] | null;
  /** Whether no lower, and no higher value would be used. */
  readonly isLowest: boolean;
  readonly isHighest: boolean;
  /** Any one of these; empty: none at all. Null for a number. */
  readonly choices: readonly string[] | null;
}

interface Asking {
  readonly rule: RuleReaders;
  readonly observation: Observation;
  readonly situation: Situation;
}

/**
 * The values of one observation that decide an undecided rule, from what was found for each piece.
 *
 * A piece that does not decide it as a whole may do so towards its ends, where the rule compares the observation with another
 * number that is known: there the edge is found by halving, as what is decided for a range is decided for each part of it.
 */
export function decidedIf(asking: Asking, answers: readonly PieceAnswer[]): readonly Deciding[] {
  const { rule, observation, situation } = asking;
  const isCombined = situation.compiled.reads.get(rule.rule.name)?.combined.has(observation.name) ?? false;
  const found = answers.flatMap(({ piece, states }): Found[] => {
    const state = states.get(rule.rule.name) ?? 'undecided';
    if (state !== 'undecided') return [{ piece, state }];
    return isCombined && piece.kind === 'range' && piece.low < piece.high ? atItsEnds(piece, asking) : [];
  });
  if (observation.kind !== 'number') return mergedChoices(found, observation);
  return mergedRanges(found, observation, wholeOf(answers));
}

interface Found {
  readonly piece: Piece;
  readonly state: Deciding['state'];
}

function stateFor(piece: Piece, { rule, observation, situation }: Asking): State {
  return answer(observation, piece, [rule], situation).states.get(rule.rule.name) ?? 'undecided';
}

function atItsEnds({ low, high }: NumberPiece, asking: Asking): Found[] {
  const range = (from: number, to: number): NumberPiece => ({ kind: 'range', low: from, high: to });
  const found: Found[] = [];
  const first = stateFor(range(low, low), asking);
  let start = low;
  if (first !== 'undecided') {
    const end = lastThat((to) => stateFor(range(low, to), asking) === first, low, high);
    found.push({ piece: range(low, end), state: first });
    start = end + 1;
  }
  const last = start > high ? 'undecided' : stateFor(range(high, high), asking);
  if (last !== 'undecided') {
    const from = -lastThat((at) => stateFor(range(-at, high), asking) === last, -high, -start);
    found.push({ piece: range(from, high), state: last });
  }
  return found;
}

/** The last whole number for which something holds that holds for the first and, once it fails, fails from there on. */
function lastThat(holds: (at: number) => boolean, first: number, last: number): number {
  let [yes, no] = [first, last + 1];
  while (yes + 1 < no) {
    const middle = yes + Math.floor((no - yes) / 2);
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}

/** From the lowest to the highest value that would be used. */
function wholeOf(answers: readonly PieceAnswer[]): readonly [number, number] {
  const ranges = answers.flatMap(({ piece }) => (piece.kind === 'range' ? [piece] : []));
  return [ranges[0]?.low ?? 0, ranges.at(-1)?.high ?? 0];
}

function mergedRanges(
  found: readonly Found[],
  observation: Observation,
  [lowest, highest]: readonly [number, number],
): Deciding[] {
  const merged: { state: Deciding['state']; low: number; high: number }[] = [];
  for (const { piece, state } of found) {
    if (piece.kind !== 'range') continue;
    const before = merged.at(-1);
    if (before?.state === state && before.high + 1 === piece.low) before.high = piece.high;
    else merged.push({ state, low: piece.low, high: piece.high });
  }
  return merged.map(({ state, low, high }) => ({
    observation,
    state,
    range: [low, high],
    isLowest: low === lowest,
    isHighest: high === highest,
    choices: null,
  }));
}

function mergedChoices(found: readonly Found[], observation: Observation): Deciding[] {
  return (['met', 'not_met'] as const).flatMap((state) => {
    const pieces = found.filter((each) => each.state === state).map(({ piece }) => piece);
    const named = pieces.flatMap((piece) =>
      piece.kind === 'choice' && piece.choice !== null ? [piece.choice] : [],
    );
    const common = { observation, state, range: null, isLowest: false, isHighest: false };
    return [
      ...(named.length > 0 ? [{ ...common, choices: named }] : []),
      ...(pieces.length > named.length ? [{ ...common, choices: [] }] : []),
    ];
  });
}
