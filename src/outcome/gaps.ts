import type { Observation, Protocol, Rule } from '../protocol/protocol.ts';
import { observationsOfCondition } from '../protocol/walk.ts';
import { decidedIf, type Deciding } from './decided-if.ts';
import { readByRules } from './read-by-rules.ts';
import type { RuleReaders } from './rule-readers.ts';
import type { Situation } from './situation.ts';
import type { Piece } from './suppose.ts';
import { inOrderOfTelling } from './take-first.ts';
import { lacks } from './view.ts';
import { waitsOfCondition, waitsOfExceptions, waitsOfRule, isUndecided, type Waiting } from './waits.ts';
import { answer, whatIf, type PieceAnswer } from './what-if.ts';

/** What one undecided rule waits for, and which values would decide it. */
export interface RuleGap extends Waiting {
  readonly decidedIf: readonly Deciding[];
}

/** What is missing, and what it would tell. */
export interface Gaps {
  /** By the name of the rule; only undecided ones. */
  readonly rules: ReadonlyMap<string, RuleGap>;
  readonly askFirst: readonly string[];
  readonly takeFirst: readonly string[];
  readonly missing: readonly string[];
  readonly wouldTellMore: readonly string[];
}

export function gapsOf(situation: Situation): Gaps {
  const missing = missingOf(situation);
  const undecided = situation.answers.rules
    .filter(({ state }) => state === 'undecided')
    .flatMap(({ rule }) => situation.compiled.rules.get(rule.name) ?? []);
  const waiting = new Map(undecided.map((each) => [each, waitsOfRule(each.rule, situation)]));
  const asked = new Map<string, readonly PieceAnswer[] | null>();
  const ask = (observation: Observation): readonly PieceAnswer[] | null => {
    const before = asked.get(observation.name);
    if (before !== undefined) return before;
    const made = whatIf(observation, undecided, situation);
    asked.set(observation.name, made);
    return made;
  };
  const rules = new Map(
    [...waiting].map(([each, waits]) => [
      each.rule.name,
      { ...waits, decidedIf: decidingValues(each, waits, ask, situation) },
    ]),
  );
  const askFirst = askFirstOf(situation);
  return {
    rules,
    askFirst,
    takeFirst: takeFirstOf(missing, undecided, ask, situation),
    missing: missing.map(({ name }) => name),
    wouldTellMore: wouldTellMoreOf([...waiting.values()], askFirst, situation),
  };
}

type Ask = (observation: Observation) => readonly PieceAnswer[] | null;

function decidingValues(
  rule: RuleReaders,
  { observations }: Waiting,
  ask: Ask,
  situation: Situation,
): readonly Deciding[] {
  const { protocol, reads } = situation.compiled;
  return [...observations].flatMap((name) => {
    const observation = protocol.observations.get(name);
    if (!observation || reads.get(rule.rule.name)?.lookedBackAt.has(name)) return [];
    const answers = ask(observation);
    const deciding = answers ? decidedIf({ rule, observation, situation }, answers) : [];
    return mayBringFault(name, rule.rule, protocol)
      ? deciding.filter(({ state }) => state === 'met')
      : deciding;
  });
}

/** Whether a value may bring a fault of technique that makes what the rule reads unsure, so that it then rules nothing out. */
function mayBringFault(observation: string, { name }: Rule, protocol: Protocol): boolean {
  const brought = protocol.faults.filter(({ when }) => observationsOfCondition(when).includes(observation));
  const reads = readByRules(protocol).get(name);
  return brought.some(({ readsHigh, readsLow }) =>
    [...readsHigh.keys(), ...readsLow.keys()].some((each) => reads?.has(each)),
  );
}

/** Needs and scope without a value of the present set: what tells whether the protocol applies stands first. */
function missingOf({ compiled, bounds }: Situation): readonly Observation[] {
  const all = [...compiled.protocol.observations.values()];
  const without = all.filter(({ name, role }) => role !== 'helps' && lacks(bounds.facts.present.get(name)));
  return [
    ...without.filter(({ role }) => role === 'scope'),
    ...without.filter(({ role }) => role !== 'scope'),
  ];
}

function takeFirstOf(
  missing: readonly Observation[],
  undecided: readonly RuleReaders[],
  ask: Ask,
  situation: Situation,
): readonly string[] {
  const { present } = situation.bounds.facts;
  const canBeTaken = missing.filter(({ name, role }) => {
    const { state, instead } = present.get(name) ?? { state: 'missing', instead: null };
    const tried = [state, instead].some((each) => each === 'unobtainable' || each === 'declined');
    return role === 'needs' && !tried;
  });
  const each = canBeTaken.map((observation) => {
    const answers = ask(observation);
    if (answers && answers.length > 0) return { observation, answers };
    return {
      observation,
      answers: [answer(observation, everything(observation, situation), undecided, situation)],
    };
  });
  return inOrderOfTelling(each).map(({ name }) => name);
}

/** All that an observation can be, as one piece. */
function everything({ name, choices }: Observation, { compiled, bounds }: Situation): Piece {
  const places = compiled.places.observations.get(name);
  const [low, high] = [bounds.wide[places?.low ?? -1], bounds.wide[places?.high ?? -1]];
  if (low !== undefined && high !== undefined) return { kind: 'range', low, high };
  return { kind: 'choice', choice: choices[0]?.choice ?? null };
}

/** Whether the protocol is for this patient; then exceptions that alone hold a rule back, the highest level first; then explanations. */
function askFirstOf(situation: Situation): readonly string[] {
  const { compiled, answers } = situation;
  const { applies } = compiled.protocol;
  const scope =
    applies && isUndecided(applies, situation) ? waitsOfCondition(applies, situation).observations : [];
  const held = answers.rules
    .filter(({ counts }) => counts)
    .toSorted((left, right) => (right.rule.level ?? -1) - (left.rule.level ?? -1));
  const exceptions = held.flatMap(({ rule }) => [...waitsOfExceptions(rule, situation).observations]);
  return [...new Set([...scope, ...exceptions, ...openExplanations(situation)])];
}

/** What would tell whether the rules that set the level are explained, and so call for less: nothing else may keep it unsettled. */
function openExplanations(situation: Situation): readonly string[] {
  const { rules, level } = situation.answers;
  if (!level || level.settled) return [];
  return rules
    .filter(({ rule, state, counts }) => (state === 'met' || counts) && rule.level === level.atLeast)
    .filter(
      ({ rule, explained, mayBeExplained }) =>
        typeof rule.explainedBy?.level === 'number' && mayBeExplained && !explained,
    )
    .flatMap(({ rule }) => [...waitsOfExplanation(rule, situation)]);
}

/** What only helps, is missing, and could decide a rule, or an explanation of one that is met or counts. */
function wouldTellMoreOf(
  waiting: readonly Waiting[],
  askFirst: readonly string[],
  situation: Situation,
): readonly string[] {
  const { compiled, answers, bounds } = situation;
  const explanations = answers.rules
    .filter(({ state }) => state !== 'not_met')
    .flatMap(({ rule }) => [...waitsOfExplanation(rule, situation)]);
  const wanted = new Set([...waiting.flatMap(({ observations }) => [...observations]), ...explanations]);
  return [...compiled.protocol.observations.values()]
    .filter(({ role, name }) => role === 'helps' && wanted.has(name) && !askFirst.includes(name))
    .filter(({ name }) => lacks(bounds.facts.present.get(name)))
    .map(({ name }) => name);
}

function waitsOfExplanation({ explainedBy }: Rule, situation: Situation): Iterable<string> {
  return explainedBy ? waitsOfCondition(explainedBy.when, situation).observations : [];
}
