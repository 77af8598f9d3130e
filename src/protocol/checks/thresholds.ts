import Fraction from 'fraction.js';
import { convert } from '../../vocabulary/units.ts';
import type { Path } from '../../problems/place.ts';
import type { NumberOperand, Observation, Operand, Protocol } from '../protocol.ts';
import { comparisonsIn, everyConditionOf } from '../walk.ts';

/** A number that an observation is compared with, in the observation's own unit. */
export interface Threshold {
  readonly observation: Observation;
  readonly value: Fraction;
  readonly written: NumberOperand;
  readonly path: Path;
}

/** Every number that an observation meets directly: in comparisons and in bands. */
export function* thresholdsOf(protocol: Protocol): Generator<Threshold> {
  for (const condition of everyConditionOf(protocol)) {
    for (const each of comparisonsIn(condition)) {
      if (each.kind === 'compare') yield* threshold(each.subject, each.to, each.path, protocol);
    }
  }
  for (const { how } of protocol.measures.values()) {
    if (how.kind !== 'score') continue;
    for (const part of how.parts) {
      if (part.kind !== 'bands') continue;
      for (const [index, { to, included }] of part.bands.entries()) {
        if (to)
          yield* threshold(part.of, to, [...part.path, index, included ? 'at_most' : 'below'], protocol);
      }
    }
  }
}

function* threshold(
  subject: Operand,
  to: Operand,
  path: Path,
  { observations }: Protocol,
): Generator<Threshold> {
  if (subject.kind !== 'observation' || to.kind !== 'number') return;
  const observation = observations.get(subject.name);
  if (!observation?.unit && to.unit) return;
  if (!observation) return;
  const value = to.unit && observation.unit ? convert(to.value, to.unit, observation.unit) : to.value;
  yield { observation, value, written: to, path };
}

/** An observation's value in its unit from its steps. */
export const valueOf = (steps: number, { stepsPerUnit }: Observation): Fraction =>
  new Fraction(steps).div(stepsPerUnit);
