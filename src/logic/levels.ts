import type { Protocol } from '../protocol/protocol.ts';
import type { Context } from './context.ts';
import type { Logic, RuleLogic } from './logic.ts';
import { either, highest, type Logical } from './operators.ts';

/** No rule calls for any level. */
const none = -1;

/** The highest level of the rules that count, of those that could, and of those that are met whatever is missing. */
export function levelsOf(
  protocol: Protocol,
  rules: readonly RuleLogic[],
  { writer }: Context,
): Logic['levels'] {
  const calling = protocol.rules.flatMap((rule, index) => {
    const logic = rules[index];
    if (rule.level === null || !logic) return [];
    return [{ logic, level: rule.level, explained: rule.explainedBy?.level ?? rule.level }];
  });
  type Calling = (typeof calling)[number];
  const top = (name: string, of: (rule: Calling) => Logical): Logical =>
    writer.define(`level:${name}`, highest([none, ...calling.map(of)]));
  const level = ({ level: own, explained }: Calling, isExplained: Logical): Logical =>
    own === explained ? own : either(isExplained, explained, own);
  return {
    raised: top('raised', (rule) =>
      either(rule.logic.counts, level(rule, rule.logic.explained.certain), none),
    ),
    could: top('could', (rule) => either(rule.logic.could, level(rule, rule.logic.explained.certain), none)),
    floor: top('floor', (rule) =>
      either(rule.logic.certain, level(rule, rule.logic.explained.possible), none),
    ),
  };
}
