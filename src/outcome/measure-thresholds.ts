import { literalIn } from '../logic/literal.ts';
import type { Operand, Protocol } from '../protocol/protocol.ts';
import { comparisonsIn, conditionsOf } from '../protocol/walk.ts';
import { exactly } from './amounts.ts';
import { over, type Exact } from './exact.ts';

/** The numbers and limits that a measure is compared with, in its own unit. */
export function measureThresholds(
  name: string,
  protocol: Protocol,
  changedLimits: ReadonlyMap<string, Exact>,
): readonly Exact[] {
  const quantity = protocol.measures.get(name)?.quantity ?? 'plain';
  const found: Exact[] = [];
  const add = (to: Operand): void => {
    if (to.kind === 'number') found.push(exactly(literalIn(to, quantity).constant));
    const limit = to.kind === 'limit' ? protocol.limits.get(to.name) : undefined;
    if (!limit) return;
    const { value, stepsPerUnit } = limit;
    found.push(changedLimits.get(limit.name) ?? over(value * Number(stepsPerUnit.d), stepsPerUnit.n));
  };
  for (const condition of conditionsOf(protocol)) {
    for (const each of comparisonsIn(condition)) {
      if (each.kind !== 'compare') continue;
      if (each.subject.kind === 'measure' && each.subject.name === name) add(each.to);
    }
  }
  for (const { how } of protocol.measures.values()) {
    if (how.kind !== 'score') continue;
    for (const part of how.parts) {
      if (part.kind !== 'bands' || part.of.kind !== 'measure' || part.of.name !== name) continue;
      for (const { to } of part.bands) if (to) add(to);
    }
  }
  return found;
}
