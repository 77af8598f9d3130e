import type { Condition, Rule } from '../../protocol/protocol.ts';
import { cutAt } from './apart.ts';
import { readCondition, sayCondition } from './conditions.ts';
import { wordForWord } from './same.ts';
import { clauseAfter, whole, type Sentence } from './sentence.ts';
import type { Speaker } from './speaker.ts';

/** All that decides when a rule holds and which level it calls for; without its words, and without its place in a file. */
export interface RuleLogic {
  /** Index on the ladder; null for a rule that only says. */
  readonly level: number | null;
  readonly when: Condition;
  readonly unless: Condition | null;
  readonly explainedBy: { readonly when: Condition; readonly level: number | null } | null;
  readonly notReliableWhen: Condition | null;
}

/** What decides of a rule, as it stands in a checked protocol. */
export const ruleLogic = ({ level, when, unless, explainedBy, notReliableWhen }: Rule): RuleLogic => ({
  level,
  when,
  unless: unless && unless.when,
  explainedBy: explainedBy && { when: explainedBy.when, level: explainedBy.level },
  notReliableWhen,
});

const starts = {
  level: 'The level is at least ',
  says: 'It calls for no level, and only says something, when ',
  unless: 'It is taken back when ',
  lowers: 'It is explained, and then calls only for at least ',
  explained: 'It is explained, and keeps its level, when ',
  blind: 'That it is not met reassures nobody when ',
} as const;

/** `The level is at least “Call the doctor” when the estimated mean pressure is below the limit …`, and its exceptions. */
export function sayRule(rule: RuleLogic, speaker: Speaker): Sentence[] {
  const { level, when, unless, explainedBy, notReliableWhen } = rule;
  const said = (start: string, condition: Condition): Sentence =>
    whole(start, sayCondition(condition, speaker));
  const lower = explainedBy?.level ?? null;
  return [
    said(level === null ? starts.says : withLevel(starts.level, level, speaker), when),
    ...(unless ? [said(starts.unless, unless)] : []),
    ...(explainedBy
      ? [said(lower === null ? starts.explained : withLevel(starts.lowers, lower, speaker), explainedBy.when)]
      : []),
    ...(notReliableWhen ? [said(starts.blind, notReliableWhen)] : []),
  ];
}

function withLevel(start: string, level: number, { protocol, levels }: Speaker): string {
  return `${start}${levels.quoted(protocol.ladder.levels[level]?.name ?? '')} when `;
}

/** The same back, without places; null for sentences that are not as a rule is said. */
export const readRule = (sentences: readonly Sentence[], speaker: Speaker): RuleLogic | null =>
  wordForWord(readParts(sentences, speaker), sentences, (rule) => sayRule(rule, speaker));

function readParts(sentences: readonly Sentence[], speaker: Speaker): RuleLogic | null {
  const rest = [...sentences];
  const next = (start: string): Condition | null => {
    const clause = rest[0] ? clauseAfter(start, rest[0]) : null;
    const condition = clause && readCondition(clause, speaker);
    if (condition) rest.shift();
    return condition;
  };
  const leveled = (start: string): { when: Condition; level: number } | null => {
    const level = levelIn(rest[0], start, speaker);
    const when = level === null ? null : next(withLevel(start, level, speaker));
    return when && level !== null ? { when, level } : null;
  };
  const said = next(starts.says);
  const main = said ? { when: said, level: null } : leveled(starts.level);
  if (!main) return null;
  const unless = next(starts.unless);
  const kept = next(starts.explained);
  const explainedBy = kept ? { when: kept, level: null } : leveled(starts.lowers);
  const notReliableWhen = next(starts.blind);
  return rest.length > 0 ? null : { ...main, unless, explainedBy, notReliableWhen };
}

/** The level that a sentence with this start names. */
function levelIn(
  sentence: Sentence | undefined,
  start: string,
  { protocol, levels }: Speaker,
): number | null {
  if (!sentence?.text.startsWith(start)) return null;
  const [label] = cutAt(sentence.text.slice(start.length), ' when ') ?? [''];
  const name = levels.nameOf(label);
  const index = protocol.ladder.levels.findIndex((level) => level.name === name);
  return index === -1 ? null : index;
}
