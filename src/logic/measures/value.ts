import type { Measure } from '../../protocol/protocol.ts';
import type { Context } from '../context.ts';
import { isConstant, scaled, type Linear } from '../linear.ts';
import { commonScale } from '../arithmetic.ts';
import { stepName, type MeasureLogic } from '../logic.ts';
import type { NumberForm } from '../number-form.ts';
import type { Logical } from '../operators.ts';

/** Where a measure's value stands in logic: the ends of a whole number, or of a quotient of two. */
export function measureValue(
  measure: Measure,
  { ratio, presence }: NumberForm,
  context: Context,
): MeasureLogic {
  const owner = stepName(measure.path);
  const simple = isConstant(ratio.bottom);
  const top = ends(
    simple ? scaled(ratio.top, ratio.bottom.constant.inverse()) : ratio.top,
    `${owner}/top`,
    context,
  );
  const bottom = simple ? { low: 1, high: 1, scale: 1n } : ends(ratio.bottom, `${owner}/bottom`, context);
  return {
    measure: measure.name,
    low: top.low,
    high: top.high,
    bottomLow: bottom.low,
    bottomHigh: bottom.high,
    topScale: top.scale,
    bottomScale: bottom.scale,
    sure: presence.sure,
    maybe: presence.maybe,
  };
}

function ends(
  linear: Linear,
  name: string,
  { arithmetic }: Context,
): { low: Logical; high: Logical; scale: bigint } {
  const { factor, rest } = arithmetic.oneNode(linear, name);
  const scale = commonScale([factor, rest]);
  const node = arithmetic.wholeNode(linear, scale, name, name);
  return { low: node.low, high: node.high, scale };
}
