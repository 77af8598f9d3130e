import type { Operand, Protocol } from '../../protocol/protocol.ts';
import { comparisonsIn, conditionsOf, operandsOfMeasure } from '../../protocol/walk.ts';

/**
 * Which of some observations are reckoned with together, directly or through others, in any of some protocols: for each the number of its
 * cluster. What lies in different clusters never meets in one comparison.
 */
export function clustersOf(
  protocols: readonly Protocol[],
  names: readonly string[],
): ReadonlyMap<string, number> {
  const of = new Map(names.map((name, index) => [name, index]));
  const join = (together: readonly string[]): void => {
    const all = new Set(together.flatMap((name) => of.get(name) ?? []));
    const least = Math.min(...all);
    for (const [name, cluster] of of) if (all.has(cluster)) of.set(name, least);
  };
  for (const protocol of protocols) joinAll(protocol, join);
  return of;
}

function joinAll(protocol: Protocol, join: (together: readonly string[]) => void): void {
  const behind = observationsBehindMeasures(protocol);
  const named = (operand: Operand): readonly string[] =>
    operand.kind === 'observation'
      ? [operand.name]
      : operand.kind === 'measure'
        ? (behind.get(operand.name) ?? [])
        : [];
  for (const all of behind.values()) join(all);
  for (const condition of conditionsOf(protocol))
    for (const each of comparisonsIn(condition))
      if (each.kind === 'compare') join([...named(each.subject), ...named(each.to)]);
  for (const { lower, higher } of protocol.contradictions) join([lower, higher]);
}

/** The observations that each measure is worked out from, also through others. */
function observationsBehindMeasures({ measures }: Protocol): ReadonlyMap<string, readonly string[]> {
  const behind = new Map<string, readonly string[]>();
  for (const { name, how } of measures.values()) {
    const direct = operandsOfMeasure(how).flatMap((each) =>
      each.kind === 'measure'
        ? (behind.get(each.name) ?? [])
        : each.kind === 'observation'
          ? [each.name]
          : [],
    );
    const lookedAt = 'over' in how && how.observation !== null ? [how.observation] : [];
    behind.set(name, [...new Set([...direct, ...lookedAt])]);
  }
  return behind;
}
