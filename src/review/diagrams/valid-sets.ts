import type { Observation, Protocol } from '../../protocol/protocol.ts';
import { readerOf } from '../../series/protocol-to-reader.ts';
import type { Span } from '../../series/ranges.ts';
import type { Pair } from '../../series/reader.ts';
import { lowestClash, lowestHigher } from '../cells/axis-cuts.ts';
import type { Diagram, Diagrams } from './diagrams.ts';
import { eachPiece, type Ordered } from './input-diagrams.ts';
import { possibleAt, stepsOf, type Variable } from './variables.ts';

interface Asked extends Ordered {
  readonly protocol: Protocol;
  readonly store: Diagrams;
}

/** That nothing in a set contradicts. */
export const withoutContradictions = (asked: Asked): readonly Diagram[] =>
  readerOf(asked.protocol)
    .contradictions.map((pair) => withoutContradiction(pair, asked))
    .filter((each) => each !== asked.store.yes);

/** That each value, and what is missing, is as the age allows: by the place of the observation. */
export const agesAllow = (asked: Asked): ReadonlyMap<number, Diagram> =>
  new Map(
    [...asked.protocol.observations.values()]
      .map((each) => [asked.placeOf.get(each.name) as number, asAgeAllows(each, asked)] as const)
      .filter(([, each]) => each !== asked.store.yes),
  );

function withoutContradiction(pair: Pair, { variables, placeOf, store }: Asked): Diagram {
  const [lower, higher] = [pair.lower.name, pair.higher.name].map((name) => placeOf.get(name) as number) as [
    number,
    number,
  ];
  const first = Math.min(lower, higher);
  const last = Math.max(lower, higher);
  const [outer, inner] = [variables[first] as Variable, variables[last] as Variable];
  return eachPiece(
    first,
    outer,
    (value, lack) => {
      if (lack) return store.yes;
      const { low } = stepsOf(outer, value);
      const edge = (first === lower ? lowestHigher(pair, low) : lowestClash(pair, low)) - inner.span.low;
      const above = first === lower;
      return split(last, inner, edge, above, store);
    },
    store,
  );
}

/** Holds from a piece on, or before it; and for whatever lacks a value. */
function split(
  place: number,
  { values, lacks }: Variable,
  edge: number,
  above: boolean,
  store: Diagrams,
): Diagram {
  const at = Math.min(Math.max(edge, 0), values);
  const parts = [
    [at - 1, above ? store.no : store.yes],
    [values - 1, above ? store.yes : store.no],
    [values + lacks.length - 1, store.yes],
  ] as const;
  const kept = parts.filter(([end], index) => end >= 0 && (index !== 1 || at < values));
  return store.node(
    place,
    kept.map(([end]) => end),
    kept.map(([, kid]) => kid),
  );
}

/** Whether the value of an observation is possible at the age, and whether what it lacks may be what the age allows. */
function asAgeAllows(observation: Observation, asked: Asked): Diagram {
  const { variables, placeOf, store } = asked;
  const place = placeOf.get(observation.name) as number;
  const variable = variables[place] as Variable;
  if (observation.possible.length < 2) return store.yes;
  const within = (span: Span): Diagram => {
    const inside = (value: number): boolean => {
      const { low, high } = stepsOf(variable, value);
      return low >= span.low && high <= span.high;
    };
    const stands = (range: Span): boolean => range.low === span.low && range.high === span.high;
    return eachPiece(
      place,
      variable,
      (value, lack) => ((lack ? stands(lack.range) : inside(value)) ? store.yes : store.no),
      store,
    );
  };
  return store.or(...agesOf(observation, asked).map(({ is, span }) => store.and(is, within(span))));
}

/** Each age, as a function of the set, with what is possible at it for an observation; and the unknown age. */
function agesOf(
  observation: Observation,
  { variables, placeOf, store }: Asked,
): { is: Diagram; span: Span }[] {
  const place = placeOf.get('age');
  const age = place === undefined ? undefined : variables[place];
  if (place === undefined || !age) return [{ is: store.yes, span: possibleAt(observation, null) }];
  const last = age.values + age.lacks.length - 1;
  const known = observation.possible.map(({ ageBelow }, index) => {
    const from = observation.possible[index - 1]?.ageBelow ?? age.span.low;
    const to = (ageBelow ?? age.span.high + 1) - 1;
    const at = (step: number): number =>
      age.starts ? age.starts.findIndex((start) => start >= step) : step - age.span.low;
    const [begin, next] = [at(from), to >= age.span.high ? age.values : at(to + 1)];
    const parts = [
      [begin - 1, store.no],
      [next - 1, store.yes],
      [last, store.no],
    ] as const;
    const kept = parts.filter(([end]) => end >= 0);
    const is = store.node(
      place,
      kept.map(([end]) => end),
      kept.map(([, kid]) => kid),
    );
    return { is, span: possibleAt(observation, { low: from, high: from }) };
  });
  const unknown = store.node(place, [age.values - 1, last], [store.no, store.yes]);
  return [...known, { is: unknown, span: possibleAt(observation, null) }];
}
