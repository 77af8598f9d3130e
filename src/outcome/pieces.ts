import { cutPoints } from '../logic/cut-points.ts';
import type { Observation, Protocol } from '../protocol/protocol.ts';
import type { Present } from '../series/bounds.ts';
import type { Situation } from './situation.ts';
import type { Piece } from './suppose.ts';
import { lacks } from './view.ts';

/**
 * The values that an observation can still be, in pieces: a number's range cut wherever a rule, a band or a curve point tells
 * two of its values apart directly; each choice by itself.
 *
 * Values that would contradict what is known, and so would be refused, are left out. Null where nobody can say what a value would
 * do: another one is refused that it could contradict, or bring back.
 */
export function piecesOf(observation: Observation, situation: Situation): readonly Piece[] | null {
  const { choices, kind, name } = observation;
  if (kind !== 'number') {
    const each = choices.map(({ choice }): Piece => ({ kind: 'choice', choice }));
    return kind === 'several'
      ? [...each, { kind: 'choice', choice: null }]
      : each.filter(mayStill(name, situation));
  }
  const range = rangeLeft(observation, situation);
  if (!range) return null;
  const [low, high] = range;
  if (low > high) return [];
  const cuts = [...cutsOf(observation, situation)].filter((at) => at > low && at <= high);
  const starts = [low, ...new Set(cuts.sort((left, right) => left - right))];
  const pieces = starts.map((start, index): Piece => {
    const end = (starts[index + 1] ?? high + 1) - 1;
    return { kind: 'range', low: start, high: end };
  });
  return name === 'age' ? pieces.filter((piece) => fitsAges(piece, situation)) : pieces;
}

const mayStill =
  (name: string, { compiled, bounds }: Situation) =>
  (piece: Piece): boolean => {
    const places = compiled.places.observations.get(name);
    const choices = compiled.protocol.observations.get(name)?.choices ?? [];
    const index = choices.findIndex(({ choice }) => piece.kind === 'choice' && choice === piece.choice);
    return bounds.wide[places?.may[index] ?? -1] === 1;
  };

/** Where answers change at the limits that hold for this patient; for an age also where the ranges of other observations change. */
export function cutsOf({ name }: Observation, situation: Situation): readonly number[] {
  const { compiled, bounds } = situation;
  const { protocol } = compiled;
  const changed = [...bounds.facts.limits].some(
    ([limit, { steps }]) => steps !== protocol.limits.get(limit)?.value,
  );
  const cuts = changed ? cutPoints(withLimits(situation)) : compiled.cuts;
  const own = cuts.get(name) ?? [];
  if (name !== 'age') return own;
  const bands = [...protocol.observations.values()].flatMap(({ possible }) =>
    possible.flatMap(({ ageBelow }) => (ageBelow === null ? [] : [ageBelow])),
  );
  return [...own, ...bands];
}

function withLimits({ compiled, bounds }: Situation): Protocol {
  const { protocol } = compiled;
  const limits = [...protocol.limits].map(
    ([name, limit]) =>
      [name, { ...limit, value: bounds.facts.limits.get(name)?.steps ?? limit.value }] as const,
  );
  return { ...protocol, limits: new Map(limits) };
}

/** The range that is left once contradictions with what is known are out; null when that cannot be said. */
function rangeLeft(observation: Observation, situation: Situation): readonly [number, number] | null {
  const { compiled, bounds } = situation;
  const { present } = bounds.facts;
  const places = compiled.places.observations.get(observation.name);
  let [low, high] = [bounds.wide[places?.low ?? -1] ?? 0, bounds.wide[places?.high ?? -1] ?? -1];
  for (const { lower, higher, mayBeEqual } of compiled.protocol.contradictions) {
    if (lower !== observation.name && higher !== observation.name) continue;
    const partner = compiled.protocol.observations.get(lower === observation.name ? higher : lower);
    const state = partner && present.get(partner.name)?.state;
    if (!partner || !state) continue;
    if (state === 'refused') return null;
    if (!holdsBeside(partner, observation, state)) continue;
    if (!onOneScale(partner, observation)) return null;
    const gap = mayBeEqual ? 0 : 1;
    const other = compiled.places.observations.get(partner.name);
    if (lower === observation.name) high = Math.min(high, (bounds.narrow[other?.high ?? -1] ?? 0) - gap);
    else low = Math.max(low, (bounds.narrow[other?.low ?? -1] ?? 0) + gap);
  }
  return [low, high];
}

/** Whether a value of the partner is still used once the present set gives the observation. */
function holdsBeside(partner: Observation, { takenWith }: Observation, state: Present['state']): boolean {
  if (state === 'earlier') return partner.takenWith === null || partner.takenWith !== takenWith;
  return state === 'given' || state === 'standing' || state === 'assumed';
}

const onOneScale = (left: Observation, right: Observation): boolean =>
  left.unit === right.unit && left.stepsPerUnit.equals(right.stepsPerUnit);

/** Whether every value that is used now would still be possible at an age of the piece. */
function fitsAges(piece: Piece, { compiled, bounds }: Situation): boolean {
  if (piece.kind !== 'range') return true;
  return [...compiled.protocol.observations.values()].every(({ name, possible }) => {
    const present = bounds.facts.present.get(name);
    if (possible.length < 2 || !present?.range || lacks(present)) return true;
    const [low, high] = present.range;
    const touched = possible.filter(
      ({ ageBelow }, index) =>
        (ageBelow === null || piece.low < ageBelow) &&
        piece.high >= (possible[index - 1]?.ageBelow ?? -Infinity),
    );
    return touched.every((band) => low >= band.low && high <= band.high);
  });
}
