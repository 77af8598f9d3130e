import type { Input } from '../../logic/inputs.ts';
import type { Logic } from '../../logic/logic.ts';
import type { LookBack, Observation, ObservationEntry, Protocol } from '../../protocol/protocol.ts';
import { readerOf } from '../../series/protocol-to-reader.ts';
import type { Pair } from '../../series/reader.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import { withFaults, type TargetFault } from '../with-faults.ts';

/** What a module reads, and where the numbers of its bounds stand. */
export interface ModuleInputs {
  readonly protocol: Protocol;
  readonly logic: Logic;
  readonly observations: readonly ModuleObservation[];
  readonly lookBacks: readonly { readonly name: string; readonly how: LookBack }[];
  readonly contradictions: readonly Pair[];
  readonly faults: readonly TargetFault[];
  /** The place of an input in the bounds; −1 where there is none. */
  readonly placeOf: (owner: string, part: Input['part'], choice?: string) => number;
  readonly indexOf: (observation: string) => number;
}

export interface ModuleObservation {
  readonly index: number;
  readonly entry: ObservationEntry | Observation;
  readonly choices: readonly string[];
  /** The lowest and the highest step, or place in the list of choices, or bits of several. */
  readonly low: number;
  readonly high: number;
  /** Possible at any age: inside every band. */
  readonly surely: { readonly low: number; readonly high: number };
  /** Steps or a place in the list of choices; null without one. */
  readonly assumed: number | null;
}

export function moduleInputs(bare: Logic, protocol: Protocol): ModuleInputs {
  const { faults, logic } = withFaults(bare, protocol);
  const reader = readerOf(protocol);
  // What is plausible is not asked here: the age is read where it decides what is possible, or where the protocol itself reads it.
  const banded = reader.observations.some(({ role, entry }) => role !== null && entry.possible.length > 1);
  const read = reader.observations.filter((each) => each.role !== null || (banded && each === reader.age));
  const observations = read.map(({ entry }, index) => moduleObservation(entry, index));
  const places = new Map(logic.inputs.map(({ name }, index) => [name, index]));
  const indices = new Map(observations.map(({ entry, index }) => [entry.name, index]));
  return {
    protocol,
    logic,
    observations,
    lookBacks: [...protocol.measures.values()].flatMap(({ name, how }) =>
      'over' in how ? [{ name, how }] : [],
    ),
    contradictions: reader.contradictions,
    faults,
    placeOf: (owner, part, choice) =>
      places.get(`${owner}:${part}${choice === undefined ? '' : `:${choice}`}`) ?? -1,
    indexOf: (observation) => indices.get(observation) ?? -1,
  };
}

function moduleObservation(entry: ObservationEntry, index: number): ModuleObservation {
  const choices = entry.choices.map(({ choice }) => choice);
  const assumed = entry.standing ? entry.ifNotStated : null;
  const common = {
    index,
    entry,
    choices,
    assumed: typeof assumed === 'string' ? choices.indexOf(assumed) : assumed,
  };
  if (entry.kind !== 'number') {
    const high = entry.kind === 'several' ? 2 ** choices.length - 1 : choices.length - 1;
    return { ...common, low: 0, high, surely: { low: 0, high } };
  }
  const lows = entry.possible.map(({ low }) => low);
  const highs = entry.possible.map(({ high }) => high);
  return {
    ...common,
    ...possibleRange(entry),
    surely: { low: Math.max(...lows), high: Math.min(...highs) },
  };
}
