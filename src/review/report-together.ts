import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import { advisedTogether, type RuleOf } from './advised-together.ts';

/** Two actions that must never be advised together, and where that is said. */
export interface Excluding {
  readonly first: string;
  readonly second: string;
  readonly path: Path;
}

/** Reports two actions that exclude each other and that some set would advise at once: the first such pair of rules. */
export function reportTogether(
  { first, second, path }: Excluding,
  rules: readonly RuleOf[],
  report: Report,
): void {
  const having = (id: string): RuleOf[] => rules.filter(({ rule }) => rule.do.some((each) => each.id === id));
  let open: readonly string[] | null = null;
  for (const one of having(first)) {
    for (const other of having(second)) {
      const names = [...new Set([one.rule.title, other.rule.title])];
      const found = advisedTogether(one, other);
      if (found.kind === 'found') {
        report('actions_exclude_each_other', path, { first, second, rules: names, set: found.set });
        return;
      }
      if (found.kind === 'not_settled') open ??= names;
    }
  }
  if (open) report('actions_may_meet', path, { first, second, rules: open });
}
