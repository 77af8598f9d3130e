import { cutPoints } from '../../logic/cut-points.ts';
import { againstConstants } from './constants.ts';
import type { Observation, Protocol } from '../../protocol/protocol.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';

/** The first step of each stretch of a number within which nothing tells two values apart. */
export function startsOf(observation: Observation, protocols: readonly Protocol[]): number[] {
  const { low, high } = possibleRange(observation);
  const own = observation.possible.flatMap((band) => [band.low, band.high + 1]);
  const ages = observation.name === 'age' ? protocols.flatMap(bandEdges) : [];
  const cuts = [
    ...protocols.flatMap((protocol) => cutPoints(protocol).get(observation.name) ?? []),
    ...own,
    ...ages,
    ...protocols.flatMap((protocol) => againstConstants(observation.name, protocol)),
  ];
  const inside = cuts.filter((at) => at > low && at <= high);
  return [low, ...new Set(inside.sort((left, right) => left - right))];
}

/** The ages, in steps, at which what is possible changes for any observation of a protocol. */
const bandEdges = ({ observations }: Protocol): number[] =>
  [...observations.values()].flatMap(({ possible }) =>
    possible.flatMap(({ ageBelow }) => (ageBelow === null ? [] : [ageBelow])),
  );
