import type { Protocol, Rule } from '../../protocol/protocol.ts';
import { rulesNamed } from '../../protocol/walk.ts';
import { isMet } from './answered.ts';
import type { Asking, Happens } from './asking.ts';
import type { Found } from './finding.ts';
import { sentences } from './wording.ts';

/** Rules that are always met together, or the one only where the other is, although neither says so by naming the other. */
export function* inside(asking: Asking): Generator<Found> {
  const { protocol } = asking.compiled;
  const named = everythingNamed(protocol);
  const rules = protocol.rules.filter((rule) => asking.known.some((answers) => isMet(rule, answers)));
  for (const [index, rule] of rules.entries()) {
    for (const other of rules.slice(index + 1)) {
      if (named.get(rule.name)?.has(other.name) || named.get(other.name)?.has(rule.name)) continue;
      yield* foundFor(rule, other, asking);
    }
  }
}

function* foundFor(rule: Rule, other: Rule, asking: Asking): Generator<Found> {
  const [one, two] = [without(rule, other, asking), without(other, rule, asking)];
  if (one === 'no' && two === 'no') {
    const name = `rules ${rule.name} and ${other.name} are always met together`;
    const sentence = sentences.rules_always_together(rule, other);
    yield {
      kind: 'rules_always_together',
      name,
      path: rule.path,
      is: 'found',
      sentence,
      witnesses: [],
      needsAnswer: true,
    };
    return;
  }
  yield* insideOne(rule, other, one);
  yield* insideOne(other, rule, two);
}

function* insideOne(inner: Rule, outer: Rule, is: Happens): Generator<Found> {
  const name = `rule ${inner.name} is met only where rule ${outer.name} is`;
  const head = { kind: 'rule_inside_another', name, path: inner.path } as const;
  if (is === 'yes') return;
  if (is !== 'no') {
    yield { ...head, is: 'not_settled', because: is };
    return;
  }
  const higher = (inner.level ?? -1) > (outer.level ?? -1);
  const sentence = sentences.rule_inside_another(inner, outer, higher);
  yield { ...head, is: 'found', sentence, witnesses: [], needsAnswer: !higher };
}

/** Whether some set meets the one rule and not the other. */
const without = (rule: Rule, other: Rule, asking: Asking): Happens =>
  asking.happens({
    holds: (of) => [of.mayApply(), of.met(rule), of.not(of.met(other))],
    confirms: (answers) => isMet(rule, answers) && !isMet(other, answers),
  });

/** For each rule all rules that it names, also through others. */
function everythingNamed({ rulesInOrder }: Protocol): ReadonlyMap<string, ReadonlySet<string>> {
  const all = new Map<string, ReadonlySet<string>>();
  for (const { name, when, unless } of rulesInOrder) {
    const named = [when, unless?.when ?? null].flatMap(rulesNamed);
    all.set(name, new Set(named.flatMap((each) => [each, ...(all.get(each) ?? [])])));
  }
  return all;
}
