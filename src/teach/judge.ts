/** What a learner says of a set: a level, as an index on the ladder; or that there is none. */
export type Said = number | 'complete_the_set' | 'not_for_patient';

/** What the rules say: the level, as indices on the ladder; null: not for this patient. */
export type RulesSay = {
  /** Null: not settled, and nothing calls for more than the lowest. */
  readonly atLeast: number | null;
  readonly couldBe: number;
} | null;

/** How an answer stands beside the rules. Each answer is one of these, so their counts add up to all answers. */
export const verdicts = ['as_the_rule_says', 'too_little', 'too_much', 'left_open'] as const;

export type Verdict = (typeof verdicts)[number];

/**
 * Holds an answer against the rules. Too little is below what is called for, or waiting where something is to be done; too much is above
 * all that it could be. What lies between, the rules leave open: it counts on neither side. The lowest level is only an answer when it is
 * settled, because missing is never normal.
 *
 * `judge(0, { atLeast: null, couldBe: 4 })` is `'too_little'`; `judge(2, { atLeast: 1, couldBe: 3 })` is `'left_open'`.
 */
export function judge(said: Said, rules: RulesSay): Verdict {
  if (rules === null) {
    if (said === 'not_for_patient') return 'as_the_rule_says';
    return said === 0 || said === 'complete_the_set' ? 'too_little' : 'left_open';
  }
  const { atLeast, couldBe } = rules;
  if (said === 'not_for_patient') return 'too_little';
  if (said === 'complete_the_set') {
    if (atLeast === null) return 'as_the_rule_says';
    return atLeast === 0 ? 'too_much' : 'too_little';
  }
  if (said === atLeast) return 'as_the_rule_says';
  if (said < (atLeast ?? 1)) return 'too_little';
  return said > couldBe ? 'too_much' : 'left_open';
}

/** Whether the case comes back: it was called for too little, or for too much. */
export const isMissed = (verdict: Verdict): boolean => verdict === 'too_little' || verdict === 'too_much';

/** What one would have said to say what the rules say. */
export const asRules = (rules: RulesSay): Said =>
  rules === null ? 'not_for_patient' : (rules.atLeast ?? 'complete_the_set');
