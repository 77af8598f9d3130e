import type { Observation, Protocol } from '../../protocol/protocol.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import { everySet, type Absence, type Box } from '../box.ts';

/** One way in which an observation has no value, and what it may then be. */
interface Lack {
  readonly how: Absence;
  readonly range: readonly [number, number];
  readonly choices: readonly string[] | null;
}

/**
 * Every combination in which some of the observations have no value, those with few of them first. The values of the others
 * stay open. A number that is missing may be anything that is possible, at any age or at the patient's own.
 */
export function* absences(protocol: Protocol, names: readonly string[]): Generator<Box> {
  const whole = everySet(protocol);
  const observations = names.flatMap((name) => protocol.observations.get(name) ?? []);
  for (let count = 1; count <= observations.length; count += 1) {
    for (const some of subsets(observations, count)) yield* lacking(some, whole);
  }
}

function* subsets<T>(all: readonly T[], count: number, from = 0): Generator<T[]> {
  if (count === 0) {
    yield [];
    return;
  }
  for (let index = from; index <= all.length - count; index += 1) {
    for (const rest of subsets(all, count - 1, index + 1)) yield [all[index] as T, ...rest];
  }
}

function* lacking([first, ...rest]: readonly Observation[], box: Box): Generator<Box> {
  if (!first) {
    yield box;
    return;
  }
  for (const lack of lacksOf(first)) yield* lacking(rest, without(first, lack, box));
}

function lacksOf({ kind, possible, ifNotStated, ...observation }: Observation): Lack[] {
  if (ifNotStated !== null) {
    const assumed =
      typeof ifNotStated === 'number' ? ([ifNotStated, ifNotStated] as const) : ([0, 0] as const);
    return [{ how: 'assumed', range: assumed, choices: [String(ifNotStated)] }];
  }
  const hull = possibleRange({ ...observation, kind, possible, ifNotStated });
  const ranges = new Map(
    [hull, ...possible].map(({ low, high }) => [`${low} ${high}`, [low, high] as const]),
  );
  return (['missing', 'unobtainable'] as const).flatMap((how) =>
    kind === 'number'
      ? [...ranges.values()].map((range): Lack => ({ how, range, choices: null }))
      : [{ how, range: [0, 0] as const, choices: null }],
  );
}

function without({ name, kind }: Observation, { how, range, choices }: Lack, box: Box): Box {
  return {
    ranges: kind === 'number' ? new Map(box.ranges).set(name, range) : box.ranges,
    choices: choices && kind !== 'number' ? new Map(box.choices).set(name, choices) : box.choices,
    absent: new Map(box.absent).set(name, how),
  };
}
