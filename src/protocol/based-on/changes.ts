import type * as File from '../../shape/generated/types.ts';
import type { Report } from '../../problems/problem.ts';
import { nearestOf } from '../names.ts';
import type { Limit, Protocol, Withdrawn } from '../protocol.ts';

/** The limits of the parent that have another value, as they stand in the parent. */
export function otherValues(
  { limits = {} }: File.BasedOn,
  parent: Protocol,
  report: Report,
): { insteadOf: Limit; because: string }[] {
  return Object.entries(limits).flatMap(([name, { because }]) => {
    const insteadOf = parent.limits.get(name);
    const path = ['based_on', 'limits', name];
    const facts = { name, parent: parent.name };
    if (!insteadOf) {
      const known = [...parent.limits.keys()];
      report('limit_not_of_parent', path, facts, { part: 'key', nearMiss: () => nearestOf(name, known) });
      return [];
    }
    if (!insteadOf.between) report('limit_not_to_change', path, facts, { part: 'key' });
    return [{ insteadOf, because }];
  });
}

/** The rules of the parent that are withdrawn, each once. */
export function withdrawnRules(
  { withdraws = [] }: File.BasedOn,
  parent: Protocol,
  report: Report,
): Withdrawn[] {
  const seen = new Set<string>();
  return withdraws.flatMap(({ rule: name, because }, index) => {
    const path = ['based_on', 'withdraws', index, 'rule'];
    const rule = parent.rules.find((each) => each.name === name);
    if (seen.has(name)) report('withdrawn_twice', path, { name });
    else if (!rule) {
      const known = parent.rules.map((each) => each.name);
      const near = (): string | null => nearestOf(name, known);
      report('rule_not_of_parent', path, { name, parent: parent.name }, { nearMiss: near });
    }
    if (seen.has(name) || !rule) return [];
    seen.add(name);
    return [{ name, title: rule.title, because }];
  });
}
