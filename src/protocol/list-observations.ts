import type * as File from '../shape/generated/types.ts';
import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import { readObservation, type Dictionary } from '../vocabulary/dictionary.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import type { ObservationEntry } from '../vocabulary/observation.ts';
import { convert, roundAwayFromZero } from '../vocabulary/units.ts';
import type { Observation, Role } from './protocol.ts';
import { readQuantity } from './read-quantity.ts';
import type { WholeFile } from './based-on/whole-file.ts';

/** The dictionary, and what the protocol declares itself. */
export function declaredObservations(
  file: WholeFile,
  dictionary: Dictionary,
  report: Report,
): ReadonlyMap<string, ObservationEntry> {
  const all = new Map(dictionary.observations);
  for (const [name, plain] of Object.entries(file.observations.declares ?? {})) {
    const entry = readObservation(name, plain, ['observations', 'declares', name], report);
    if (entry) all.set(name, entry);
  }
  return all;
}

/** The observations that the protocol reads, each in its role. */
export function listedObservations(
  file: WholeFile,
  declared: ReadonlyMap<string, ObservationEntry>,
  report: Report,
): ReadonlyMap<string, Observation> {
  const listed = new Map<string, Observation>();
  const add = (name: string, role: Role, path: Path, part: 'key' | 'value'): void => {
    const entry = declared.get(name);
    // What is declared and could not be read has problems of its own.
    if (!entry && file.observations.declares?.[name]) return;
    if (!entry)
      report(
        'unknown_observation',
        path,
        { name },
        { part, nearMiss: () => nearMiss(name, [...declared.values()]) },
      );
    else if (listed.has(name) && part === 'value') report('listed_twice', path, { name });
    else if (!listed.has(name)) listed.set(name, { ...entry, role });
  };
  const { needs = [], helps = [] } = file.observations;
  needs.forEach((name, index) => add(name, 'needs', ['observations', 'needs', index], 'value'));
  helps.forEach((name, index) => add(name, 'helps', ['observations', 'helps', index], 'value'));
  for (const [name, fact] of Object.entries(file.standing ?? {})) {
    add(name, 'helps', ['standing', name], 'key');
    const entry = listed.get(name);
    if (entry) listed.set(name, standing(entry, fact, ['standing', name], report));
  }
  for (const name of scopeNames(file.applies_when)) {
    if (declared.has(name) && !listed.has(name))
      listed.set(name, { ...(declared.get(name) as ObservationEntry), role: 'scope' });
  }
  return listed;
}

function standing(entry: Observation, fact: File.StandingFact, path: Path, report: Report): Observation {
  const setBy = fact.set_by ?? entry.setBy;
  if (fact.if_not_stated === undefined) return { ...entry, standing: true, setBy };
  const written = fact.if_not_stated;
  const at = [...path, 'if_not_stated'];
  if (entry.kind === 'number') {
    const quantity = readQuantity(typeof written === 'boolean' ? String(written) : written, at, report);
    if (!quantity) return entry;
    const value =
      quantity.unit && entry.unit ? convert(quantity.value, quantity.unit, entry.unit) : quantity.value;
    return {
      ...entry,
      standing: true,
      setBy,
      ifNotStated: Number(roundAwayFromZero(value.mul(entry.stepsPerUnit))),
    };
  }
  const choice = written === true ? 'yes' : written === false ? 'no' : String(written);
  const choices = entry.choices.map((each) => each.choice);
  if (!choices.includes(choice)) report('unknown_choice', at, { name: entry.name, choice, choices });
  return { ...entry, standing: true, setBy, ifNotStated: choice };
}

function scopeNames(condition: File.Condition | undefined): string[] {
  if (!condition) return [];
  return Object.entries(condition).flatMap(([key, value]) => {
    if (key === 'rule') return [];
    if (key === 'at_least_of') return (value as File.AtLeastOf).of.flatMap(scopeNames);
    if (Array.isArray(value)) return (value as File.Condition[]).flatMap(scopeNames);
    return [key];
  });
}
