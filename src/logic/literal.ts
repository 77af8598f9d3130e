import type { Operand } from '../protocol/protocol.ts';
import type { QuantityOrPlain } from '../protocol/quantities.ts';
import { sameDimension, units } from '../vocabulary/units.ts';
import { constant, type Linear } from './linear.ts';

/** A number as written, in the unit that it meets: `100.4 °F` beside a temperature in °C is 38. */
export function literalIn(operand: Extract<Operand, { kind: 'number' }>, quantity: QuantityOrPlain): Linear {
  const { value, unit } = operand;
  if (!unit || quantity === 'plain') return constant(value);
  const own = value.mul(unit.factor).add(unit.offset);
  const met = units.find(
    (each) => sameDimension(each.dimension, quantity.dimension) && each.factor.equals(quantity.factor),
  );
  return constant(own.sub(met?.offset ?? 0).div(quantity.factor));
}
