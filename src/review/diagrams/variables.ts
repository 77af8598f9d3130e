import type { Observation, Protocol } from '../../protocol/protocol.ts';
import { spanFor, rangeOf, type Span } from '../../series/ranges.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import { clustersOf } from './clusters.ts';
import { couplingsOf } from './couplings.ts';
import { startsOf } from './starts.ts';

/** A way of having no value, and what the observation then may be. */
export interface Lack {
  /** What stands in its place is `if_not_stated`; else it is missing. */
  readonly assumed: boolean;
  readonly unobtainable: boolean;
  /** Of a number; of anything else 0 to 0. */
  readonly range: Span;
  /** The assumed choice; null when it may be any. */
  readonly choice: string | null;
}

/**
 * One question that a diagram asks of a set: the value of an observation, or how it lacks one. Its pieces are numbered: first the
 * values, then the lacks.
 *
 * Of a number each piece is a stretch of steps that nothing tells apart, or one single step where the number is reckoned with. Of a several each
 * choice is a question of its own (`member`), beside the one whether it is known.
 */
export interface Variable {
  readonly observation: Observation;
  /** The choice of a several that is asked for; null else. */
  readonly member: string | null;
  /** How many values there are, before the lacks. */
  readonly values: number;
  /** The first step of each stretch; null when each step is a piece of its own, from `span.low` on. */
  readonly starts: readonly number[] | null;
  /** Of a number; of anything else 0 to 0. */
  readonly span: Span;
  readonly lacks: readonly Lack[];
}

/** How many pieces a variable has. */
export const piecesOf = ({ values, lacks }: Variable): number => values + lacks.length;

/** The steps of one piece of a number, both ends included. */
export function stepsOf({ starts, span, values }: Variable, piece: number): Span {
  if (!starts) return { low: span.low + piece, high: span.low + piece };
  const low = starts[piece] as number;
  return { low, high: piece + 1 < values ? (starts[piece + 1] as number) - 1 : span.high };
}

/** The piece that holds a step. */
export function pieceAt({ starts, span }: Variable, step: number): number {
  return starts ? starts.findLastIndex((start) => start <= step) : step - span.low;
}

/** More steps than this are asked after all others, wherever they are reckoned with: an age in sixteenths of a day. */
const many = 5000;

/**
 * The variables of some protocols that are asked together, in the order in which diagrams ask them: first the numbers that are reckoned with, those that meet beside
 * each other and the largest clusters of them first; in a cluster first what most is reckoned from.
 */
export function variablesOf(protocols: readonly Protocol[]): Variable[] {
  const observations = new Map(protocols.flatMap((protocol) => [...protocol.observations]));
  const couplings = couplingsOf(protocols);
  const clusters = clustersOf(protocols, [...couplings.keys()]);
  const sizes = new Map<number, number>();
  for (const [name, cluster] of clusters)
    sizes.set(cluster, (sizes.get(cluster) ?? 0) + sizeOf(observations.get(name)));
  const rank = (observation: Observation): readonly [number, number, number] => {
    const coupled = couplings.get(observation.name);
    if (coupled === undefined) return [1, 0, 0];
    const cluster = clusters.get(observation.name) ?? 0;
    return [-(sizes.get(cluster) ?? 0), cluster, sizeOf(observation) > many ? 1 : -coupled];
  };
  const inOrder = [...observations.values()].sort((left, right) => byRank(rank(left), rank(right)));
  return inOrder.flatMap((observation) => {
    const starts = couplings.has(observation.name) ? null : startsOf(observation, protocols);
    return questionsOf(observation, starts);
  });
}

function sizeOf(observation: Observation | undefined): number {
  const { low, high } = observation ? possibleRange(observation) : { low: 0, high: 0 };
  return high - low + 1;
}

const byRank = (left: readonly number[], right: readonly number[]): number =>
  left.map((each, index) => each - (right[index] as number)).find((each) => each !== 0) ?? 0;

function questionsOf(observation: Observation, starts: readonly number[] | null): Variable[] {
  const { kind, choices } = observation;
  const lacks = lacksOf(observation);
  const none = { low: 0, high: 0 };
  if (kind === 'number') {
    const span = possibleRange(observation);
    const values = starts ? starts.length : span.high - span.low + 1;
    return [{ observation, member: null, values, starts, span, lacks }];
  }
  const plain = { observation, starts: null, span: none };
  if (kind !== 'several') return [{ ...plain, member: null, values: choices.length, lacks }];
  return [
    { ...plain, member: null, values: 1, lacks },
    ...choices.map(({ choice }) => ({ ...plain, member: choice, values: 2, lacks: [] })),
  ];
}

function lacksOf({ kind, possible, ifNotStated }: Observation): Lack[] {
  const ranges = ifNotStated === null && kind === 'number' ? rangesOf(possible) : [assumedRange(ifNotStated)];
  const choice = ifNotStated === null || kind === 'number' ? null : String(ifNotStated);
  return ranges.flatMap((range) =>
    [false, true].map((unobtainable) => ({ assumed: ifNotStated !== null, unobtainable, range, choice })),
  );
}

function assumedRange(ifNotStated: Observation['ifNotStated']): Span {
  return typeof ifNotStated === 'number' ? { low: ifNotStated, high: ifNotStated } : { low: 0, high: 0 };
}

/** Everything that a missing number may be: at an unknown age, and at each age. */
function rangesOf(possible: Observation['possible']): Span[] {
  const range = rangeOf(possible);
  if (!range) return [];
  const all = [range.hull, ...possible].map(({ low, high }) => [`${low} ${high}`, { low, high }] as const);
  return [...new Map(all).values()];
}

/** What is possible for an observation at an age; at any, where the age is not known. */
export function possibleAt({ possible }: Observation, age: Span | null): Span {
  const range = rangeOf(possible);
  return range ? spanFor(range, age) : { low: 0, high: 0 };
}
