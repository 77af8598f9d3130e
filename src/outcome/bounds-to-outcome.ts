import type { Outcome, OutcomeLevel } from '../shape/generated/types.ts';
import type { Comparison, Protocol } from '../protocol/protocol.ts';
import { comparisonsIn } from '../protocol/walk.ts';
import type { Bounds } from '../series/bounds.ts';
import { adviceOf } from './advice.ts';
import { answersOf, type LevelAnswer } from './answers.ts';
import { caution } from './caution.ts';
import type { Compiled } from './compile.ts';
import { factsToJson } from './facts-to-json.ts';
import { faultsToJson } from './faults-to-json.ts';
import { gapsOf } from './gaps.ts';
import { measuresToJson } from './measures-to-json.ts';
import { parentToJson } from './parent-to-json.ts';
import { ruleToJson } from './rule-to-json.ts';
import type { Situation } from './situation.ts';
import { isUndecided } from './waits.ts';

/**
 * What a protocol says about a patient's numbers, with the sentences that explain it.
 *
 *     bounds ─► answers (states, level) ─► gaps (what is missing, what it would tell) ─► sentences ─► outcome
 */
export function outcomeOf(compiled: Compiled, bounds: Bounds): Outcome {
  const answers = answersOf(compiled, bounds);
  const situation = { compiled, bounds, answers };
  const { protocol } = compiled;
  const head = {
    protocol: protocol.name,
    edition: protocol.edition,
    title: protocol.title,
    digest: protocol.digest,
    ...(protocol.basedOn.length === 0 ? {} : { based_on: protocol.basedOn.map(parentToJson) }),
    at: bounds.facts.at,
    applies: answers.applies,
    ...(answers.applies === 'yes' ? {} : { applies_because: appliesBecause(situation) }),
  };
  const facts = { ...factsToJson(protocol, bounds.facts), caution };
  if (!answers.level) return { ...head, ...notForThisPatient(protocol), ...facts };
  const gaps = gapsOf(situation);
  return {
    ...head,
    level: levelToJson(answers.level, protocol),
    rules: answers.rules.map((rule) => ruleToJson(rule, gaps.rules.get(rule.rule.name), situation)),
    measures: measuresToJson(situation),
    advice: adviceOf(answers.rules, protocol),
    ask_first: gaps.askFirst,
    take_first: gaps.takeFirst,
    missing: gaps.missing,
    would_tell_more: gaps.wouldTellMore,
    ...faultsToJson(situation),
    ...facts,
  };
}

function levelToJson({ atLeast, couldBe, settled }: LevelAnswer, { ladder }: Protocol): OutcomeLevel {
  const name = (level: number): string => ladder.levels[level]?.name ?? '';
  return { at_least: atLeast === null ? null : name(atLeast), could_be: name(couldBe), settled };
}

type Empty = Pick<
  Outcome,
  | 'otherwise'
  | 'level'
  | 'rules'
  | 'measures'
  | 'advice'
  | 'ask_first'
  | 'take_first'
  | 'missing'
  | 'would_tell_more'
>;

/** Outside its scope a protocol says nothing but what to use instead. */
const notForThisPatient = ({ otherwise }: Protocol): Empty => ({
  ...(otherwise === null ? {} : { otherwise }),
  level: null,
  rules: [],
  measures: {},
  advice: [],
  ask_first: [],
  take_first: [],
  missing: [],
  would_tell_more: [],
});

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
