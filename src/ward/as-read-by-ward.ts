import type { Condition, Fault, Observation, ObservationEntry, Protocol } from '../protocol/protocol.ts';
import { observationsOfCondition } from '../protocol/walk.ts';

/** What a ward adds to each protocol that it reads with. */
interface Ward {
  readonly vocabulary: ReadonlyMap<string, ObservationEntry>;
  /** The faults of technique of all its protocols. */
  readonly faults: readonly Fault[];
}

/**
 * A protocol as a ward reads with it: for the patients whom the ward's condition leaves too, and with every fault of technique that
 * any of the ward's protocols knows. Its rules, measures and limits stay what they are.
 */
export function asReadByWard(
  protocol: Protocol,
  when: Condition | null,
  { vocabulary, faults }: Ward,
): Protocol {
  const observations = new Map(protocol.observations);
  for (const name of observationsOfCondition(when)) {
    const entry = vocabulary.get(name);
    if (entry && !observations.has(name))
      observations.set(name, { ...entry, role: 'scope' } satisfies Observation);
  }
  return { ...protocol, applies: bothOf(protocol.applies, when), observations, vocabulary, faults };
}

function bothOf(own: Condition | null, when: Condition | null): Condition | null {
  if (!own || !when) return own ?? when;
  return { kind: 'all', of: [own, when], path: ['reads_with'] };
}
