import type { Taken } from './bounds.ts';
import type { Past } from './past.ts';
import { spanFor, type Span } from './ranges.ts';
import type { Stated } from './series.ts';
import type { ReadObservation, Value } from './read-observation.ts';
import { states, type Said, type SetAt, type Slot } from './slot.ts';

/** A standing fact of `patient.standing`. */
export interface PatientFact extends Value {
  readonly stated: Stated;
  readonly taken: Taken | null;
}

/** The statement of a standing fact that holds at a time. */
export interface Statement {
  /** Null: it was refused. The fact is then missing, as nobody can tell what holds. */
  readonly value: Value | null;
  /** When a set states it. */
  readonly said: Said | null;
  /** When the patient's own facts state it; beside a set's when both say the same at the same time, or clash. */
  readonly fact: PatientFact | null;
}

/** What standing facts are looked up in. */
export interface StandingWorld {
  readonly past: Past;
  /** By the observation's index. */
  readonly facts: ReadonlyMap<number, PatientFact>;
  /**
   * Whether the question has no time: it cannot then be told whether a fact that begins or ends holds, and it
   * is refused.
   */
  readonly untimed: boolean;
}

/**
 * The latest statement that holds at a time, in `set` or before it, or of the patient; null when there is none.
 *
 * A patient's fact holds from its beginning until its end, the end itself excluded; without a beginning it is
 * older than any set. At an equal time two values are both refused. A set that could not obtain it states
 * nothing.
 */
export function statementAt(
  read: ReadObservation,
  set: SetAt | null,
  time: number,
  age: Span | null,
  world: StandingWorld,
): Statement | null {
  const own = set?.slots[read.index];
  const said =
    set && own && states(own) ? { slot: own, moment: set } : world.past.latestStatement(read, time);
  const fact = world.facts.get(read.index);
  if (fact && world.untimed && hasTime(fact.stated)) return { value: null, said: null, fact };
  if (!fact || !holds(fact.stated, time)) return said && { value: usable(said.slot), said, fact: null };
  const begin = fact.stated.from ?? -Infinity;
  if (!said || begin > said.moment.time) {
    return { value: isPossible(fact, read, age) ? fact : null, said: null, fact };
  }
  if (begin < said.moment.time) return { value: usable(said.slot), said, fact: null };
  const agree = said.slot.state === 'value' && sameValue(said.slot, fact);
  return { value: agree ? said.slot : null, said, fact };
}

const usable = (slot: Slot): Value | null => (slot.state === 'value' ? slot : null);

export const hasTime = ({ from, until }: Stated): boolean => from !== null || until !== null;

/** Whether a statement holds at a time: from its beginning, included, until its end, excluded. */
export const holds = ({ from, until }: Stated, time: number): boolean =>
  (from === null || from <= time) && (until === null || time < until);

/** Whether a patient's fact is possible at the age. */
function isPossible(fact: PatientFact, read: ReadObservation, age: Span | null): boolean {
  if (!read.possible) return true;
  const { low, high } = spanFor(read.possible, age);
  return fact.low >= low && fact.high <= high;
}

function sameValue(left: Value, right: Value): boolean {
  if (left.low !== right.low || left.high !== right.high) return false;
  return (
    left.picked.length === right.picked.length && left.picked.every((each) => right.picked.includes(each))
  );
}
