import Fraction from 'fraction.js';
import type { MapNode, Node } from '../../document/document.ts';
import type { Observation, Protocol } from '../../protocol/protocol.ts';
import type { Box } from '../box.ts';
import { written } from '../changes/steps.ts';
import { list, map, scalar } from './nodes.ts';

/** One set of a box as a case gives it, in the trade's units; what is absent is left out, or said to be unobtainable. */
export function boxToGiven(box: Box, { observations }: Protocol): MapNode {
  return map(
    [...observations.values()].flatMap((observation): [string, Node][] => {
      const absent = box.absent?.get(observation.name);
      if (absent === 'unobtainable') return [[observation.name, map([['unobtainable', scalar('yes')]])]];
      return absent ? [] : [[observation.name, valueOf(observation, box)]];
    }),
  );
}

function valueOf(observation: Observation, { ranges, choices }: Box): Node {
  const { name, kind } = observation;
  if (kind === 'number') return numberNode(ranges.get(name)?.[0] ?? 0, observation);
  if (kind !== 'several') return scalar(choices.get(name)?.[0] ?? '');
  const picked = observation.choices.filter(({ choice }) => choices.get(`${name}:${choice}`)?.[0] === 'yes');
  return list(picked.map(({ choice }) => scalar(choice)));
}

/** A number of steps as a case writes it: `36.8`, and an age with its unit: `16 y`. */
export function numberNode(steps: number, { unit, stepsPerUnit }: Observation): Node {
  const isAge = unit?.dimension.time === 1;
  return scalar(written(new Fraction(steps).div(stepsPerUnit), isAge ? unit : null, unit));
}
