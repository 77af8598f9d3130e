import Fraction from 'fraction.js';
import type { NumberOperand, Operand, Protocol } from '../../protocol/protocol.ts';
import { tenPower } from '../../vocabulary/ten-power.ts';
import { sameDimension, units, type Unit } from '../../vocabulary/units.ts';

/**
 * One step of what is compared, in the unit in which the threshold is written: the observation's own step, a month where an
 * age is written in years or months; for a measure, one in the last decimal place that the threshold is written in.
 */
export function stepOf(
  subject: Operand,
  { value, unit }: NumberOperand,
  { observations }: Pick<Protocol, 'observations'>,
): Fraction {
  const observation = subject.kind === 'observation' ? observations.get(subject.name) : undefined;
  if (!observation) return lastPlace(value);
  if (!unit || unit === observation.unit) {
    return observation.unit?.word === 'y' ? new Fraction(1, 12) : observation.stepsPerUnit.inverse();
  }
  if (unit.word === 'mo') return new Fraction(1);
  return observation.stepsPerUnit
    .inverse()
    .mul(observation.unit?.factor ?? 1)
    .div(unit.factor);
}

/** One in the last decimal place of a number: 0.1 for 36.5, and 1 for 90. */
const lastPlace = (value: Fraction): Fraction => new Fraction(1n, tenPower(value.d));

/**
 * The next round numbers below and above a threshold. A round number is a multiple of five in the last decimal place of the
 * step: of 5 where the step is 1, of 0.5 where it is 0.1. Where the step is no decimal (the month of an age in years), the
 * last place of the threshold takes its place.
 */
export function roundNumbers(value: Fraction, step: Fraction): readonly [Fraction, Fraction] {
  const round = lastPlace(isShort(step) ? step : value).mul(5);
  const parts = value.div(round);
  return [parts.ceil().sub(1).mul(round), parts.floor().add(1).mul(round)];
}

/** Whether a number is a decimal that ends. */
const isShort = (value: Fraction): boolean => tenPower(value.d) % value.d === 0n;

/**
 * A number as an author writes it: plain, or with the largest unit in which it is a decimal that ends. `unit` is the unit that is
 * written beside it; `own` the one that a plain number is in.
 */
export function written(value: Fraction, unit: Unit | null, own: Unit | null = unit): string | number {
  const given = unit ?? own;
  if (!given || (!unit && isShort(value))) return Number(value.toString());
  const shown = units
    .filter((each) => sameDimension(each.dimension, given.dimension) && each.offset.equals(given.offset))
    .map((each) => ({ each, value: value.mul(given.factor).div(each.factor) }))
    .sort(
      (left, right) =>
        Number(right.each === given) - Number(left.each === given) ||
        right.each.factor.compare(left.each.factor),
    )
    .find((candidate) => isShort(candidate.value));
  return shown ? `${shown.value.toString()} ${shown.each.word}` : `${value.toString()} ${given.word}`;
}
