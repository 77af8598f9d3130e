import Fraction from 'fraction.js';
import type { Observation } from '../../protocol/protocol.ts';
import type { Given, GivenSet, Observed, Series } from '../../series/series.ts';
import type { Space } from './space.ts';

const given: Given = { text: '', moved: false };

/** A point as a series of one set, at a time or without one. */
export function pointToSet(point: Float64Array, space: Space, at: number | null = null): GivenSet {
  const observed = new Map<string, Observed>();
  for (const [name, observation] of observationsOf(space)) {
    const value = observedAt(observation, point, space);
    if (value) observed.set(name, value);
  }
  return { at, atText: at === null ? null : new Date(at).toISOString().replace('.000Z', 'Z'), observed };
}

export const seriesOf = (sets: readonly GivenSet[]): Series => {
  const last = sets.at(-1);
  return { at: last?.at ?? null, atText: last?.atText ?? null, sets, standing: new Map(), limits: new Map() };
};

/** The same as a set in JSON. */
export function pointToJson(point: Float64Array, space: Space): Record<string, unknown> {
  return Object.fromEntries(
    [...observationsOf(space)].map(([name, observation]) => [name, jsonAt(observation, point, space)]),
  );
}

/** Every observation that either side reads. */
export const observationsOf = ({ dimensions }: Space): ReadonlyMap<string, Observation> =>
  new Map(
    dimensions.flatMap(({ observation }) => (observation ? [[observation.name, observation] as const] : [])),
  );

function valueAt(key: string, point: Float64Array, { places }: Space): number {
  return point[places.get(key) ?? -1] ?? 0;
}

const chosen = ({ name, choices }: Observation, point: Float64Array, space: Space): string[] =>
  choices.flatMap(({ choice }) => (valueAt(`${name}:${choice}`, point, space) === 1 ? [choice] : []));

function observedAt(observation: Observation, point: Float64Array, space: Space): Observed | null {
  const { name, kind, choices } = observation;
  if (kind === 'several') return { kind: 'several', choices: chosen(observation, point, space), given };
  const value = valueAt(name, point, space);
  if (kind === 'number') return { kind: 'number', low: value, high: value, value, given };
  const choice = choices[value]?.choice;
  return choice === undefined ? null : { kind: 'choice', choice, given };
}

function jsonAt(observation: Observation, point: Float64Array, space: Space): unknown {
  const { name, kind, choices, stepsPerUnit } = observation;
  if (kind === 'several') return chosen(observation, point, space);
  const value = valueAt(name, point, space);
  return kind === 'number'
    ? new Fraction(value).div(stepsPerUnit).valueOf()
    : (choices[value]?.choice ?? null);
}
