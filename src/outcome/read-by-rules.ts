import type { Condition, Operand, Protocol } from '../protocol/protocol.ts';
import {
  observationsOfCondition,
  observationsOfMeasure,
  operandsOfCondition,
  operandsOfMeasure,
  rulesNamed,
} from '../protocol/walk.ts';

const remembered = new WeakMap<Protocol, ReadonlyMap<string, ReadonlySet<string>>>();

/** The observations that each rule's answer depends on, directly or through measures and rules, by the name of the rule. */
export function readByRules(protocol: Protocol): ReadonlyMap<string, ReadonlySet<string>> {
  const known = remembered.get(protocol);
  if (known) return known;
  const measures = new Map<string, ReadonlySet<string>>();
  const through = (operands: readonly Operand[]): string[] =>
    operands.flatMap((each) => (each.kind === 'measure' ? [...(measures.get(each.name) ?? [])] : []));
  // Each measure and each rule stands after those that it reads.
  for (const measure of protocol.measures.values())
    measures.set(
      measure.name,
      new Set([...observationsOfMeasure(measure), ...through(operandsOfMeasure(measure.how))]),
    );
  const rules = new Map<string, ReadonlySet<string>>();
  const ofCondition = (condition: Condition | null): string[] => [
    ...observationsOfCondition(condition),
    ...through(operandsOfCondition(condition)),
    ...rulesNamed(condition).flatMap((rule) => [...(rules.get(rule) ?? [])]),
  ];
  for (const { name, when, unless } of protocol.rulesInOrder)
    rules.set(name, new Set([...ofCondition(when), ...ofCondition(unless?.when ?? null)]));
  remembered.set(protocol, rules);
  return rules;
}
