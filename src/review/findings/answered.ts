import type { Answers, RuleAnswer } from '../../outcome/answers.ts';
import type { Rule } from '../../protocol/protocol.ts';

const answerOf = ({ name }: Rule, { rules }: Answers): RuleAnswer | undefined =>
  rules.find((each) => each.rule.name === name);

/** Whether a rule is met, for a patient whom the protocol is, or may be, for. */
export const isMet = (rule: Rule, answers: Answers): boolean =>
  answers.applies !== 'no' && answerOf(rule, answers)?.state === 'met';

/** Whether a rule gives its advice: it is met, or nothing but an unanswered exception holds it back. */
export function isAdvised(rule: Rule, answers: Answers): boolean {
  const answer = answerOf(rule, answers);
  return answers.applies !== 'no' && (answer?.state === 'met' || answer?.counts === true);
}

/** The highest level that is called for; 0 while nothing calls for more than the lowest. */
export const calledFor = ({ level }: Answers): number => level?.atLeast ?? 0;
