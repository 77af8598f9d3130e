import type { Path } from '../problems/place.ts';
import { hasErrors, type Problem } from '../problems/problem.ts';
import type { Document, MapEntry, MapNode } from '../document/document.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import { readObserved } from './node-to-observed.ts';
import { readPatient } from './node-to-stated.ts';
import { readTime, type WrittenTime } from './node-to-time.ts';
import type { GivenSet, Observed, Series } from './series.ts';
import {
  entryOf,
  problemCollector,
  type SetReading,
  type SetVocabulary,
  type UnitWords,
} from './set-reading.ts';

/**
 * Reads a set, or a series, whose shape was checked before: exact values on their steps, times in milliseconds.
 *
 * All problems come at once, each at its place; with a problem there is no series, and nothing can be asked
 * of it. Values are not yet held against what is possible: that depends on the patient's age, and refuses a
 * value, not the set.
 *
 * `{ "systolic": 104, "temperature": { "value": 98.1, "unit": "[degF]" } }` is one set without a time:
 * systolic 104 steps of 1 mmHg, temperature 367 steps of 0.1 °C, moved.
 */
export function documentToSeries(
  document: Document,
  vocabulary: SetVocabulary,
  options: { readonly units: UnitWords },
): { series: Series | null; problems: Problem[] } {
  const { report, problems } = problemCollector(document);
  const reading: SetReading = { ...vocabulary, units: options.units, report };
  const { root } = document;
  if (root.kind !== 'map') throw new TypeError('the shape of the set was not checked');
  const read = entryOf(root, 'sets') ? readSeries(root, reading) : readFlatSet(root, reading);
  const found = problems();
  if (hasErrors(found)) return { series: null, problems: found };
  return { series: read, problems: found };
}

function readFlatSet(root: MapNode, reading: SetReading): Series {
  const entry = entryOf(root, 'at');
  const time = entry ? readTime(entry.value, ['at'], reading) : null;
  const set = readSet(root, time, [], reading, ['at', 'patient']);
  const patient = readPatient(entryOf(root, 'patient')?.value, entry !== undefined, reading);
  return { at: set.at, atText: set.atText, sets: [set], ...patient };
}

function readSeries(root: MapNode, reading: SetReading): Series {
  for (const entry of root.entries) {
    const { key } = entry;
    if (key === 'at' || key === 'patient' || key === 'sets') continue;
    if (reading.observations.has(key)) {
      reading.report('set_observation_beside_sets', [key], { name: key }, { part: 'key' });
    } else unknown(key, [key], reading, entry);
  }
  const list = entryOf(root, 'sets')?.value;
  const items = list?.kind === 'list' ? list.items : [];
  const sets = items.flatMap((item, index): GivenSet[] => {
    if (item.kind !== 'map') return [];
    const path = ['sets', index];
    const entry = entryOf(item, 'at');
    const time = entry ? readTime(entry.value, [...path, 'at'], reading) : null;
    return [readSet(item, time, path, reading, ['at'])];
  });
  const asked = entryOf(root, 'at');
  const time = asked ? readTime(asked.value, ['at'], reading) : latestOf(sets);
  const hasTime = asked !== undefined || items.length > 0;
  const patient = readPatient(entryOf(root, 'patient')?.value, hasTime, reading);
  return { at: time?.at ?? null, atText: time?.text ?? null, sets, ...patient };
}

/** The time of the latest set; of those written differently, the one that comes first in the alphabet. */
function latestOf(sets: readonly GivenSet[]): WrittenTime | null {
  let latest: WrittenTime | null = null;
  for (const { at, atText: text } of sets) {
    if (at === null || text === null) continue;
    if (!latest || at > latest.at || (at === latest.at && text < latest.text)) latest = { at, text };
  }
  return latest;
}

function readSet(
  map: MapNode,
  time: WrittenTime | null,
  path: Path,
  reading: SetReading,
  own: readonly string[],
): GivenSet {
  const observed = new Map<string, Observed>();
  for (const entry of map.entries) {
    const { key } = entry;
    if (own.includes(key)) continue;
    const of = reading.observations.get(key);
    if (!of) {
      unknown(key, [...path, key], reading, path.length === 0 ? entry : null);
      continue;
    }
    const read = readObserved(entry.value, of, [...path, key], reading);
    if (read) observed.set(key, read);
  }
  return { at: time?.at ?? null, atText: time?.text ?? null, observed };
}

/** At the top, `patient` and `sets` may have been meant too, where what stands there has their form. */
function unknown(name: string, path: Path, reading: SetReading, atTop: MapEntry | null = null): void {
  const { kind } = atTop?.value ?? { kind: 'scalar' };
  const ownKeys = kind === 'map' ? [{ name: 'patient' }] : kind === 'list' ? [{ name: 'sets' }] : [];
  const near = nearMiss(name, [...reading.observations.values(), ...ownKeys]);
  reading.report(
    'set_unknown_observation',
    path,
    { name: name.slice(0, 60) },
    { part: 'key', nearMiss: near },
  );
}
