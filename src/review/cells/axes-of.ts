import type { Compiled } from '../../outcome/compile.ts';
import type { Observation, Protocol } from '../../protocol/protocol.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import type { Axis } from './plane.ts';

/**
 * The observations that can be the axes of a plane, those first that are looked at first: systolic and diastolic where the protocol
 * reads both, then what it needs, then the rest.
 *
 * `axesOf(pressure)[0]?.name` is `'systolic'`.
 */
export function axesOf({ protocol }: Compiled): Axis[] {
  const numbers = [...protocol.observations.values()].filter(({ kind }) => kind === 'number');
  const first = ['systolic', 'diastolic'];
  const both = first.every((name) => numbers.some((each) => each.name === name));
  const rank = ({ name, role }: Observation): number => {
    if (both && first.includes(name)) return first.indexOf(name);
    return role === 'needs' ? 2 : 3;
  };
  return numbers.toSorted((left, right) => rank(left) - rank(right)).map(axisOf);
}

/** One observation as an axis; throws for what the protocol does not read as a number. */
export function axisNamed(name: string, { observations }: Protocol): Axis {
  const observation = observations.get(name);
  if (observation?.kind !== 'number') throw new RangeError(`the protocol reads no number called ${name}`);
  return axisOf(observation);
}

function axisOf(observation: Observation): Axis {
  const { name, title, unit, stepsPerUnit, ordinary, plausible } = observation;
  const { low, high } = possibleRange(observation);
  const usual = possibleRange({ ...observation, possible: plausible });
  return {
    name,
    title,
    unit: unit?.word ?? null,
    unitsPerStep: [Number(stepsPerUnit.d), Number(stepsPerUnit.n)],
    possible: [low, high],
    plausible: plausible.length === 0 ? [low, high] : [Math.max(low, usual.low), Math.min(high, usual.high)],
    ordinary: typeof ordinary === 'number' ? ordinary : null,
  };
}
