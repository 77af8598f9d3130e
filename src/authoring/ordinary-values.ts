import { stepsInJson } from '../outcome/steps-in-json.ts';
import type { Protocol } from '../protocol/protocol.ts';

/** A value that an ordinary healthy adult at rest has, in the observation's own unit. */
export interface OrdinaryValue {
  readonly name: string;
  /** UCUM code; empty for what is no number of a unit. */
  readonly unit: string;
  readonly value: number | string | readonly string[];
}

/** Ordinary values of what a protocol needs, or asks to know whether it is for a patient; none of what only helps. */
export function ordinaryValues({ observations }: Protocol): OrdinaryValue[] {
  return [...observations.values()].flatMap((observation): OrdinaryValue[] => {
    const { name, kind, ordinary, role, unit } = observation;
    if (ordinary === null || role === 'helps') return [];
    if (typeof ordinary === 'number')
      return [{ name, unit: unit?.ucum ?? '', value: stepsInJson(ordinary, observation) }];
    return [{ name, unit: '', value: kind === 'several' ? ordinary : (ordinary[0] ?? '') }];
  });
}
