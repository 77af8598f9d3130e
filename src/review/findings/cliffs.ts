import type { Observation, Protocol, Rule } from '../../protocol/protocol.ts';
import { observationsBehind } from '../observations-behind.ts';
import { needsKnown } from './needs-known.ts';
import { calledFor } from './answered.ts';
import type { Asking, Question, StepExistence } from './asking.ts';
import type { Found, WhyOpen } from './finding.ts';
import { witness } from './witness.ts';
import { sentences } from './wording.ts';

/** A step that moves the level. */
interface Cliff {
  readonly observation: Observation;
  readonly to: number;
  readonly step: Extract<StepExistence, { kind: 'step' }>;
}

/**
 * Rules with which one step of one number moves the level by two rungs of the ladder or more, everything that is needed being known on
 * both sides. Told for each rule and for the level that it drops to, the lowest that it can.
 */
export function* cliffs(asking: Asking): Generator<Found> {
  const { rules } = asking.compiled.protocol;
  for (const rule of rules) {
    for (const level of new Set([rule.level ?? 0, rule.explainedBy?.level ?? 0])) {
      if (level >= 2) yield* cliffsOf(rule, level, asking);
    }
  }
}

function* cliffsOf(rule: Rule, level: number, asking: Asking): Generator<Found> {
  const found: Cliff[] = [];
  const open: { readonly observation: Observation; readonly because: WhyOpen }[] = [];
  for (const observation of numbersBehind(rule, asking)) {
    const is = steepest(rule, level, observation, asking);
    if (is && 'because' in is) open.push({ observation, because: is.because });
    else if (is) found.push(is);
  }
  const { levels } = asking.compiled.protocol.ladder;
  const head = { kind: 'cliff', path: rule.path } as const;
  const name = (all: readonly { observation: Observation }[]): string =>
    `rule ${rule.name}, one step of ${all.map(({ observation }) => observation.name).join(', ')}`;
  for (const to of new Set(found.map((each) => each.to))) {
    const steps = found.filter((each) => each.to === to);
    const names = `${name(steps)}: ${levels[level]?.name ?? ''} to ${levels[to]?.name ?? ''}`;
    const { from: near, to: far } = (steps[0] as Cliff).step;
    const sets = [near, far].map((box) => witness(box, names, asking));
    const sentence = sentences.cliff(
      rule,
      steps.map(({ observation }) => observation),
      levels[level],
      levels[to],
    );
    yield { ...head, name: names, is: 'found', sentence, witnesses: sets, needsAnswer: true };
  }
  for (const { observation, because } of open)
    yield { ...head, name: name([{ observation }]), is: 'not_settled', because };
}

/** The numbers that can turn whether a rule calls for its level. */
function numbersBehind({ name }: Rule, { compiled: { protocol, logic } }: Asking): Observation[] {
  const rule = logic.rules.find((each) => each.rule === name);
  return observationsBehind(logic, rule ? [rule.counts, rule.explained.certain] : [])
    .flatMap((each) => protocol.observations.get(each) ?? [])
    .filter(({ kind }) => kind === 'number');
}

/** The lowest level that one step leads to, at least two rungs below. */
function steepest(
  rule: Rule,
  level: number,
  observation: Observation,
  asking: Asking,
): Cliff | { readonly because: WhyOpen } | null {
  const stepTo = (to: number): StepExistence =>
    asking.existsStep(
      { from: callsFor(rule, level, asking), to: atMost(rule, to, asking), allowed: needsKnown },
      observation.name,
    );
  const first = stepTo(level - 2);
  if (first.kind === 'open') return { because: first.because };
  if (first.kind === 'none') return null;
  let [step, to] = [first, lowestOf(first, asking)];
  while (to > 0) {
    const lower = stepTo(to - 1);
    if (lower.kind === 'open') return { because: lower.because };
    if (lower.kind === 'none') break;
    [step, to] = [lower, lowestOf(lower, asking)];
  }
  return { observation, to, step };
}

/** The level beyond the step. */
function lowestOf({ to }: Cliff['step'], asking: Asking): number {
  const answers = asking.answersTo(to);
  return answers ? calledFor(answers) : 0;
}

const callsFor = (rule: Rule, level: number, { compiled }: Asking): Question => ({
  holds: (of) => [
    of.calls(rule, level),
    ...of.noneAbove(level, others(rule, compiled.protocol)),
    of.surelyApplies(),
  ],
  confirms: (answers) => answers.applies === 'yes' && calledFor(answers) === level,
});

/** The rule itself first, which turns. */
const atMost = (rule: Rule, level: number, { compiled }: Asking): Question => ({
  holds: (of) => [...of.noneAbove(level, [rule, ...others(rule, compiled.protocol)]), of.surelyApplies()],
  confirms: (answers) => answers.applies === 'yes' && calledFor(answers) <= level,
});

const others = (rule: Rule, { rules }: Protocol): Rule[] => rules.filter((each) => each !== rule);
