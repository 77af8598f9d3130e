import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import type { Limit, ObservationEntry, Protocol } from '../protocol/protocol.ts';
import { setVocabularyOf, type SetVocabulary } from '../series/set-reading.ts';

/**
 * What a set for several protocols may name. One name means one thing: an observation, or a limit, that two of them declare
 * differently is a problem at the later one.
 */
export function gatherVocabulary(
  members: readonly { readonly protocol: Protocol; readonly path: Path }[],
  report: Report,
): SetVocabulary {
  const observations = new Map<string, ObservationEntry>();
  const limits = new Map<string, Limit>();
  const first = new Map<string, string>();
  const differs = (name: string, protocol: Protocol, path: Path): void =>
    report('ward_name_means_two_things', path, {
      name,
      first: first.get(name) ?? '',
      second: protocol.name,
    });
  for (const { protocol, path } of members) {
    for (const [name, entry] of setVocabularyOf(protocol).observations) {
      const before = observations.get(name);
      if (!before || (entry.standing && !before.standing)) observations.set(name, entry);
      if (before && !sameObservation(before, entry)) differs(name, protocol, path);
      else if (!before) first.set(name, protocol.name);
    }
    for (const [name, limit] of protocol.limits) {
      const before = limits.get(name);
      if (before && !sameLimit(before, limit)) differs(name, protocol, path);
      if (before) continue;
      limits.set(name, limit);
      first.set(name, protocol.name);
    }
  }
  return { observations, limits };
}

/** Whether a value means the same to both. What each protocol says of it being standing is its own. */
function sameObservation(left: ObservationEntry, right: ObservationEntry): boolean {
  if (left === right) return true;
  const meaning = ({ kind, unit, stepsPerUnit, choices, possible }: ObservationEntry): string =>
    JSON.stringify([
      kind,
      unit?.ucum,
      stepsPerUnit.toFraction(),
      choices.map(({ choice }) => choice),
      possible,
    ]);
  return meaning(left) === meaning(right);
}

function sameLimit(left: Limit, right: Limit): boolean {
  const meaning = ({ unit, stepsPerUnit, between }: Limit): string =>
    JSON.stringify([unit?.ucum, stepsPerUnit.toFraction(), between]);
  return meaning(left) === meaning(right);
}
