import type { DecidedIf, OutcomeRule } from '../shape/generated/types.ts';
import type { Measure, Rule } from '../protocol/protocol.ts';
import { operandsOfCondition, operandsOfMeasure } from '../protocol/walk.ts';
import type { RuleAnswer } from './answers.ts';
import type { Deciding } from './decided-if.ts';
import type { RuleGap } from './gaps.ts';
import { sentences } from './sentences.ts';
import type { Situation } from './situation.ts';
import { stepsInJson, unitInJson } from './steps-in-json.ts';
import { isUndecided } from './waits.ts';
import { withoutValue } from './without-value.ts';
import type { Writable } from './writable.ts';

/** The level that a rule calls for when it is met: the explained one where the explanation is known to hold. */
export function levelCalledFor({ rule, explained }: RuleAnswer): number | null {
  return explained && rule.explainedBy ? (rule.explainedBy.level ?? rule.level) : rule.level;
}

/** How one rule stands, with the sentences that explain it. Keys are added one by one: there are many rules in an outcome. */
export function ruleToJson(answer: RuleAnswer, gap: RuleGap | undefined, situation: Situation): OutcomeRule {
  const { rule, state, counts, explained } = answer;
  const { levels } = situation.compiled.protocol.ladder;
  const made: Writable<OutcomeRule> = { rule: rule.name, title: rule.title, state };
  if (rule.from) made.from = { protocol: rule.from.name, edition: rule.from.edition };
  const level = levelCalledFor(answer);
  if (level !== null) made.level = levels[level]?.name ?? '';
  if (level !== rule.level) made.lowered_from = levels[rule.level ?? -1]?.name ?? '';
  if (counts) made.counts = true;
  const because = decidedBy(answer, situation);
  if (because && because.length > 0) made.decided_by = because;
  if (gap) addGap(made, gap, situation);
  if (rule.explainedBy && state !== 'not_met' && explained) made.explained_by = rule.explainedBy.says;
  if (rule.explainedBy && mayBeExplained(answer)) made.could_be_explained_by = rule.explainedBy.says;
  if (rule.unless) addException(made, answer, rule.unless, situation);
  if (answer.notReliable) made.not_reliable = notReliable(rule, situation);
  return made;
}

const mayBeExplained = ({ state, counts, explained, mayBeExplained: may }: RuleAnswer): boolean =>
  (state === 'met' || counts) && may && !explained;

/** Why a rule is met, counts, or is not met; undefined while it is undecided, and where only its exception decided. */
export function decidedBy(
  { rule, state, counts }: RuleAnswer,
  situation: Situation,
): readonly string[] | undefined {
  const { explainer } = situation.compiled;
  const { narrow, wide } = situation.answers;
  if (state === 'met') return explainer.because(rule.when, true, narrow, 'the rule asks for');
  if (counts) return explainer.becauseItCounts(rule.when, narrow, 'the rule asks for');
  if (state === 'undecided' || isPossible(rule, situation)) return undefined;
  return explainer.because(rule.when, false, wide, 'the rule asks for');
}

/** Whether the rule's own condition may hold, so that only its exception decided. */
const isPossible = ({ when }: Rule, { compiled, answers }: Situation): boolean =>
  compiled.conditions.of(when).possible(answers.wide.result) !== 0;

function addException(
  made: Writable<OutcomeRule>,
  { rule, state, counts }: RuleAnswer,
  unless: NonNullable<Rule['unless']>,
  situation: Situation,
): void {
  const { explainer } = situation.compiled;
  if (state === 'not_met' && isPossible(rule, situation)) {
    const { wide } = situation.answers;
    const because = explainer.because(unless.when, true, wide, 'the exception asks for').join('; ');
    made.taken_back_by = unless.says ?? because;
  } else if (counts && isUndecided(unless.when, situation)) {
    made.could_be_taken_back_by = unless.says ?? 'the exception of this rule';
  }
}

function addGap(made: Writable<OutcomeRule>, gap: RuleGap, situation: Situation): void {
  if (gap.observations.size > 0) made.waits_for = [...gap.observations];
  if (gap.decidedIf.length > 0) made.decided_if = gap.decidedIf.map(decidingToJson);
  const lacking = withoutValue(gap.withoutValue, situation);
  if (lacking.length > 0) made.no_value = lacking;
}

function decidingToJson({ observation, range, isLowest, isHighest, choices, state }: Deciding): DecidedIf {
  if (!range) return { observation: observation.name, choices: choices ?? [], state };
  const [from, to] = range.map((steps) => stepsInJson(steps, observation)) as [number, number];
  return {
    observation: observation.name,
    from,
    to,
    ...(isLowest ? { is_lowest: true } : {}),
    ...(isHighest ? { is_highest: true } : {}),
    ...unitInJson(observation),
    state,
  };
}

/** What makes the rule blind: its own condition, and those of the measures that it reads, directly or through others. */
function notReliable(rule: Rule, { compiled, answers }: Situation): readonly string[] {
  const { protocol, explainer, conditions } = compiled;
  const { narrow } = answers;
  const because = (condition: Rule['when']): readonly string[] =>
    conditions.of(condition).certain(narrow.result) === 0
      ? []
      : explainer.because(condition, true, narrow, null);
  const own = rule.notReliableWhen ? because(rule.notReliableWhen) : [];
  const seen = new Set<Measure>();
  const open = operandsOfCondition(rule.when);
  for (let next = open.pop(); next; next = open.pop()) {
    const measure = next.kind === 'measure' ? protocol.measures.get(next.name) : undefined;
    if (!measure || seen.has(measure)) continue;
    seen.add(measure);
    open.push(...operandsOfMeasure(measure.how));
  }
  const through = [...seen].flatMap(({ title, notReliableWhen }) => {
    const reasons = notReliableWhen ? because(notReliableWhen) : [];
    return reasons.length === 0
      ? []
      : [sentences.measureNotReliable({ subject: title, because: reasons.join('; ') })];
  });
  return [...own, ...through];
}
