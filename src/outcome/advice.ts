import type { Advice } from '../shape/generated/types.ts';
import type { Protocol, Rule } from '../protocol/protocol.ts';
import type { RuleAnswer } from './answers.ts';
import { levelCalledFor } from './rule-to-json.ts';

/** What the rules say that are met or count, the highest level first; an action that several ask for stands with the first of them. */
export function adviceOf(rules: readonly RuleAnswer[], protocol: Protocol): Advice[] {
  const heard = rules
    .filter(({ state, counts }) => state === 'met' || counts)
    .map((answer) => ({ answer, level: levelCalledFor(answer) }))
    .toSorted((left, right) => (right.level ?? -1) - (left.level ?? -1));
  const done = new Set<string>();
  return heard.map(({ answer: { rule, explained }, level }) => {
    const actions = rule.do.filter(({ id }) => !done.has(id) && Boolean(done.add(id)));
    const called = level === null ? undefined : protocol.ladder.levels[level];
    return {
      rule: rule.name,
      title: rule.title,
      ...(called ? { level: called.name } : {}),
      ...(rule.says === null ? {} : { says: rule.says }),
      ...(rule.because === null ? {} : { because: rule.because }),
      ...(explained && rule.explainedBy ? { explained_by: rule.explainedBy.says } : {}),
      ask: rule.ask,
      do: actions.map(actionInWords),
    };
  });
}

/** An action with the authority under which it is done: `Take a full set now (own authority)`. */
export const actionInWords = ({ text, under }: Rule['do'][number]): string =>
  under === null ? text : `${text} (${under})`;
