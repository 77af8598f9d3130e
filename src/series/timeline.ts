import type { Protocol } from '../protocol/protocol.ts';
import type { Asked } from './asked.ts';
import { applyFaults } from './apply-faults.ts';
import type { Bounds } from './bounds.ts';
import { checkSet } from './check-set.ts';
import { checkSlot } from './check-slot.ts';
import { factsOf } from './facts.ts';
import { limitsAt } from './limits.ts';
import { writeLookBacks } from './look-backs.ts';
import { Past } from './past.ts';
import { patientFacts } from './patient-facts.ts';
import { readerOf } from './protocol-to-reader.ts';
import { spanFor, type Span } from './ranges.ts';
import { resolveAll } from './resolve.ts';
import type { GivenSet, Series } from './series.ts';
import { asRead, writeObservations } from './write-inputs.ts';
import type { ReadObservation, Value } from './read-observation.ts';
import type { Reader } from './reader.ts';
import { addTo, emptySet } from './set-at.ts';
import type { SetAt } from './slot.ts';
import { statementAt, type PatientFact } from './standing.ts';

/** What holds for the patient beside the sets. */
export type PatientSide = Pick<Series, 'standing' | 'limits'>;

const nobody: PatientSide = { standing: new Map(), limits: new Map() };
const noLimits: readonly never[] = [];

/**
 * One patient's sets as one protocol reads them, in the order of time.
 *
 * It keeps only what can still be needed: the sets inside the longest look back, the latest value of each
 * observation, and standing statements. `push` each set, ask `boundsAt` in between as often as wanted:
 *
 *     const timeline = new Timeline(protocol);
 *     timeline.push(set);
 *     timeline.boundsAt(set.at, set.atText).narrow;
 */
export class Timeline {
  readonly #reader: Reader;
  readonly #patient: PatientSide;
  readonly #facts: ReadonlyMap<number, PatientFact>;
  readonly #past: Past;
  readonly #unused = new Set<string>();
  /** In the order of time, the present set last. */
  #sets: SetAt[] = [];
  #present: SetAt | null = null;
  /** Whether any value so far has an error. */
  #hasErrors = false;

  constructor(protocol: Protocol, patient: PatientSide = nobody) {
    this.#reader = readerOf(protocol);
    this.#patient = patient;
    this.#past = new Past(this.#reader);
    this.#facts = patientFacts(patient.standing, this.#reader, this.#unused);
  }

  /** Takes in a set that is not earlier than those before; at the same time as the last, the two become one. */
  push(given: GivenSet): void {
    const last = this.#present;
    if (last && given.at !== last.at) {
      if (given.at === null || last.at === null || given.at < last.at) {
        throw new RangeError('sets are pushed in the order of time');
      }
      this.#check(last);
      this.#past.take(last);
    }
    if (!last || given.at !== last.at) {
      this.#present = emptySet(given, this.#reader);
      this.#sets.push(this.#present);
      this.#forget(this.#present.time - this.#reader.longest);
    }
    addTo(this.#present as SetAt, given, this.#reader, this.#unused);
  }

  /** The bounds at a time that is not before the last set; `null` only for a single set without a time. */
  boundsAt(at: number | null, atText: string | null = null): Bounds {
    const present = this.#present;
    if (present && (at === null ? present.at !== null : present.at === null || at < present.at)) {
      throw new RangeError('a question is about the time of the last set, or a later one');
    }
    if (present) this.#check(present);
    const time = at ?? 0;
    const { limits: changes } = this.#patient;
    const limits =
      changes.size === 0 ? this.#reader.ownLimits : limitsAt(time, at === null, changes, this.#reader);
    const asked = this.#asked(time, at === null, limits.steps);
    const whole: Asked = { ...asked, valueIn: (set, read) => valueIn(set, read, asked) };
    const resolved = resolveAll(asked);
    const write = (wide: boolean): Float64Array => {
      const inputs = new Float64Array(this.#reader.size);
      writeObservations(inputs, resolved, asked, wide);
      this.#reader.limits.forEach(({ place }, index) => (inputs[place] = limits.steps[index] ?? 0));
      writeLookBacks(inputs, resolved, wide ? whole : asked, wide);
      return inputs;
    };
    const narrow = write(false);
    const differs = this.#hasErrors || resolved.all.some(({ state }) => state === 'earlier');
    const wide = differs ? write(true) : narrow;
    return { narrow, wide, facts: factsOf(atText, asked, resolved, limits, this.#unused) };
  }

  /** How many sets and statements are kept. */
  get kept(): number {
    return new Set<object>([...this.#sets, ...this.#past.kept()]).size;
  }

  #asked(time: number, untimed: boolean, limits: readonly number[]): Asked {
    const asked: Asked = {
      reader: this.#reader,
      past: this.#past,
      facts: this.#facts,
      present: this.#present,
      sets: this.#sets,
      time,
      untimed,
      limits,
      valueIn: (set, read) => valueAsReadIn(set, read, asked),
      isKnownIn: (set, read) => isKnownIn(set, read, asked),
      rangeIn: ({ sureAge }, { possible }) => spanFor(possible ?? noRange, sureAge),
    };
    return asked;
  }

  /** Checks a set with the age that is known at its time. */
  #check(set: SetAt): void {
    if (set.checked) return;
    const { age, faults } = this.#reader;
    const asked = this.#asked(set.time, set.at === null, noLimits);
    if (age) {
      const slot = set.slots[age.index];
      if (slot) checkSlot(slot, age, null);
      set.sureAge = valueIn(set, age, asked);
      set.age = set.sureAge ?? this.#earlierAge(age, set);
    }
    checkSet(set, this.#reader, set.age);
    applyFaults(set, faults, asked);
    this.#hasErrors ||= set.slots.some((slot) => slot && slot.asRead !== null);
  }

  #earlierAge(age: ReadObservation, set: SetAt): Span | null {
    const earlier = this.#past.candidate(age);
    if (!earlier || set.time - earlier.time > age.goodFor) return null;
    const slot = earlier.slots[age.index];
    return slot?.state === 'value' ? slot : null;
  }

  /** Drops the sets that no window can reach any more. */
  #forget(since: number): void {
    let old = 0;
    while (old < this.#sets.length - 1 && (this.#sets[old]?.time ?? Infinity) <= since) old += 1;
    if (old > 0) this.#sets.splice(0, old);
    this.#past.forget(since);
  }
}

const noRange = { bands: [], hull: { low: 0, high: 0 } };

function valueIn(set: SetAt, read: ReadObservation, asked: Asked): Value | null {
  if (read.entry.standing) {
    const statement = statementAt(read, set, set.time, set.sureAge, asked);
    return statement ? statement.value : read.assumed;
  }
  const slot = set.slots[read.index];
  return slot?.state === 'value' ? slot : null;
}

function valueAsReadIn(set: SetAt, read: ReadObservation, asked: Asked): Value | null {
  const value = valueIn(set, read, asked);
  return value && asRead(value);
}

/** Whether the set itself, or a standing statement at its time, gives a value. */
function isKnownIn(set: SetAt, read: ReadObservation, asked: Asked): boolean {
  if (!read.entry.standing) return set.slots[read.index]?.state === 'value';
  return (statementAt(read, set, set.time, set.sureAge, asked)?.value ?? null) !== null;
}
