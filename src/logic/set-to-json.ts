import type { Observation, ObservationEntry, Protocol } from '../protocol/protocol.ts';
import { possibleRange } from '../vocabulary/possible-range.ts';
import { wholePair } from '../vocabulary/whole-pair.ts';
import type { Input } from './inputs.ts';

/** What a set may give, as logic.schema.json tells it to whoever makes inputs from a set. */
export function observationsToJson(protocol: Protocol): readonly object[] {
  return [...protocol.observations.values(), ...ageOfBands(protocol)].map((entry) => ({
    observation: entry.name,
    kind: entry.kind,
    ...(entry.kind === 'number'
      ? numberToJson(entry)
      : { choices: entry.choices.map(({ choice }) => choice) }),
    ...(entry.standing && entry.ifNotStated !== null ? { assumed: entry.ifNotStated } : {}),
  }));
}

function numberToJson({ unit, stepsPerUnit, possible }: ObservationEntry): object {
  return {
    ...(unit ? { unit: unit.ucum } : {}),
    steps_per_unit: stepsPerUnit.toFraction(),
    possible: possible.map(({ ageBelow, low, high }) => ({
      ...(ageBelow === null ? {} : { age_below: ageBelow }),
      low,
      high,
    })),
  };
}

/** The age, where only the ranges of other observations ask for it. */
export function ageOfBands({ observations, vocabulary }: Protocol): readonly ObservationEntry[] {
  const age = vocabulary.get('age');
  const banded = [...observations.values()].some(({ possible }) => possible.length > 1);
  return age && banded && !observations.has('age') ? [age] : [];
}

/** Pairs that cannot both be right, in whole numbers. */
export function contradictionsToJson({ contradictions, vocabulary }: Protocol): readonly object[] {
  return contradictions.flatMap(({ lower, higher, mayBeEqual }) => {
    const [below, above] = [vocabulary.get(lower), vocabulary.get(higher)];
    if (!below || !above) return [];
    return [{ lower, higher, may_be_equal: mayBeEqual, ...wholePair(below, above) }];
  });
}

/** What goes in while nothing is known; nothing for a look back. */
export function otherwiseToJson(
  { of, owner, part, choice }: Input,
  { limits, observations }: Protocol,
): { readonly otherwise?: number } {
  if (of === 'look_back') return {};
  if (of === 'limit') return { otherwise: limits.get(owner)?.value ?? 0 };
  const entry = observations.get(owner);
  return entry ? { otherwise: ofObservation(entry, part, choice) } : {};
}

function ofObservation(entry: Observation, part: Input['part'], choice: string | null): number {
  const { low, high } = possibleRange(entry);
  const assumed = entry.standing ? entry.ifNotStated : null;
  switch (part) {
    case 'low':
      return typeof assumed === 'number' ? assumed : low;
    case 'high':
      return typeof assumed === 'number' ? assumed : high;
    case 'may':
      return assumed === null || assumed === choice ? 1 : 0;
    case 'missing':
      return assumed === null ? 1 : 0;
    case 'sure':
      return assumed !== null && assumed === choice ? 1 : 0;
    default:
      return 0;
  }
}
