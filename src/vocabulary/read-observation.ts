import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import type { Observation as ObservationInFile } from './generated/dictionary-file.ts';
import { ageScale } from './age.ts';
import type { ObservationEntry } from './observation.ts';
import { parseDuration } from './quantity.ts';
import { isYes, readChoices } from './read-choices.ts';
import { readNumber } from './read-number.ts';
import type { Reading } from './read-range.ts';

/** What says nothing about an observation of the kind. */
const unfit: Readonly<Record<ObservationEntry['kind'], readonly (keyof ObservationInFile)[]>> = {
  number: ['choices'],
  choice: ['unit', 'step', 'possible', 'plausible'],
  several: ['unit', 'step', 'possible', 'plausible', 'if_not_stated'],
  yes_no: ['unit', 'step', 'possible', 'plausible', 'choices'],
};

/**
 * Reads one observation of the dictionary, or one that a protocol declares in place; its shape was checked before.
 *
 * Null when what it cannot do without is missing or wrong: unit, step, possible range, choices. Anything else that is wrong
 * is left out of the entry. Either way the report has every problem, each at its place below `path`.
 *
 *     readObservation('paced', { title: 'paced', kind: 'yes_no' }, ['observations', 'paced'], report)?.choices.length  // 2
 */
export function readObservation(
  name: string,
  plain: ObservationInFile,
  path: Path,
  report: Report,
): ObservationEntry | null {
  const reading: Reading = { name, path, report };
  const { kind } = plain;
  for (const key of unfit[kind]) {
    if (plain[key] === undefined) continue;
    report('observation_key_unfit', [...path, key], { name, key, kind }, { part: 'key' });
  }
  const standing = isYes(plain.standing);
  checkStanding(standing, plain, reading);
  const parts = kind === 'number' ? readNumber(plain, reading) : readChoices(kind, plain, reading);
  const goodFor = readGoodFor(plain.good_for, reading);
  const countsAsAge = parts?.unit === ageScale.unit && parts.stepsPerUnit.equals(ageScale.stepsPerUnit);
  if (name === 'age' && !countsAsAge) report('observation_age', path, {}, { part: 'key' });
  if (!parts) return null;
  return Object.freeze({
    name,
    title: plain.title,
    short: plain.short ?? plain.title,
    meaning: plain.meaning ?? null,
    kind,
    ...parts,
    loinc: plain.loinc ?? null,
    goodFor,
    takenWith: plain.taken_with ?? null,
    standing,
    setBy: plain.set_by ?? null,
    alsoCalled: Object.freeze([...(plain.also_called ?? [])]),
  });
}

/** Who states a fact, and what it counts as unstated, is said of standing facts alone; how long a value lasts, of the others. */
function checkStanding(standing: boolean, plain: ObservationInFile, { name, path, report }: Reading): void {
  const keys = standing ? (['good_for', 'taken_with'] as const) : (['set_by', 'if_not_stated'] as const);
  const code = standing ? 'observation_never_standing' : 'observation_only_standing';
  for (const key of keys) {
    if (plain[key] !== undefined) report(code, [...path, key], { name, key }, { part: 'key' });
  }
}

function readGoodFor(written: string | undefined, { name, path, report }: Reading): number | null {
  if (written === undefined) return null;
  const duration = parseDuration(written);
  const key = 'good_for';
  if (duration === null) report('observation_duration', [...path, key], { name, key, written });
  return duration;
}
