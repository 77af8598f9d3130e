import type { Contradiction, LookBack, Observation } from '../../protocol/protocol.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import { lookBackRange } from '../box.ts';
import { lookBackKey } from '../look-back-key.ts';
import type { Side } from './side.ts';

/**
 * One thing that a set says, as whole numbers from `low` to `high`: a number in its steps; a choice by its place among the choices;
 * one choice of a several as 0 and 1; a look back in its steps, whatever earlier sets there are.
 */
export interface Dimension {
  /** `systolic`, `technique_faults:cuff_too_small`, `look back systolic_change`. */
  readonly key: string;
  readonly kind: 'number' | 'choice' | 'flag' | 'look_back';
  /** Null for a look back. */
  readonly observation: Observation | null;
  /** Of a flag: which choice it is. */
  readonly choice: string | null;
  /** Of a look back. */
  readonly lookBack: { readonly measure: string; readonly how: LookBack; readonly member: number } | null;
  readonly low: number;
  readonly high: number;
  /** What is most usual: where witnesses are looked for first. */
  readonly usual: number;
}

/** All complete sets that two sides can be asked about. */
export interface Space {
  readonly dimensions: readonly Dimension[];
  readonly places: ReadonlyMap<string, number>;
  /** Pairs of dimensions of which the first must be lower by so much, in steps; any other set is refused as contradictory. */
  readonly orders: readonly { readonly lower: number; readonly higher: number; readonly by: number }[];
  /** Boxes that have no set in common and hold every set between them: one for each band of ages with other possible values. */
  readonly sections: readonly Section[];
}

export interface Section {
  readonly lows: Float64Array;
  readonly highs: Float64Array;
}

export function spaceOf(sides: readonly Side[]): Space {
  const dimensions: Dimension[] = [];
  const places = new Map<string, number>();
  const add = (dimension: Dimension): void => {
    if (places.has(dimension.key)) return;
    places.set(dimension.key, dimensions.length);
    dimensions.push(dimension);
  };
  const members = sides.flatMap((side) => side.members);
  for (const { protocol } of members)
    for (const observation of protocol.observations.values())
      for (const each of ofObservation(observation)) add(each);
  members.forEach(({ protocol }, member) => {
    for (const { name, how } of protocol.measures.values()) {
      if (!('over' in how)) continue;
      const { low, high } = lookBackRange(how, protocol);
      const lookBack = { measure: name, how, member };
      const usual = low <= 0 && high >= 0 ? 0 : low;
      const key = lookBackKey(name, how);
      add({ key, kind: 'look_back', observation: null, choice: null, lookBack, low, high, usual });
      // Whether there are earlier sets enough for it to have a value at all.
      const hasValue = ['count', 'minutes_since', 'held'].includes(how.kind) ? 1 : 0;
      add({
        key: valueKey(key),
        kind: 'flag',
        observation: null,
        choice: null,
        lookBack,
        low: hasValue,
        high: 1,
        usual: hasValue,
      });
    }
  });
  const contradictions = new Map(
    members.flatMap(({ protocol }) =>
      protocol.contradictions.map((each) => [`${each.lower} ${each.higher}`, each] as const),
    ),
  );
  return {
    dimensions,
    places,
    orders: ordersOf([...contradictions.values()], places),
    sections: sectionsOf(dimensions, places),
  };
}

/** Of a look back: whether it has a value. */
export const valueKey = (lookBack: string): string => `${lookBack} has a value`;

function ofObservation(observation: Observation): Dimension[] {
  const { name, kind, choices, ordinary } = observation;
  const common = { observation, choice: null, lookBack: null };
  if (kind === 'number') {
    const { low, high } = possibleRange(observation);
    const usual = typeof ordinary === 'number' ? ordinary : low;
    return [{ ...common, key: name, kind, low, high, usual }];
  }
  const listed = Array.isArray(ordinary) ? (ordinary as readonly string[]) : [];
  if (kind === 'several') {
    return choices.map(({ choice }) => ({
      ...common,
      key: `${name}:${choice}`,
      kind: 'flag',
      choice,
      low: 0,
      high: 1,
      usual: listed.includes(choice) ? 1 : 0,
    }));
  }
  const ordinarily = choices.findIndex(({ choice }) => listed.includes(choice));
  // Of a yes or no for which nothing is ordinary, no is the plainer.
  const usual = ordinarily >= 0 ? ordinarily : choices.findIndex(({ choice }) => choice === 'no');
  return [
    { ...common, key: name, kind: 'choice', low: 0, high: choices.length - 1, usual: Math.max(usual, 0) },
  ];
}

function ordersOf(contradictions: readonly Contradiction[], places: Space['places']): Space['orders'] {
  return contradictions.flatMap(({ lower, higher, mayBeEqual }) => {
    const [first, second] = [places.get(lower), places.get(higher)];
    if (first === undefined || second === undefined) return [];
    return [{ lower: first, higher: second, by: mayBeEqual ? 0 : 1 }];
  });
}

function sectionsOf(dimensions: readonly Dimension[], places: Space['places']): Section[] {
  const whole = {
    lows: Float64Array.from(dimensions, ({ low }) => low),
    highs: Float64Array.from(dimensions, ({ high }) => high),
  };
  const age = places.get('age');
  if (age === undefined) return [whole];
  const { low, high } = dimensions[age] as Dimension;
  const edges = new Set(
    dimensions.flatMap(({ kind, observation }) =>
      kind === 'number' && observation ? observation.possible.flatMap(({ ageBelow }) => ageBelow ?? []) : [],
    ),
  );
  const starts = [
    low,
    ...[...edges].filter((at) => at > low && at <= high).sort((left, right) => left - right),
  ];
  return starts.map((start, index) => {
    const lows = whole.lows.slice();
    const highs = whole.highs.slice();
    dimensions.forEach(({ kind, observation }, at) => {
      if (kind !== 'number' || !observation) return;
      const band = observation.possible.find(({ ageBelow }) => ageBelow === null || start < ageBelow);
      if (band) [lows[at], highs[at]] = [band.low, band.high];
    });
    [lows[age], highs[age]] = [start, (starts[index + 1] ?? high + 1) - 1];
    return { lows, highs };
  });
}
