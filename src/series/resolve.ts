import type { Asked } from './asked.ts';
import type { Remark } from './bounds.ts';
import { dropUnfit } from './drop-unfit.ts';
import type { Span } from './ranges.ts';
import { insteadOf, missing, type Resolution } from './resolution.ts';
import type { ReadObservation } from './read-observation.ts';
import { saysAnything } from './set-at.ts';
import type { Moment, SetAt, Slot } from './slot.ts';
import { statementAt } from './standing.ts';

/** All observations, in the reader's order, and the ages that the ranges are chosen by. */
export interface Resolved {
  readonly all: readonly Resolution[];
  /** With an earlier age standing in; null when unknown. */
  readonly age: Span | null;
  /** With an earlier age counted as missing. */
  readonly sureAge: Span | null;
  /** Earlier values that would have stood in, and why they do not. */
  readonly dropped: readonly Remark[];
}

/** Finds out how every observation stands: given, earlier, standing, assumed, or one of the kinds of nothing. */
export function resolveAll(asked: Asked): Resolved {
  const { reader } = asked;
  const ageNow = reader.age && resolve(reader.age, asked, null);
  const age = ageNow?.value ?? null;
  const sureAge = ageNow?.state === 'earlier' ? null : age;
  const all = reader.observations.map((read) =>
    ageNow && read === reader.age ? ageNow : resolve(read, asked, age),
  );
  return { all, age, sureAge, dropped: dropUnfit(all, age, asked) };
}

function resolve(read: ReadObservation, asked: Asked, age: Span | null): Resolution {
  const { present } = asked;
  const slot = present?.slots[read.index] ?? null;
  if (read.entry.standing) return resolveStanding(read, slot, asked, age);
  if (present && slot?.state === 'value') {
    if (asked.time - present.time > read.goodFor) return missing(null, present);
    return {
      state: 'given',
      value: slot,
      known: true,
      slot,
      moment: present,
      statement: null,
      instead: null,
    };
  }
  const source = standIn(read, asked);
  if (!source) return missing(slot, present);
  const earlier = source.slots[read.index] as Slot;
  const instead = slot ? insteadOf(slot) : null;
  return {
    state: 'earlier',
    value: earlier,
    known: true,
    slot: earlier,
    moment: source,
    statement: null,
    instead,
  };
}

/**
 * The earlier set whose value stands in for one that the present set lacks; null when none does.
 *
 * It is at most `good_for` old, exactly so old included. Of a group it comes from the latest earlier set that
 * gives a value of any of them, and from none when the present set says anything of the group.
 */
function standIn(read: ReadObservation, { present, past, reader, time }: Asked): SetAt | null {
  const source = past.candidate(read);
  if (!source || !present || time - source.time > read.goodFor) return null;
  if (read.group !== -1 && saysAnything(present, read.group, reader)) return null;
  return source.slots[read.index]?.state === 'value' ? source : null;
}

function resolveStanding(
  read: ReadObservation,
  slot: Slot | null,
  asked: Asked,
  age: Span | null,
): Resolution {
  const { present, time } = asked;
  const statement = statementAt(read, present, time, age, asked);
  const none = slot ? insteadOf(slot) : null;
  if (!statement) {
    if (!read.assumed) return missing(slot, present);
    return {
      state: 'assumed',
      value: read.assumed,
      known: false,
      slot: null,
      moment: null,
      statement,
      instead: none,
    };
  }
  const { value, said, fact } = statement;
  const moment = said?.moment ?? (fact && factMoment(fact.stated.from));
  const isOwn = said !== null && said.slot === slot;
  const state = value === null ? 'refused' : isOwn ? 'given' : 'standing';
  const instead = isOwn || value === null ? null : none;
  return { state, value, known: value !== null, slot: said?.slot ?? null, moment, statement, instead };
}

const factMoment = (from: number | null): Moment => ({ time: from ?? 0, at: from, text: null });
