import type { Requirement } from '../../protocol/requirements/requirement.ts';
import { evaluated, type Evaluated, type Reads } from './asked.ts';
import type { Given } from './witness.ts';

/** What the evaluator says of a set, or of both of a pair, when that breaks the requirement; null when it does not. */
export function breaking(
  { asks }: Requirement,
  reads: Reads,
  givens: readonly Given[],
): readonly Evaluated[] | null {
  const all = givens.map((given) => evaluated(reads, given));
  const found = all.filter((each) => each !== null);
  if (found.length < all.length) return null;
  const [first, second] = found as [Evaluated, Evaluated?];
  return breaks(asks, first, second ?? null) ? found : null;
}

function breaks(asks: Requirement['asks'], first: Evaluated, second: Evaluated | null): boolean {
  switch (asks.kind) {
    case 'level_at_least':
      return first.level !== null && calls(first) < asks.level;
    case 'level_at_most':
      return first.level !== null && Math.max(calls(first), first.level.couldBe) > asks.level;
    case 'rule_met':
      return first.level !== null && !isMet(asks.rule, first);
    case 'never_together':
      return first.level !== null && asks.rules.every((rule) => isMet(rule, first));
    case 'no_level':
      return first.level !== null;
    case 'always_some_advice':
      return first.level !== null && !advises(first);
    case 'nothing_hides':
      return first.level !== null && calls(first) > (second?.level?.couldBe ?? -1);
    default:
      return (
        first.level !== null && second?.level !== null && second !== null && calls(second) < calls(first)
      );
  }
}

/** The level that is shown, the lowest where none is. */
const calls = ({ level }: Evaluated): number => level?.atLeast ?? 0;

const isMet = (name: string, { each }: Evaluated): boolean =>
  each.some(
    ({ level, rules }) =>
      level !== null && rules.some(({ rule, state }) => rule.name === name && state === 'met'),
  );

const advises = ({ each }: Evaluated): boolean =>
  each.some(
    ({ level, rules }) =>
      level !== null &&
      rules.some(
        ({ rule, state, counts }) =>
          (state === 'met' || counts) && (rule.says !== null || rule.ask.length > 0 || rule.do.length > 0),
      ),
  );
