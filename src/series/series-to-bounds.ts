import type { Protocol } from '../protocol/protocol.ts';
import type { Bounds, Remark } from './bounds.ts';
import type { GivenSet, Series } from './series.ts';
import { Timeline } from './timeline.ts';

/**
 * What a protocol reads of a series at its evaluation time: the flat numbers of logic, and what is to be told of them.
 *
 * The order of the sets means nothing; sets at one instant are one. A set after the evaluation time is
 * refused: each of its values is listed, and none is used.
 */
export function seriesToBounds(protocol: Protocol, series: Series): Bounds {
  const timeline = new Timeline(protocol, series);
  const { at } = series;
  const inOrder =
    series.sets.length < 2
      ? series.sets
      : series.sets.toSorted((left, right) => (left.at ?? 0) - (right.at ?? 0));
  const late: GivenSet[] = [];
  for (const set of inOrder) {
    if (at !== null && set.at !== null && set.at > at) late.push(set);
    else timeline.push(set);
  }
  const bounds = timeline.boundsAt(at, series.atText);
  if (late.length === 0) return bounds;
  const { facts } = bounds;
  return {
    ...bounds,
    facts: { ...facts, refused: [...facts.refused, ...refusedAsLate(late, series.atText)] },
  };
}

function refusedAsLate(sets: readonly GivenSet[], atText: string | null): readonly Remark[] {
  const refused = sets.flatMap((set) =>
    [...set.observed].map(([observation, { given }]) => ({
      observation,
      given: given.text,
      because: `it was taken at ${set.atText ?? ''}, after ${atText ?? ''}, the time that is asked about; it is not used`,
    })),
  );
  return refused.toSorted((left, right) => compare(keyOf(left), keyOf(right)));
}

const keyOf = ({ because, observation, given }: Remark): string => `${because} ${observation} ${given}`;
const compare = (left: string, right: string): number => (left < right ? -1 : left > right ? 1 : 0);
