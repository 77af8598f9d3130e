import type { Remark, Taken } from './bounds.ts';
import { whyOutside } from './outside.ts';
import type { Span } from './ranges.ts';
import { clashInWords } from './sentences.ts';
import type { ReadObservation } from './read-observation.ts';
import { hasTime, type PatientFact, type Statement } from './standing.ts';

/** What is to be told of values: those that were moved, that are not used, that are used and questioned. */
export interface Remarks {
  readonly taken: Taken[];
  readonly refused: Remark[];
  readonly questioned: Remark[];
}

/** Tells of a patient's standing fact what was moved, why it is refused, or why it is questioned. */
export function factRemarks(
  remarks: Remarks,
  read: ReadObservation,
  { said, value }: Statement,
  fact: PatientFact,
  age: Span | null,
  untimed: boolean,
): void {
  const observation = read.name;
  const { given } = fact.stated;
  const refuse = (because: string): void =>
    void remarks.refused.push({ observation, given: given.text, because });
  if (said) {
    if (value === null) refuseBoth(remarks, read, said.slot.said[0]?.given.text ?? '', given.text);
    return;
  }
  if (value === null && untimed && hasTime(fact.stated)) {
    refuse(`${read.entry.title} is stated only for a time, and the set has none; it counts as missing`);
    return;
  }
  if (value === null) {
    const because = whyOutside({ which: 'value', steps: fact.low }, read, 'possible', age);
    if (because !== null) refuse(because);
    return;
  }
  const because = whyOutside({ which: 'value', steps: fact.low }, read, 'plausible', age);
  if (because !== null) remarks.questioned.push({ observation, given: given.text, because });
  if (fact.taken) remarks.taken.push(fact.taken);
}

function refuseBoth(
  remarks: Remarks,
  { name, entry }: ReadObservation,
  inSet: string,
  ofPatient: string,
): void {
  const texts = [inSet, ofPatient].toSorted();
  const because = clashInWords(entry.title, texts);
  for (const given of texts) remarks.refused.push({ observation: name, given, because });
}
