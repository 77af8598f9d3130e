import type { Protocol } from '../../protocol/protocol.ts';
import { observationsOfCondition, observationsOfMeasure } from '../../protocol/walk.ts';

/** The observations that exceptions and explanations read, and nothing else that could call for a level. */
export function exceptionsAlone(protocols: readonly Protocol[]): readonly string[] {
  const [inExceptions, elsewhere] = [new Set<string>(), new Set<string>()];
  for (const { rules, measures, applies } of protocols) {
    for (const { when, unless, explainedBy } of rules) {
      for (const name of observationsOfCondition(when)) elsewhere.add(name);
      for (const each of [unless?.when ?? null, explainedBy?.when ?? null])
        for (const name of observationsOfCondition(each)) inExceptions.add(name);
    }
    for (const measure of measures.values())
      for (const name of observationsOfMeasure({ ...measure, notReliableWhen: null })) elsewhere.add(name);
    for (const name of observationsOfCondition(applies)) elsewhere.add(name);
  }
  return [...inExceptions].filter((name) => !elsewhere.has(name));
}
