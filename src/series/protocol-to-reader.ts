import { inputsOf, type Input } from '../logic/inputs.ts';
import type {
  Contradiction,
  LookBack,
  Observation,
  ObservationEntry,
  Protocol,
} from '../protocol/protocol.ts';
import { wholePair } from '../vocabulary/whole-pair.ts';
import { readFaults } from './apply-faults.ts';
import { unchanged } from './limits.ts';
import { judgeOf, type JudgeNames } from './judge.ts';
import { observationsInCondition, observationsInLookBack } from './look-back-names.ts';
import { rangeOf } from './ranges.ts';
import type { Places, ReadObservation, Value } from './read-observation.ts';
import type { Pair, Reader, ReadLookBack } from './reader.ts';

const remembered = new WeakMap<Protocol, Reader>();

/** What can be worked out of a protocol before the first set; once for each protocol. */
export function readerOf(protocol: Protocol): Reader {
  const known = remembered.get(protocol);
  if (known) return known;
  const reader = prepare(protocol);
  remembered.set(protocol, reader);
  return reader;
}

type PlaceOf = (owner: string, part: Input['part'], choice?: string | null) => number;

function prepare(protocol: Protocol): Reader {
  const inputs = inputsOf(protocol);
  const places = new Map(inputs.map((input, index) => [input.name, index]));
  const placeOf: PlaceOf = (owner, part, choice = null) =>
    places.get(`${owner}:${part}${choice === null ? '' : `:${choice}`}`) ?? -1;
  const groups = [...new Set([...protocol.observations.values()].flatMap(groupOf))];
  const lookBacks = lookBacksOf(protocol);
  const entries = [...protocol.observations.values(), ...ageForRanges(protocol)];
  const observations = [...entries, ...forFaults(protocol, entries)].map((entry, index) =>
    readObservation(entry, index, groups, lookBacks, placeOf),
  );
  const byName = new Map(observations.map((read) => [read.name, read]));
  const named = (name: string): ReadObservation => found(byName.get(name), name);
  const limits = [...protocol.limits.values()].map((limit) => ({
    limit,
    place: placeOf(limit.name, 'value'),
  }));
  const names: JudgeNames = {
    observation: named,
    limit: (name) => {
      const index = limits.findIndex((each) => each.limit.name === name);
      return { limit: found(limits[index], name).limit, index };
    },
  };
  return {
    size: inputs.length,
    observations,
    byName,
    groups: groups.map((_, group) => observations.filter((read) => read.group === group)),
    foreignGroups: foreignGroups(protocol, byName, groups),
    age: rangesByAge(protocol) ? (byName.get('age') ?? null) : null,
    faults: readFaults(protocol, byName, names),
    contradictions: protocol.contradictions.map((each) => pairOf(each, named)),
    limits,
    ownLimits: {
      steps: limits.map(({ limit }) => limit.value),
      facts: new Map(limits.map(({ limit }) => [limit.name, unchanged(limit)])),
      taken: [],
      refused: [],
    },
    lookBacks: lookBacks.map(([name, how]) => readLookBack(name, how, names, placeOf)),
    longest: Math.max(0, ...lookBacks.map(([, { over }]) => over)),
  };
}

function found<T>(value: T | undefined, name: string): T {
  if (value === undefined) throw new RangeError(`the protocol does not read ${name}`);
  return value;
}

/** Standing observations have no age, so that they are in no group. */
const groupOf = ({ takenWith, standing }: ObservationEntry): string[] =>
  takenWith === null || standing ? [] : [takenWith];

function foreignGroups(
  { vocabulary }: Protocol,
  byName: ReadonlyMap<string, ReadObservation>,
  groups: readonly string[],
): ReadonlyMap<string, number> {
  const foreign = [...vocabulary.values()].filter(({ name }) => !byName.has(name));
  const numbered = foreign.map((entry) => [entry.name, groups.indexOf(groupOf(entry)[0] ?? '')] as const);
  return new Map(numbered.filter(([, group]) => group !== -1));
}

function lookBacksOf(protocol: Protocol): (readonly [string, LookBack])[] {
  return [...protocol.measures.values()].flatMap(({ name, how }) =>
    'over' in how ? [[name, how] as const] : [],
  );
}

const rangesByAge = ({ observations }: Pick<Protocol, 'observations'>): boolean =>
  [...observations.values()].some(({ possible, plausible }) => possible.length > 1 || plausible.length > 1);

/** The age, where only the ranges ask for it and the protocol itself does not read it. */
function ageForRanges({ observations, vocabulary }: Protocol): ObservationEntry[] {
  const age = vocabulary.get('age');
  return age && !observations.has('age') && rangesByAge({ observations }) ? [age] : [];
}

/** What faults of technique ask for and the protocol itself does not read. */
function forFaults(
  { faults, vocabulary }: Protocol,
  before: readonly ObservationEntry[],
): ObservationEntry[] {
  const read = new Set(before.map(({ name }) => name));
  const asked = new Set(faults.flatMap(({ when }) => [...observationsInCondition(when)]));
  return [...asked].flatMap((name) => (read.has(name) ? [] : [found(vocabulary.get(name), name)]));
}

function readObservation(
  entry: ObservationEntry | Observation,
  index: number,
  groups: readonly string[],
  lookBacks: readonly (readonly [string, LookBack])[],
  placeOf: PlaceOf,
): ReadObservation {
  const { name } = entry;
  const choices = new Map(entry.choices.map(({ choice }, position) => [choice, position]));
  const windows = lookBacks.filter(([, how]) => observationsInLookBack(how).has(name));
  return {
    index,
    name,
    entry,
    role: 'role' in entry ? entry.role : null,
    places: placesOf(entry, placeOf),
    goodFor: entry.goodFor ?? 0,
    group: groups.indexOf(groupOf(entry)[0] ?? ''),
    choices,
    everyChoice: [...choices.values()],
    possible: rangeOf(entry.possible),
    plausible: rangeOf(entry.plausible),
    assumed: entry.standing ? assumedOf(entry, choices) : null,
    watched: Math.max(0, ...windows.map(([, { over }]) => over)),
  };
}

function placesOf({ name, choices }: ObservationEntry, placeOf: PlaceOf): Places {
  const first = choices[0]?.choice ?? '';
  return {
    low: placeOf(name, 'low'),
    high: placeOf(name, 'high'),
    may: placeOf(name, 'may', first),
    sure: placeOf(name, 'sure', first),
    known: placeOf(name, 'known'),
    unobtainable: placeOf(name, 'unobtainable'),
    missing: placeOf(name, 'missing'),
  };
}

function assumedOf(
  { name, ifNotStated }: ObservationEntry,
  choices: ReadonlyMap<string, number>,
): Value | null {
  if (ifNotStated === null) return null;
  if (typeof ifNotStated === 'number')
    return { low: ifNotStated, high: ifNotStated, asRead: null, picked: [] };
  return {
    low: 0,
    high: 0,
    asRead: null,
    picked: [found(choices.get(ifNotStated), `${name}: ${ifNotStated}`)],
  };
}

function pairOf(
  { lower, higher, mayBeEqual, says }: Contradiction,
  named: (name: string) => ReadObservation,
): Pair {
  const [below, above] = [named(lower), named(higher)];
  return { lower: below, higher: above, mayBeEqual, says, ...wholePair(below.entry, above.entry) };
}

function readLookBack(name: string, how: LookBack, names: JudgeNames, placeOf: PlaceOf): ReadLookBack {
  const of = how.observation === null ? null : names.observation(how.observation);
  const counts = how.kind === 'count' || how.kind === 'minutes_since';
  return {
    kind: how.kind,
    of,
    where: how.where && judgeOf(how.where, names),
    whereReads: readIn(how.where, names),
    condition: how.condition && judgeOf(how.condition, names),
    over: how.over,
    leftOut: how.presentSet === 'left_out',
    longestGap: how.longestGap,
    asksYes: counts && of?.entry.kind === 'yes_no',
    places: {
      low: placeOf(name, 'low'),
      high: placeOf(name, 'high'),
      sure: placeOf(name, 'sure'),
      maybe: placeOf(name, 'maybe'),
      open: placeOf(name, 'open'),
      count: placeOf(name, 'count'),
    },
  };
}

function readIn(where: LookBack['where'], names: JudgeNames): readonly ReadObservation[] {
  return where ? [...observationsInCondition(where)].map((name) => names.observation(name)) : [];
}
