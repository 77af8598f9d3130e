import type { Expression, Measure, Operand } from '../../protocol/protocol.ts';
import { noDimension, type QuantityOrPlain } from '../../protocol/quantities.ts';
import { scaled, type Ratio } from '../linear.ts';
import { joined, type NumberForm } from '../number-form.ts';
import type { Context } from '../context.ts';
import { stepName } from '../logic.ts';

/** A formula: exact arithmetic over its operands, in the units that they have. */
export function formulaForm(formula: Expression, measure: Measure, context: Context): NumberForm {
  const owner = stepName(measure.path);
  const { arithmetic, divisors } = context;

  function read(expression: Expression): NumberForm {
    if (isOperand(expression)) return context.form(expression);
    if (expression.kind === 'negative') {
      const of = read(expression.of);
      return { ...of, ratio: { top: scaled(of.ratio.top, -1), bottom: of.ratio.bottom } };
    }
    const left = read(expression.left);
    const right = read(expression.right);
    const presence = joined([left.presence, right.presence]);
    switch (expression.kind) {
      case 'plus':
      case 'minus':
        return {
          ratio: added(left, right, expression.kind),
          quantity: either(left.quantity, right.quantity),
          presence,
        };
      case 'times': {
        const quantity = combined(left.quantity, right.quantity, 1);
        return { ratio: arithmetic.multiply(left.ratio, right.ratio, owner), quantity, presence };
      }
      case 'divided_by': {
        guard(right.ratio);
        const quantity = combined(left.quantity, right.quantity, -1);
        return { ratio: arithmetic.divide(left.ratio, right.ratio, owner), quantity, presence };
      }
    }
  }

  function added(left: NumberForm, right: NumberForm, kind: 'plus' | 'minus'): Ratio {
    const inLeft = inQuantity(right, left.quantity === 'plain' ? right.quantity : left.quantity);
    const sign = kind === 'minus' ? -1 : 1;
    return arithmetic.add(left.ratio, { top: scaled(inLeft.top, sign), bottom: inLeft.bottom }, owner);
  }

  function guard(divisor: Ratio): void {
    const positive = arithmetic.atLeastZero(divisor, true, owner);
    if (positive.certain === true) return;
    const { certain, possible } = arithmetic.atLeastZero(
      { top: scaled(divisor.top, -1), bottom: divisor.bottom },
      false,
      owner,
    );
    divisors.push({ measure: measure.name, path: measure.path, certain, possible });
  }

  return read(formula);
}

const isOperand = (expression: Expression): expression is Operand =>
  expression.kind === 'number' ||
  expression.kind === 'observation' ||
  expression.kind === 'limit' ||
  expression.kind === 'measure';

const either = (left: QuantityOrPlain, right: QuantityOrPlain): QuantityOrPlain =>
  left === 'plain' ? right : left;

function combined(left: QuantityOrPlain, right: QuantityOrPlain, power: 1 | -1): QuantityOrPlain {
  if (left === 'plain' && right === 'plain') return 'plain';
  const first = left === 'plain' ? noDimension : left;
  const second = right === 'plain' ? noDimension : right;
  const factor = power === 1 ? first.factor.mul(second.factor) : first.factor.div(second.factor);
  // Dimensions were checked when the protocol was read; from here on only the factor counts.
  return { dimension: first.dimension, factor };
}

/** A number's value in another unit of the same dimension; a plain number is already in it. */
export function inQuantity(form: NumberForm, quantity: QuantityOrPlain): Ratio {
  if (form.quantity === 'plain' || quantity === 'plain') return form.ratio;
  return {
    top: scaled(form.ratio.top, form.quantity.factor.div(quantity.factor)),
    bottom: form.ratio.bottom,
  };
}
