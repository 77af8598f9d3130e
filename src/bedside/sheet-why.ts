import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Advice, Outcome, OutcomeRule } from '../shape/generated/types.ts';
import type { SheetWhy } from './sheet.ts';
import { levelTitle, titlesOf } from './words.ts';

/** Why: what each rule says that is met or counts, and what it was found by. A question is asked once. */
export function sheetWhy(
  outcome: Outcome,
  protocol: Protocol,
  protocols: ReadonlyMap<string, string>,
): readonly SheetWhy[] {
  const rules = new Map(outcome.rules.map((rule) => [rule.rule, rule]));
  const asked = new Set<string>();
  return outcome.advice.flatMap((advice): SheetWhy[] => {
    const rule = rules.get(advice.rule);
    if (!rule) return [];
    const questions = advice.ask.filter((each) => !asked.has(each));
    for (const each of questions) asked.add(each);
    const of = protocols.get(advice.rule.split('.')[0] ?? '') ?? null;
    return [{ ...whyOf(advice, rule, protocol), of, ask: questions }];
  });
}

function whyOf(advice: Advice, rule: OutcomeRule, protocol: Protocol): Omit<SheetWhy, 'ask' | 'of'> {
  return {
    rule: advice.rule,
    title: advice.title,
    level: advice.level === undefined ? null : levelTitle(advice.level, protocol),
    from: rule.from ? `From ${rule.from.protocol}, edition ${rule.from.edition}.` : null,
    says: advice.says ?? null,
    because: advice.because ?? null,
    decidedBy: rule.decided_by ?? [],
    notes: [...explanation(rule, protocol), ...(rule.counts === true ? [exception(rule, protocol)] : [])],
  };
}

function explanation(rule: OutcomeRule, protocol: Protocol): string[] {
  const { explained_by: by, lowered_from: from, could_be_explained_by: could } = rule;
  const lowered = from === undefined ? '' : ` It lowers the level from: ${levelTitle(from, protocol)}.`;
  return [
    ...(by === undefined ? [] : [`Explained: ${by}${lowered}`]),
    ...(could === undefined ? [] : [`Not answered yet, and it could explain this: ${could}`]),
  ];
}

function exception(
  { waits_for: waits, could_be_taken_back_by: by }: OutcomeRule,
  protocol: Protocol,
): string {
  const names = listed(titlesOf(waits ?? [], protocol));
  const words = by === undefined ? '' : ` It would be taken back by: ${by}`;
  return `It counts until somebody has answered what could take it back. Ask: ${names}.${words}`;
}
