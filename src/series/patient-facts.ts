import { inUcum } from './sentences.ts';
import type { Series, Stated } from './series.ts';
import type { ReadObservation } from './read-observation.ts';
import type { Reader } from './reader.ts';
import type { PatientFact } from './standing.ts';

/** The patient's standing facts that the protocol reads, by index; the names of the others go to `unused`. */
export function patientFacts(
  standing: Series['standing'],
  reader: Reader,
  unused: Set<string>,
): ReadonlyMap<number, PatientFact> {
  const facts = new Map<number, PatientFact>();
  for (const [name, stated] of standing) {
    const read = reader.byName.get(name);
    if (read) facts.set(read.index, factOf(stated, read));
    else unused.add(name);
  }
  return facts;
}

function factOf(stated: Stated, { name, entry, choices }: ReadObservation): PatientFact {
  const { value, given } = stated;
  if (typeof value === 'number') {
    const taken = given.moved ? { observation: name, given: given.text, as: inUcum(value, entry) } : null;
    return { low: value, high: value, asRead: null, picked: [], stated, taken };
  }
  const picked = (typeof value === 'string' ? [value] : value).map((choice) => {
    const position = choices.get(choice);
    if (position === undefined) throw new RangeError(`${name} has no choice ${choice}`);
    return position;
  });
  return { low: 0, high: 0, asRead: null, picked, stated, taken: null };
}
