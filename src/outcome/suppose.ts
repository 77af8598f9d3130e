import type { Observation } from '../protocol/protocol.ts';
import type { ObservationPlaces } from './places.ts';
import type { Situation } from './situation.ts';

/** Some values of one observation: steps from low to high, both included; or choices. */
export type Piece = NumberPiece | ChoicePiece;

export interface NumberPiece {
  readonly kind: 'range';
  readonly low: number;
  readonly high: number;
}

/** A choice: exactly this one. Of a several: this one is in, whatever else; null: none is. */
export interface ChoicePiece {
  readonly kind: 'choice';
  readonly choice: string | null;
}

/** What logic would read if the present set gave some value of the piece. */
export interface Supposed {
  readonly narrow: Float64Array;
  readonly wide: Float64Array;
}

/**
 * What would be read if an observation were given in the present set, as any value of a piece.
 *
 * With it the present set speaks for the whole group in which it is taken, so that no earlier value of that group stands in
 * any longer. Look backs stay as they are: over what is needed, a missing value counted as everything that it could be.
 */
export function suppose(observation: Observation, piece: Piece, situation: Situation): Supposed {
  const { bounds } = situation;
  const wide = Float64Array.from(bounds.wide);
  const replaced = withoutEarlierOf(observation, situation, wide);
  const isOne = bounds.narrow === bounds.wide && !bounds.facts.doubts.has(observation.name);
  const narrow = isOne ? wide : Float64Array.from(replaced ?? bounds.narrow);
  put(wide, observation, inDoubt(piece, observation, situation), situation);
  if (!isOne) put(narrow, observation, piece, situation);
  return { narrow, wide };
}

/** A piece as the faults of technique of the present set leave it: what is read now would be no surer than what was read. */
function inDoubt(piece: Piece, { name, possible }: Observation, { bounds }: Situation): Piece {
  const doubt = bounds.facts.doubts.get(name);
  if (!doubt || piece.kind !== 'range') return piece;
  const lowest = Math.min(piece.low, ...possible.map(({ low }) => low));
  const highest = Math.max(piece.high, ...possible.map(({ high }) => high));
  return {
    kind: 'range',
    low: Math.max(lowest, piece.low - doubt.high),
    high: Math.min(highest, piece.high + doubt.low),
  };
}

/** The narrow inputs once nothing earlier stands in for the group; null where nothing does now. Marks in `wide` what is then unknown. */
function withoutEarlierOf(
  observation: Observation,
  { bounds, compiled }: Situation,
  wide: Float64Array,
): Float64Array | null {
  const { present } = bounds.facts;
  const mates = [...compiled.protocol.observations.values()].filter(
    (each) => each === observation || (each.takenWith !== null && each.takenWith === observation.takenWith),
  );
  const earlier = mates.filter(({ name }) => present.get(name)?.state === 'earlier');
  if (earlier.length === 0) return null;
  const narrow = Float64Array.from(bounds.narrow);
  for (const { name } of earlier) {
    const places = placesOf(name, compiled);
    wide[places.known] = 0;
    narrow.set(wide.subarray(places.from, places.to), places.from);
  }
  narrow.set(wide.subarray(compiled.places.lookBacks), compiled.places.lookBacks);
  return narrow;
}

function placesOf(name: string, { places }: Situation['compiled']): ObservationPlaces {
  const found = places.observations.get(name);
  if (!found) throw new Error(`no observation is called ${name}`);
  return found;
}

function put(
  inputs: Float64Array,
  { name, kind, choices }: Observation,
  piece: Piece,
  { compiled }: Situation,
): void {
  const places = placesOf(name, compiled);
  inputs[places.known] = 1;
  inputs[places.unobtainable] = 0;
  if (places.missing !== -1) inputs[places.missing] = 0;
  if (piece.kind === 'range') {
    inputs[places.low] = piece.low;
    inputs[places.high] = piece.high;
    return;
  }
  choices.forEach(({ choice }, index) => {
    const isIt = choice === piece.choice;
    const mayBe = isIt || (kind === 'several' && piece.choice !== null);
    inputs[places.may[index] as number] = mayBe ? 1 : 0;
    const sure = places.sure[index];
    if (sure !== undefined) inputs[sure] = isIt ? 1 : 0;
  });
}
