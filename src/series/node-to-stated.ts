import type { Path } from '../problems/place.ts';
import type { MapNode, Node } from '../document/document.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import { withUnit } from './given-words.ts';
import { readChoice } from './node-to-choice.ts';
import { inSteps, readNumber, readUnit, type Measured } from './node-to-number.ts';
import { readTime, type WrittenTime } from './node-to-time.ts';
import type { Given, Stated } from './series.ts';
import { entryOf, scalarOf, type SetReading } from './set-reading.ts';

/** What `patient` holds. */
export interface PatientFacts {
  readonly standing: ReadonlyMap<string, Stated>;
  readonly limits: ReadonlyMap<string, Stated>;
}

/**
 * Reads `patient`. What cannot be used is left out; the report has the reason. `hasTime` is whether the
 * question has a time.
 */
export function readPatient(patient: Node | undefined, hasTime: boolean, reading: SetReading): PatientFacts {
  const part = (key: string): readonly { name: string; map: MapNode; path: Path }[] => {
    const found = patient?.kind === 'map' ? entryOf(patient, key)?.value : undefined;
    const entries = found?.kind === 'map' ? found.entries : [];
    return entries.flatMap(({ key: name, value }) =>
      value.kind === 'map' ? [{ name, map: value, path: ['patient', key, name] }] : [],
    );
  };
  const standing = new Map<string, Stated>();
  for (const { name, map, path } of part('standing')) {
    const stated = readStanding(name, map, path, hasTime, reading);
    if (stated) standing.set(name, stated);
  }
  const limits = new Map<string, Stated>();
  for (const { name, map, path } of part('limits')) {
    const stated = readLimit(name, map, path, hasTime, reading);
    if (stated) limits.set(name, stated);
  }
  return { standing, limits };
}

function readStanding(
  name: string,
  map: MapNode,
  path: Path,
  hasTime: boolean,
  reading: SetReading,
): Stated | null {
  const of = reading.observations.get(name);
  if (!of) {
    const near = nearMiss(
      name,
      [...reading.observations.values()].filter((each) => each.standing),
    );
    reading.report('set_unknown_observation', path, { name }, { part: 'key', nearMiss: near });
    return null;
  }
  if (!of.standing) {
    reading.report('set_not_standing', path, { name }, { part: 'key' });
    return null;
  }
  if (of.kind === 'number') {
    return readStated(map, of, readSteps(map, of, path, reading), path, hasTime, reading);
  }
  if (entryOf(map, 'unit')) {
    reading.report('set_unit_of_choice', [...path, 'unit'], { name }, { part: 'key' });
  }
  const value = entryOf(map, 'value');
  const read = value ? readChoice(value.value, of, [...path, 'value'], reading) : null;
  const said = read && { value: read.kind === 'several' ? read.choices : read.choice, given: read.given };
  return readStated(map, of, said, path, hasTime, reading);
}

function readLimit(
  name: string,
  map: MapNode,
  path: Path,
  hasTime: boolean,
  reading: SetReading,
): Stated | null {
  const of = reading.limits.get(name);
  if (of) return readStated(map, of, readSteps(map, of, path, reading), path, hasTime, reading);
  const near = nearMiss(
    name,
    [...reading.limits.keys()].map((each) => ({ name: each })),
  );
  reading.report('set_unknown_limit', path, { name }, { part: 'key', nearMiss: near });
  return null;
}

type Said = { readonly value: Stated['value']; readonly given: Given };

function readSteps(map: MapNode, of: Measured, path: Path, reading: SetReading): Said | null {
  const beside = readUnit(map, of, path, reading);
  const entry = entryOf(map, 'value');
  const read = entry ? readNumber(entry.value, of, [...path, 'value'], reading) : null;
  if (!read || beside === undefined) return null;
  if (read.unit && beside) {
    const written = String(scalarOf(entry?.value));
    reading.report('set_unit_twice', [...path, 'value'], { name: of.name, written });
    return null;
  }
  const unit = beside ?? read.unit;
  const { steps, moved } = inSteps(read.value, unit, of);
  const text = withUnit(read.digits, unit && (reading.units === 'ucum' ? unit.ucum : unit.word));
  return { value: steps, given: { text, moved } };
}

/** Adds who stated it, why, and for how long it holds. */
function readStated(
  map: MapNode,
  { name }: { readonly name: string },
  said: Said | null,
  path: Path,
  hasTime: boolean,
  reading: SetReading,
): Stated | null {
  const from = timeOf(map, 'at', name, path, hasTime, reading);
  const until = timeOf(map, 'until', name, path, hasTime, reading);
  if (from && until && until.at <= from.at) {
    reading.report('set_never_holds', [...path, 'until'], { name, from: from.text, until: until.text });
  }
  if (!said) return null;
  const reason = scalarOf(entryOf(map, 'reason')?.value);
  return {
    ...said,
    by: String(scalarOf(entryOf(map, 'by')?.value)),
    reason: typeof reason === 'string' ? reason : null,
    from: from?.at ?? null,
    until: until?.at ?? null,
  };
}

function timeOf(
  map: MapNode,
  key: 'at' | 'until',
  name: string,
  path: Path,
  hasTime: boolean,
  reading: SetReading,
): WrittenTime | null {
  const entry = entryOf(map, key);
  if (!entry) return null;
  if (!hasTime) reading.report('set_time_needed', [...path, key], { name, key });
  return readTime(entry.value, [...path, key], reading);
}
