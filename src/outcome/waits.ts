import type { Condition, LookBack, Measure, Operand, Rule } from '../protocol/protocol.ts';
import { conditionsOfMeasure, observationsOfCondition, operandsOfMeasure } from '../protocol/walk.ts';
import { isOpen, type Situation } from './situation.ts';

/** What stands in the way of an answer. */
export interface Waiting {
  /** Observations that are missing, or known only as a range, in the order in which they are met. */
  readonly observations: Set<string>;
  /** Measures that have no value, and that no observation of the present set would give one. */
  readonly withoutValue: Set<string>;
}

interface Walk extends Waiting {
  readonly situation: Situation;
  readonly seen: Set<string>;
}

/** What could still decide an undecided rule: only parts that are themselves undecided are looked into. */
export function waitsOfRule(rule: Rule, situation: Situation): Waiting {
  const walk = newWalk(situation);
  throughRule(rule, walk);
  return walk;
}

/** What could still decide a condition. */
export function waitsOfCondition(condition: Condition, situation: Situation): Waiting {
  const walk = newWalk(situation);
  through(condition, walk);
  return walk;
}

/** What would answer the exceptions that alone hold back a rule that counts: its own, and those of rules that it names. */
export function waitsOfExceptions(rule: Rule, situation: Situation): Waiting {
  const walk = newWalk(situation);
  throughExceptions(rule, walk);
  return walk;
}

/** The observations without one known value that a measure is made of. */
export function waitsOfMeasure(name: string, situation: Situation): Waiting {
  const walk = newWalk(situation);
  throughNumber({ kind: 'measure', name }, walk);
  return walk;
}

const newWalk = (situation: Situation): Walk => ({
  situation,
  seen: new Set(),
  observations: new Set(),
  withoutValue: new Set(),
});

/** Whether a condition is neither certain nor impossible. */
export function isUndecided(condition: Condition, { compiled, answers }: Situation): boolean {
  const { certain, possible } = compiled.conditions.of(condition);
  return certain(answers.narrow.result) === 0 && possible(answers.wide.result) !== 0;
}

function throughExceptions(rule: Rule, walk: Walk): void {
  if (!firstTime(`exceptions of ${rule.name}`, walk)) return;
  const { compiled } = walk.situation;
  if (rule.unless && isUndecided(rule.unless.when, walk.situation)) through(rule.unless.when, walk);
  const open: Condition[] = [rule.when];
  for (let next = open.pop(); next; next = open.pop()) {
    if ('of' in next) open.push(...[...next.of].reverse());
    if (next.kind !== 'rule') continue;
    const named = compiled.rules.get(next.rule);
    const { narrow } = walk.situation.answers;
    if (named && named.certain(narrow.result) === 0 && named.counts(narrow.result) !== 0)
      throughExceptions(named.rule, walk);
  }
}

function throughRule(rule: Rule, walk: Walk): void {
  if (!firstTime(`rule ${rule.name}`, walk)) return;
  through(rule.when, walk);
  if (rule.unless) through(rule.unless.when, walk);
}

function through(condition: Condition, walk: Walk): void {
  const { situation } = walk;
  if (!isUndecided(condition, situation)) return;
  switch (condition.kind) {
    case 'rule': {
      const named = situation.compiled.rules.get(condition.rule);
      if (named) throughRule(named.rule, walk);
      return;
    }
    case 'compare':
      throughNumber(condition.subject, walk);
      throughNumber(condition.to, walk);
      return;
    case 'one_of':
      throughObservation(condition.observation, walk);
      return;
    case 'known':
    case 'unobtainable':
      return;
    default:
      for (const each of condition.of) through(each, walk);
  }
}

const firstTime = (key: string, { seen }: Walk): boolean => !seen.has(key) && Boolean(seen.add(key));

function throughObservation(name: string, { situation, observations }: Walk): void {
  if (isOpen(name, situation)) observations.add(name);
}

function throughNumber(operand: Operand, walk: Walk): void {
  if (operand.kind === 'observation') throughObservation(operand.name, walk);
  if (operand.kind !== 'measure' || !firstTime(`measure ${operand.name}`, walk)) return;
  const measure = walk.situation.compiled.protocol.measures.get(operand.name);
  if (measure && isOpenMeasure(measure, walk)) throughMeasure(measure, walk);
}

function isOpenMeasure({ name }: Measure, { situation }: Walk): boolean {
  const { amounts } = situation.compiled;
  const { narrow, wide } = situation.answers;
  const sure = amounts.sure(name);
  if (sure(wide.result) === 0 || sure(narrow.result) === 0) return true;
  const { low, high } = amounts.of({ kind: 'measure', name }).amount(wide);
  return low !== high;
}

function throughMeasure(measure: Measure, walk: Walk): void {
  const { how, name } = measure;
  const { amounts } = walk.situation.compiled;
  const { wide } = walk.situation.answers;
  if ('over' in how) return throughLookBack(measure, how, walk);
  if (how.kind === 'curve' && amounts.maybe(name)(wide.result) === 0) walk.withoutValue.add(name);
  if (how.kind === 'choose') for (const when of conditionsOfMeasure(how)) through(when, walk);
  if (how.kind === 'score') {
    for (const part of how.parts) if (part.kind === 'choices') throughObservation(part.observation, walk);
  }
  const operands = how.kind === 'choose' ? how.entries.map(({ use }) => use) : operandsOfMeasure(how);
  for (const operand of operands) throughNumber(operand, walk);
  return undefined;
}

function throughLookBack({ name }: Measure, how: LookBack, walk: Walk): void {
  const { amounts } = walk.situation.compiled;
  if (amounts.sure(name)(walk.situation.answers.wide.result) === 0) walk.withoutValue.add(name);
  if (how.presentSet === 'left_out') return;
  if (how.observation !== null) throughObservation(how.observation, walk);
  for (const condition of conditionsOfMeasure(how)) {
    for (const observation of observationsOfCondition(condition)) throughObservation(observation, walk);
  }
}
