import type { Condition, LookBack } from '../protocol/protocol.ts';

/** The observations that a look back reads, in its conditions too. */
export function observationsInLookBack({ observation, where, condition }: LookBack): ReadonlySet<string> {
  const names = new Set<string>(observation === null ? [] : [observation]);
  for (const each of [where, condition]) if (each) gather(each, names);
  return names;
}

/** The observations that a condition on one set reads. */
export function observationsInCondition(condition: Condition): ReadonlySet<string> {
  const names = new Set<string>();
  gather(condition, names);
  return names;
}

function gather(condition: Condition, names: Set<string>): void {
  if ('of' in condition) for (const each of condition.of) gather(each, names);
  else if (condition.kind === 'compare') {
    for (const operand of [condition.subject, condition.to]) {
      if (operand.kind === 'observation') names.add(operand.name);
    }
  } else if (condition.kind !== 'rule') names.add(condition.observation);
}
