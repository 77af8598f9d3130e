import Fraction from 'fraction.js';
import { floor } from '../../logic/linear.ts';
import { literalIn } from '../../logic/literal.ts';
import type { NumberOperand, Operand, Protocol } from '../../protocol/protocol.ts';
import { quantityOf } from '../../protocol/quantities.ts';
import { comparisonsIn, conditionsOf } from '../../protocol/walk.ts';

/** The numbers that an operand can be, where it is never anything but one of some that stand still; null where it is reckoned. */
export function constantsOf(operand: Operand, protocol: Protocol): readonly NumberOperand[] | null {
  if (operand.kind === 'number') return [operand];
  if (operand.kind === 'limit') {
    const limit = protocol.limits.get(operand.name);
    const value = limit && new Fraction(limit.value).div(limit.stepsPerUnit);
    return limit && value ? [{ kind: 'number', value, unit: limit.unit }] : null;
  }
  const how = operand.kind === 'measure' ? protocol.measures.get(operand.name)?.how : undefined;
  if (how?.kind !== 'choose') return null;
  const all = how.entries.map(({ use }) => constantsOf(use, protocol));
  return all.some((each) => each === null) ? null : all.flatMap((each) => each ?? []);
}

/** Where an observation meets numbers that stand still through a measure that chooses one of them; a cut too many does no harm. */
export function againstConstants(name: string, protocol: Protocol): number[] {
  const observation = protocol.observations.get(name);
  return conditionsOf(protocol).flatMap((condition) =>
    [...comparisonsIn(condition)].flatMap((each) => {
      if (each.kind !== 'compare' || each.subject.name !== name || each.to.kind !== 'measure') return [];
      return (constantsOf(each.to, protocol) ?? []).flatMap((at) => {
        const unit = observation?.unit;
        const value = literalIn(at, unit ? quantityOf(unit) : 'plain').constant.mul(
          observation?.stepsPerUnit ?? 1,
        );
        return [-Number(floor(value.neg())), Number(floor(value)) + 1];
      });
    }),
  );
}
