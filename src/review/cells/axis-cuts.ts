import { cutPoints } from '../../logic/cut-points.ts';
import type { Limit, Protocol } from '../../protocol/protocol.ts';
import { observationsOfCondition } from '../../protocol/walk.ts';
import type { SeriesFacts } from '../../series/bounds.ts';
import { readerOf } from '../../series/protocol-to-reader.ts';
import type { Pair } from '../../series/reader.ts';
import type { GivenSet } from '../../series/series.ts';

/** What the cuts of an axis depend on. */
export interface CutAsked {
  readonly protocol: Protocol;
  readonly axes: readonly string[];
  readonly held: GivenSet;
  /** With nothing on the axes. */
  readonly facts: SeriesFacts;
  /** With some points on the axes, at least one of them free of contradiction where any is. */
  readonly probes: readonly SeriesFacts[];
}

/**
 * Where the reading of a set changes its way with one axis, before any logic: the first step of each piece, without the very first.
 * Between two cuts every number that logic reads is constant, or moves step by step with the axis.
 *
 * Cut are the ends of what is possible at any age, the ages at which ranges change, contradictions with what is held, the numbers of
 * conditions inside look backs and faults, and where a fault's doubt meets the end of the possible range. A cut too many does no harm.
 */
export function axisCuts(name: string, asked: CutAsked): number[] {
  const { protocol, held, facts } = asked;
  const observation = protocol.observations.get(name);
  if (!observation) return [];
  const cuts: number[] = observation.possible.flatMap(({ low, high }) => [low, high + 1]);
  if (name === 'age') {
    for (const { possible } of protocol.vocabulary.values())
      cuts.push(...possible.flatMap(({ ageBelow }) => (ageBelow === null ? [] : [ageBelow])));
  }
  for (const pair of readerOf(protocol).contradictions) cuts.push(...againstHeld(name, pair, held));
  const judged = judgedCuts(name, protocol, facts);
  const doubts = doubtsOf(name, asked);
  for (const { low, high } of doubts) {
    for (const at of judged) cuts.push(at - low, at + high);
    for (const end of observation.possible) cuts.push(end.low + high, end.high - low + 1);
  }
  const [first, last] = [
    Math.min(...observation.possible.map(({ low }) => low)),
    Math.max(...observation.possible.map(({ high }) => high)),
  ];
  return [...new Set([...cuts, ...judged])]
    .filter((at) => at > first && at <= last)
    .sort((left, right) => left - right);
}

/** The step of the higher one from which `lower` no longer contradicts it, and that of the lower one from which it does. */
export const lowestHigher = ({ scale, factor, shift, mayBeEqual }: Pair, lower: number): number => {
  const edge = (scale * lower - shift) / factor;
  return mayBeEqual ? Math.ceil(edge) : Math.floor(edge) + 1;
};
export const lowestClash = ({ scale, factor, shift, mayBeEqual }: Pair, higher: number): number => {
  const edge = (factor * higher + shift) / scale;
  return mayBeEqual ? Math.floor(edge) + 1 : Math.ceil(edge);
};

/** Where a contradiction with what is held begins or ends. */
function againstHeld(name: string, pair: Pair, { observed }: GivenSet): number[] {
  const isLower = pair.lower.name === name;
  if (!isLower && pair.higher.name !== name) return [];
  const partner = isLower ? pair.higher : pair.lower;
  const said = observed.get(partner.name);
  const bands = partner.entry.possible.flatMap(({ low, high }) => [low, high]);
  const ends =
    said?.kind === 'number'
      ? [said.low, said.high, said.value]
      : said && 'bound' in said
        ? [said.bound - 1, said.bound, said.bound + 1]
        : [];
  if (ends.length === 0) return [];
  const edge = (at: number): number => (isLower ? lowestClash(pair, at) : lowestHigher(pair, at));
  return [...ends, ...bands].flatMap((at) => (at === null ? [] : [edge(at)]));
}

/** The numbers of conditions that read the set itself: inside look backs and faults. */
function judgedCuts(name: string, protocol: Protocol, facts: SeriesFacts): readonly number[] {
  const measures = [...protocol.measures].filter(([, { how }]) => 'over' in how);
  const limits = [...protocol.limits].map(([limit, each]): [string, Limit] => [
    limit,
    { ...each, value: facts.limits.get(limit)?.steps ?? each.value },
  ]);
  const inner: Protocol = {
    ...protocol,
    applies: null,
    rules: [],
    rulesInOrder: [],
    partitions: new Map(),
    measures: new Map(measures),
    limits: new Map(limits),
  };
  return cutPoints(inner).get(name) ?? [];
}

interface Sum {
  readonly low: number;
  readonly high: number;
}

/**
 * How far faults that are there can together make an axis read wrong, and those that a number on an axis, or one that an axis can
 * contradict, may bring about.
 */
function doubtsOf(name: string, { protocol, axes, probes }: CutAsked): readonly Sum[] {
  const { faults, contradictions } = protocol;
  const used = probes.filter(({ present }) => present.get(name)?.state === 'given');
  const found = new Set(used.flatMap((facts) => facts.faults.map(({ fault }) => fault)));
  const isThere = (fault: string): boolean => used.length === 0 || found.has(fault);
  const mayTurn = new Set(contradictions.flatMap(({ lower, higher }) => [lower, higher]));
  let sums: Sum[] = [];
  for (const fault of faults) {
    const [high, low] = [fault.readsHigh.get(name) ?? 0, fault.readsLow.get(name) ?? 0];
    const turns = observationsOfCondition(fault.when).some(
      (each) => mayTurn.has(each) || axes.includes(each),
    );
    if (high + low === 0 || !(isThere(fault.name) || turns)) continue;
    const more = [{ low: 0, high: 0 }, ...sums].map((sum) => ({ low: sum.low + low, high: sum.high + high }));
    const all = [...sums, ...more].map((sum) => [`${sum.low} ${sum.high}`, sum] as const);
    sums = [...new Map(all).values()];
  }
  return sums;
}
