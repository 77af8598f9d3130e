import Fraction from 'fraction.js';
import { sameDimension, units, type Base, type Unit } from '../vocabulary/units.ts';
import type { Expression, Operand, Quantity } from './protocol.ts';

/** A plain number has no unit of its own: it takes the one of what it meets. */
export type QuantityOrPlain = Quantity | 'plain';

export const noDimension: Quantity = { dimension: {}, factor: new Fraction(1) };

export const quantityOf = (unit: Unit | null): Quantity =>
  unit ? { dimension: unit.dimension, factor: unit.factor } : noDimension;

/** Two parts of a formula that cannot be added or compared. */
export interface Mismatch {
  readonly left: Quantity;
  readonly right: Quantity;
}

/** The quantity of two numbers that are added or compared: the left one's; a mismatch when they measure different things. */
export function together(left: QuantityOrPlain, right: QuantityOrPlain): QuantityOrPlain | Mismatch {
  if (left === 'plain') return right;
  if (right === 'plain') return left;
  // Degrees of two scales differ by more than a factor, so temperatures meet only in one unit.
  const comparable =
    sameDimension(left.dimension, right.dimension) &&
    (left.dimension.temperature === undefined || left.factor.equals(right.factor));
  return comparable ? left : { left, right };
}

export const isMismatch = (found: QuantityOrPlain | Mismatch | null): found is Mismatch =>
  found !== null && found !== 'plain' && 'left' in found;

/** The quantity of a formula. The first mismatch ends the reading; null when a name has none yet. */
export function quantityOfExpression(
  expression: Expression,
  of: (operand: Operand) => QuantityOrPlain | null,
): QuantityOrPlain | Mismatch | null {
  switch (expression.kind) {
    case 'number':
    case 'observation':
    case 'limit':
    case 'measure':
      return of(expression);
    case 'negative':
      return quantityOfExpression(expression.of, of);
    default: {
      const left = quantityOfExpression(expression.left, of);
      const right = quantityOfExpression(expression.right, of);
      if (left === null || isMismatch(left)) return left;
      if (right === null || isMismatch(right)) return right;
      if (expression.kind === 'plus' || expression.kind === 'minus') return together(left, right);
      return multiplied(left, right, expression.kind === 'times' ? 1 : -1);
    }
  }
}

function multiplied(left: QuantityOrPlain, right: QuantityOrPlain, exponent: 1 | -1): QuantityOrPlain {
  if (left === 'plain' && right === 'plain') return 'plain';
  const [first, second] = [left === 'plain' ? noDimension : left, right === 'plain' ? noDimension : right];
  const dimension: Partial<Record<Base, number>> = { ...first.dimension };
  for (const [base, power] of Object.entries(second.dimension) as [Base, number][]) {
    const sum = (dimension[base] ?? 0) + exponent * power;
    if (sum === 0) delete dimension[base];
    else dimension[base] = sum;
  }
  const factor = exponent === 1 ? first.factor.mul(second.factor) : first.factor.div(second.factor);
  return { dimension, factor };
}

/** The unit that shows a quantity; null when no unit of the table is exactly that, or for a plain number. */
export function unitOfQuantity(quantity: Quantity): Unit | null {
  if (Object.keys(quantity.dimension).length === 0) return null;
  return (
    units.find(
      (unit) => sameDimension(unit.dimension, quantity.dimension) && unit.factor.equals(quantity.factor),
    ) ?? null
  );
}

/** A quantity in words, for a problem: its unit, or what it measures. */
export function quantityInWords(quantity: Quantity): string {
  const unit = unitOfQuantity(quantity);
  if (unit) return unit.word;
  const parts = Object.entries(quantity.dimension).map(([base, power]) =>
    power === 1 ? base : `${base}^${power}`,
  );
  return parts.length === 0 ? 'a plain number' : parts.join(' × ');
}
