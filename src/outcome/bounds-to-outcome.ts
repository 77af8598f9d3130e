import type { Outcome, OutcomeLevel } from '../shape/generated/types.ts';
import type { Comparison, Protocol } from '../protocol/protocol.ts';
import { comparisonsIn } from '../protocol/walk.ts';
import type { Bounds } from '../series/bounds.ts';
import { adviceOf } from './advice.ts';
import { answersOf, type LevelAnswer } from './answers.ts';
import { caution } from './caution.ts';
import type { Compiled } from './compile.ts';
import { factsToJson, type Facts } from './facts-to-json.ts';
import { faultsToJson } from './faults-to-json.ts';
import { gapsOf } from './gaps.ts';
import { measuresToJson } from './measures-to-json.ts';
import { parentToJson } from './parent-to-json.ts';
import { ruleToJson } from './rule-to-json.ts';
import type { Situation } from './situation.ts';
import { isUndecided } from './waits.ts';
import type { Writable } from './writable.ts';

/**
 * What a protocol says about a patient's numbers, with the sentences that explain it.
 *
 *     bounds ─► answers (states, level) ─► gaps (what is missing, what it would tell) ─► sentences ─► outcome
 */
export function outcomeOf(compiled: Compiled, bounds: Bounds): Outcome {
  const answers = answersOf(compiled, bounds);
  const situation: Situation = { compiled, bounds, answers };
  const made = head(situation);
  if (answers.level) addAnswers(made, answers.level, situation);
  else addNothing(made, compiled.protocol);
  addFacts(made, factsToJson(compiled.protocol, bounds.facts));
  made.caution = caution;
  return made;
}

/** The beginning of an outcome. The rest is added key by key: to spread that many keys would take longer than most sentences. */
function head(situation: Situation): Writable<Outcome> {
  const { compiled, bounds, answers } = situation;
  const { name, edition, title, digest, basedOn } = compiled.protocol;
  const made = { protocol: name, edition, title, digest } as Writable<Outcome>;
  if (basedOn.length > 0) made.based_on = basedOn.map(parentToJson);
  made.at = bounds.facts.at;
  made.applies = answers.applies;
  if (answers.applies !== 'yes') made.applies_because = appliesBecause(situation);
  return made;
}

function addAnswers(made: Writable<Outcome>, level: LevelAnswer, situation: Situation): void {
  const { rules } = situation.answers;
  const { protocol } = situation.compiled;
  const gaps = gapsOf(situation);
  made.level = levelToJson(level, protocol);
  made.rules = rules.map((rule) => ruleToJson(rule, gaps.rules.get(rule.rule.name), situation));
  made.measures = measuresToJson(situation);
  made.advice = adviceOf(rules, protocol);
  made.ask_first = gaps.askFirst;
  made.take_first = gaps.takeFirst;
  made.missing = gaps.missing;
  made.would_tell_more = gaps.wouldTellMore;
  const faults = faultsToJson(situation);
  if (faults.length > 0) made.faults = faults;
}

/** Outside its scope a protocol says nothing but what to use instead. */
function addNothing(made: Writable<Outcome>, { otherwise }: Protocol): void {
  if (otherwise !== null) made.otherwise = otherwise;
  made.level = null;
  made.rules = [];
  made.measures = {};
  made.advice = [];
  made.ask_first = [];
  made.take_first = [];
  made.missing = [];
  made.would_tell_more = [];
}

function addFacts(made: Writable<Outcome>, facts: Facts): void {
  made.unobtainable = facts.unobtainable;
  made.declined = facts.declined;
  made.stands_in = facts.stands_in;
  made.assumed = facts.assumed;
  made.limits = facts.limits;
  made.taken = facts.taken;
  made.refused = facts.refused;
  made.questioned = facts.questioned;
  made.unused = facts.unused;
}

function levelToJson({ atLeast, couldBe, settled }: LevelAnswer, { ladder }: Protocol): OutcomeLevel {
  const name = (level: number): string => ladder.levels[level]?.name ?? '';
  return { at_least: atLeast === null ? null : name(atLeast), could_be: name(couldBe), settled };
}

/** Why the protocol is not for this patient, or what would have to be known to say so. */
function appliesBecause(situation: Situation): readonly string[] {
  const { compiled, answers } = situation;
  const { applies } = compiled.protocol;
  if (!applies) return [];
  if (answers.applies === 'no')
    return compiled.explainer.because(applies, false, answers.wide, 'the protocol is for');
  const open = [...comparisonsIn(applies)].filter((each: Comparison) => isUndecided(each, situation));
  return open.map((each) =>
    compiled.tell(each)(answers.wide, { holds: null, wanted: true, asker: 'the protocol is for' }),
  );
}
