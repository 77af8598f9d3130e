import type { Diagram } from '../../diagrams/diagrams.ts';
import type { Space } from '../../diagrams/space.ts';
import { stepsOf, type Variable } from '../../diagrams/variables.ts';
import type { LookBack } from '../../../protocol/protocol.ts';
import type { Asks, Way } from '../../../protocol/requirements/requirement.ts';
import { observationsBehindLookBack } from '../bind.ts';
import type { Whole } from './calls.ts';
import type { Free } from './free-look-backs.ts';

/** The worse set of a pair that differs in one observation alone. */
export interface SecondSet {
  /** The first sets that have a worse one next to them. */
  readonly pairs: Diagram;
  /** What a truth says of the second set, as a function of the first. */
  readonly of: (truth: Diagram) => Diagram;
}

/** Null where the observation is no part of a set. */
export function secondSet(
  whole: Whole,
  { observation, way }: Extract<Asks, { kind: 'getting_worse_never_lowers' }>,
): SecondSet | null {
  const { space } = whole;
  const { store } = space;
  const place = space.placeOf.get(observation);
  const variable = place === undefined ? undefined : space.variables[place];
  if (place === undefined || !variable) return null;
  const next = nextPieces(way, variable);
  const pieces = [...Array(variable.values).keys()];
  const pairs = store.node(
    place,
    pieces,
    pieces.map((piece) => (next(piece) === null ? store.no : store.yes)),
  );
  const by = 'going' in way ? (way.going === 'up' ? 1 : -1) : 0;
  const moved = (truth: Diagram): Diagram =>
    by === 0
      ? store.relabelled(
          truth,
          place,
          pieces.map((piece) => next(piece) ?? piece),
        )
      : store.shifted(truth, place, by, variable.values - 1);
  const isNumber = variable.observation.kind === 'number';
  const earlier = whole.free().flatMap((free) => {
    const becomes = afterwards(free, observation, isNumber ? by : 0, space);
    return becomes === null ? [] : [{ at: store.variableOf(free.diagram), becomes }];
  });
  const of = (truth: Diagram): Diagram =>
    moved(earlier.reduce((all, { at, becomes }) => store.substituted(all, at, becomes), truth));
  return { pairs, of };
}

/** From each piece the one that is worse by a step out of it; null where none is, or where it lies outside the range. */
function nextPieces(way: Way, variable: Variable): (piece: number) => number | null {
  if ('through' in way) {
    const names = variable.observation.choices.map(({ choice }) => choice);
    return (piece) => {
      const at = way.through.indexOf(names[piece] ?? '');
      const worse = at < 0 ? undefined : way.through[at + 1];
      return worse === undefined ? null : names.indexOf(worse);
    };
  }
  const { going, low, high } = way;
  return (piece) => {
    const { low: first, high: last } = stepsOf(variable, piece);
    if (going === 'up') return piece + 1 < variable.values && last >= low && last < high ? piece + 1 : null;
    return piece > 0 && first > low && first <= high ? piece - 1 : null;
  };
}

/** What becomes of a truth about earlier sets when an observation moves on: null when it stays. */
function afterwards(free: Free, observation: string, by: number, space: Space): Diagram | null {
  const other = (): Diagram => space.free(`second ${free.diagram}`);
  if (free.beside.includes(observation)) return other();
  const moves = free.looksBack.map((how) => movesWith(how, observation, by));
  if (moves.every((each) => each === 'stays')) return null;
  if (moves.includes('any')) return other();
  // A look back that has a value has one afterwards.
  if (free.asks === 'has_value') return null;
  if (!free.turns) return other();
  const ways = new Set(
    free.turns.flatMap((turn, index) =>
      moves[index] === 'stays' || turn === 0 ? [] : [Math.sign(turn * by)],
    ),
  );
  const [way] = ways;
  if (way === undefined) return null;
  if (ways.size > 1) return other();
  return way > 0 ? space.store.or(free.diagram, other()) : space.store.and(free.diagram, other());
}

/** Whether a look back stays as it is, may go the way of what it reads, or may become anything. */
function movesWith(how: LookBack, observation: string, by: number): 'stays' | 'drifts' | 'any' {
  if (!observationsBehindLookBack(how).includes(observation)) return 'stays';
  const isSimple = how.observation === observation && how.where === null && how.kind !== 'held';
  if (!isSimple || by === 0) return 'any';
  return how.kind === 'count' || how.kind === 'minutes_since' || how.presentSet === 'left_out'
    ? 'stays'
    : 'drifts';
}
