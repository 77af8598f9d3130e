import type { Condition, Measure } from '../../protocol/protocol.ts';
import { operandsOfCondition, operandsOfMeasure } from '../../protocol/walk.ts';
import type { RuleHere } from './rule-pairs.ts';

/** The conditions under which it reassures nobody that a rule is not met: its own, and those of the measures that it reads. */
export function blindConditions({ rule, member }: RuleHere): Condition[] {
  const { measures } = member.protocol;
  const found = new Set<Measure>();
  const open = operandsOfCondition(rule.when);
  for (let next = open.pop(); next; next = open.pop()) {
    const measure = next.kind === 'measure' ? measures.get(next.name) : undefined;
    if (!measure || found.has(measure)) continue;
    found.add(measure);
    open.push(...operandsOfMeasure(measure.how));
  }
  return [rule.notReliableWhen, ...[...found].map(({ notReliableWhen }) => notReliableWhen)].flatMap(
    (each) => each ?? [],
  );
}
