import Fraction from 'fraction.js';
import type { Operand, Protocol } from '../protocol/protocol.ts';
import { comparisonsIn, conditionsOf } from '../protocol/walk.ts';
import { floor } from './linear.ts';
import { literalIn } from './literal.ts';
import { quantityOf } from '../protocol/quantities.ts';
import { possibleRange } from '../vocabulary/possible-range.ts';

/**
 * Where answers about an observation can change: for each observation that is a number, the first step of each piece of its possible
 * range, lowest first, without the very first. Between two cut points no comparison, band or curve point that reads the
 * observation directly tells two values apart.
 */
export function cutPoints(protocol: Protocol): ReadonlyMap<string, readonly number[]> {
  const cuts = new Map<string, Set<number>>();
  const cut = (operand: Operand, at: Operand): void => {
    const observation = operand.kind === 'observation' ? protocol.observations.get(operand.name) : undefined;
    const value =
      observation && valueOf(at, observation.unit ? quantityOf(observation.unit) : 'plain', protocol);
    if (!observation || !value) return;
    const steps = value.mul(observation.stepsPerUnit);
    const all = cuts.get(observation.name) ?? new Set<number>();
    cuts.set(observation.name, all.add(-Number(floor(steps.neg()))).add(Number(floor(steps)) + 1));
  };
  for (const condition of conditionsOf(protocol)) {
    for (const each of comparisonsIn(condition)) {
      if (each.kind !== 'compare') continue;
      cut(each.subject, each.to);
      cut(each.to, each.subject);
    }
  }
  for (const { how } of protocol.measures.values()) {
    if (how.kind === 'curve')
      for (const { at } of how.points) cut(how.of, { kind: 'number', value: at, unit: null });
    if (how.kind !== 'score') continue;
    for (const part of how.parts) {
      if (part.kind !== 'bands') continue;
      for (const { to } of part.bands) if (to) cut(part.of, to);
    }
  }
  return new Map([...cuts].map(([name, all]) => [name, inside(name, all, protocol)]));
}

function valueOf(
  operand: Operand,
  quantity: Parameters<typeof literalIn>[1],
  { limits }: Protocol,
): Fraction | null {
  if (operand.kind === 'number') return literalIn(operand, quantity).constant;
  const limit = operand.kind === 'limit' ? limits.get(operand.name) : undefined;
  if (!limit) return null;
  const value = new Fraction(limit.value).div(limit.stepsPerUnit);
  return literalIn({ kind: 'number', value, unit: limit.unit }, quantity).constant;
}

function inside(name: string, cuts: ReadonlySet<number>, { observations }: Protocol): number[] {
  const observation = observations.get(name);
  const { low, high } = observation ? possibleRange(observation) : { low: 0, high: 0 };
  return [...cuts].filter((at) => at > low && at <= high).sort((left, right) => left - right);
}
