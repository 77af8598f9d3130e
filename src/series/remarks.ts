import type { Asked } from './asked.ts';
import type { Remark } from './bounds.ts';
import { factRemarks, type Remarks } from './fact-remarks.ts';
import type { Resolution } from './resolution.ts';
import type { Resolved } from './resolve.ts';
import type { ReadObservation } from './read-observation.ts';
import type { Moment, SetAt, Slot } from './slot.ts';

/**
 * What is to be told of the values that count now: those of the present set, those that stand in or hold, and
 * those in the window of a look back. An earlier refusal is told while the value, had it been right, would
 * stand in now.
 *
 * The present set comes first, then the others, latest first; within a set, the protocol's order.
 */
export function remarksOf(asked: Asked, resolved: Resolved): Remarks {
  const remarks: Remarks = { taken: [], refused: [], questioned: [] };
  const { observations } = asked.reader;
  const nowOf = (read: ReadObservation): Resolution => resolved.all[read.index] as Resolution;
  const told = new Set<Slot>();
  if (asked.present?.remarked) {
    for (const read of observations) {
      const slot = asked.present.slots[read.index];
      if (!slot) continue;
      told.add(slot);
      tell(remarks, slot, isUsed(read, asked.present, nowOf(read), asked), null);
    }
  }
  for (const read of observations) {
    const { statement } = nowOf(read);
    if (!statement) continue;
    const { said, fact } = statement;
    if (said && !told.has(said.slot)) tell(remarks, said.slot, true, said.moment);
    if (said) told.add(said.slot);
    if (fact) factRemarks(remarks, read, statement, fact, resolved.age, asked.untimed);
  }
  for (const set of earlierSets(asked, resolved)) {
    for (const read of observations) {
      const slot = set.slots[read.index];
      const now = nowOf(read);
      if (!slot || told.has(slot)) continue;
      const used = isUsed(read, set, now, asked);
      if (used || wouldStandIn(read, set, now, asked)) tell(remarks, slot, used, set);
    }
  }
  return remarks;
}

/** A refusal is always told; that a value was moved or is questioned, only while it is used. */
function tell(remarks: Remarks, slot: Slot, used: boolean, moment: Moment | null): void {
  const dated = (remark: Remark): Remark =>
    moment?.text ? { ...remark, because: `${remark.because} (${moment.text})` } : remark;
  if (slot.refused) remarks.refused.push(...slot.refused.map(dated));
  if (slot.questioned && used) remarks.questioned.push(...slot.questioned.map(dated));
  if (slot.taken && used) remarks.taken.push(slot.taken);
}

/** Whether what the set says is used: as the value now, or in the window of a look back. */
function isUsed(read: ReadObservation, set: SetAt, now: Resolution, asked: Asked): boolean {
  const isNow = now.value !== null && now.slot === set.slots[read.index];
  return isNow || set.time > asked.time - read.watched;
}

/** Whether the value, had it not been refused, would stand in now. */
function wouldStandIn(read: ReadObservation, set: SetAt, now: Resolution, asked: Asked): boolean {
  if (set.slots[read.index]?.state !== 'refused' || read.entry.standing) return false;
  if (now.state === 'given' || asked.time - set.time > read.goodFor) return false;
  return now.state !== 'earlier' || set.time > (now.moment?.time ?? Infinity);
}

/** The sets before the present one of which something may have to be told, latest first. */
function earlierSets(asked: Asked, resolved: Resolved): readonly SetAt[] {
  const sets = new Set<SetAt>(asked.sets.filter((set) => set.remarked));
  for (const read of asked.reader.observations) {
    const candidate = resolved.all[read.index]?.state === 'earlier' ? asked.past.candidate(read) : undefined;
    for (const set of [candidate, asked.past.latestRefusal(read)]) if (set?.remarked) sets.add(set);
  }
  if (asked.present) sets.delete(asked.present);
  return [...sets].toSorted((left, right) => right.time - left.time);
}
