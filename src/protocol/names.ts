import type { ObservationEntry } from '../vocabulary/observation.ts';
import type { Basis } from './based-on/basis.ts';
import type { Contradiction, Ladder, Limit, Observation, Operand } from './protocol.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';

/**
 * The names that a protocol can use, gathered before any of its parts is read.
 *
 * Measures and rules are listed by name alone: what they are is read later.
 */
export interface Names {
  /** Listed under needs, helps or standing, or read by applies_when. */
  readonly observations: ReadonlyMap<string, Observation>;
  /** Everything that the dictionary and the protocol itself declare. */
  readonly declared: ReadonlyMap<string, ObservationEntry>;
  /** Declared in the file, but not readable: what names them is not told of again. */
  readonly unreadable: ReadonlySet<string>;
  readonly contradictions: readonly Contradiction[];
  readonly limits: ReadonlyMap<string, Limit>;
  readonly measures: ReadonlySet<string>;
  readonly rules: ReadonlySet<string>;
  /** The same, by their places in the file. */
  readonly ruleAt: readonly string[];
  /** What came from the protocol that this one is based on; null when it stands alone. */
  readonly basis: Basis | null;
  readonly sources: ReadonlySet<string>;
  readonly ladder: Ladder | null;
}

/** What a name means as a number; null when it means none. Observations that are no numbers are not numbers. */
export function numberNamed(names: Names, name: string): Operand | null {
  if (names.observations.get(name)?.kind === 'number') return { kind: 'observation', name };
  if (names.limits.has(name)) return { kind: 'limit', name };
  if (names.measures.has(name)) return { kind: 'measure', name };
  return null;
}

type Candidate = Parameters<typeof nearMiss>[1][number];

const numbersOf = new WeakMap<Names, readonly Candidate[]>();

/** Everything that stands for a number, for a near miss; gathered once, as a file can have many mistakes. */
export function numbers(names: Names): readonly Candidate[] {
  const known = numbersOf.get(names);
  if (known) return known;
  const observations = [...names.declared.values()].filter((each) => each.kind === 'number');
  const others = [...names.limits.keys(), ...names.measures].map((name) => ({ name }));
  const made = [...observations, ...others];
  numbersOf.set(names, made);
  return made;
}

const candidatesOf = new WeakMap<object, readonly Candidate[]>();

/** The near miss of a written name among some names; a list that is asked again is not made again. */
export function nearestOf(written: string, names: Iterable<string> & object): string | null {
  const known = candidatesOf.get(names) ?? [...names].map((name) => ({ name }));
  candidatesOf.set(names, known);
  return nearMiss(written, known);
}
