import Fraction from 'fraction.js';
import type { Limit, Observation, Protocol } from '../../protocol/protocol.ts';

/**
 * A protocol in which each limit that may be changed is something that varies from set to set, inside its bounds. So what is proven of it
 * holds for every value of each limit.
 */
export function withOpenLimits(protocol: Protocol): Protocol {
  const open = new Map([...protocol.limits].filter(([, { between }]) => between !== null));
  if (open.size === 0) return protocol;
  const read = (value: unknown): unknown => asObservation(value, open);
  const opened = [...open.values()].map((limit): [string, Observation] => [limit.name, observationOf(limit)]);
  return {
    ...protocol,
    observations: new Map([...protocol.observations, ...opened]),
    limits: new Map([...protocol.limits].filter(([name]) => !open.has(name))),
    applies: read(protocol.applies) as Protocol['applies'],
    faults: read(protocol.faults) as Protocol['faults'],
    measures: read(protocol.measures) as Protocol['measures'],
    rules: read(protocol.rules) as Protocol['rules'],
    rulesInOrder: read(protocol.rulesInOrder) as Protocol['rules'],
    partitions: read(protocol.partitions) as Protocol['partitions'],
  };
}

function observationOf({ name, title, unit, stepsPerUnit, value, between }: Limit): Observation {
  const [low, high] = between ?? [value, value];
  return {
    name,
    title,
    short: title,
    meaning: null,
    kind: 'number',
    unit,
    stepsPerUnit,
    possible: [{ ageBelow: null, low, high }],
    plausible: [],
    ordinary: value,
    choices: [],
    loinc: null,
    goodFor: null,
    takenWith: null,
    standing: false,
    setBy: null,
    ifNotStated: null,
    alsoCalled: [],
    role: 'needs',
  };
}

/** Plain data in which each mention of a limit that is open is one of an observation. What mentions none stays the very same. */
function asObservation(value: unknown, open: ReadonlyMap<string, Limit>): unknown {
  if (Array.isArray(value)) {
    const all = value.map((each: unknown) => asObservation(each, open));
    return all.some((each, index) => each !== value[index]) ? all : value;
  }
  if (value instanceof Map)
    return new Map(
      [...(value as Map<string, unknown>)].map(([key, each]) => [key, asObservation(each, open)]),
    );
  if (typeof value !== 'object' || value === null || value instanceof Fraction) return value;
  const { kind, name } = value as { kind?: unknown; name?: unknown };
  if (kind === 'limit' && typeof name === 'string' && open.has(name)) return { kind: 'observation', name };
  const entries = Object.entries(value).map(([key, each]) => [key, asObservation(each, open)] as const);
  const before = value as Readonly<Record<string, unknown>>;
  return entries.some(([key, each]) => each !== before[key]) ? Object.fromEntries(entries) : value;
}
