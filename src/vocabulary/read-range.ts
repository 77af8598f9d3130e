import type Fraction from 'fraction.js';
import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import type { RangePart } from './generated/dictionary-file.ts';
import { ageScale } from './age.ts';
import type { Band } from './observation.ts';
import { parseQuantity, toSteps } from './quantity.ts';
import { sameDimension, type Unit } from './units.ts';

/** An observation while it is read: its name, its place in the file, and where problems go. */
export interface Reading {
  readonly name: string;
  readonly path: Path;
  readonly report: Report;
}

/** How a number is counted, and its step as it was written. */
export interface Scale {
  readonly unit: Unit;
  readonly stepsPerUnit: Fraction;
  readonly step: string;
}

/** A range as it stands in the file: two numbers, or bands of ages. */
type RangeInFile = readonly RangePart[];
type BandInFile = Exclude<RangePart, number>;

/**
 * Reads `possible` or `plausible`: one range, or bands of ages, youngest first, the last without an end.
 *
 * `[20, 350]` is one band from 20 to 350. Null when it could not be read; the report then has the reasons.
 */
export function readRange(
  key: string,
  range: RangeInFile,
  scale: Scale,
  reading: Reading,
): readonly Band[] | null {
  const { name, path, report } = reading;
  const at = [...path, key];
  const numbers = range.filter((part) => typeof part === 'number');
  const bands = range.filter((part) => typeof part !== 'number');
  const [from, to] = numbers;
  if (from !== undefined && to !== undefined && range.length === 2 && bands.length === 0) {
    const ends = readEnds(key, { from, to }, at, [0, 1], scale, reading);
    return ends && [{ ageBelow: null, ...ends }];
  }
  if (numbers.length > 0 || bands.length === 0) {
    report('observation_range_form', at, { name, key });
    return null;
  }
  const ages = readAges(key, bands, reading);
  const read = bands.map((band, index) => {
    const ends = readEnds(key, band, [...at, index], ['from', 'to'], scale, reading);
    return ends && { ageBelow: ages?.[index] ?? null, ...ends };
  });
  const whole = read.filter((band) => band !== null);
  return ages && whole.length === bands.length ? whole : null;
}

/** A number of the file on the observation's step; null, with a problem, when it does not fall on it. */
export function readOnStep(
  key: string,
  number: number,
  at: Path,
  scale: Scale,
  reading: Reading,
): number | null {
  const { name, report } = reading;
  const quantity = parseQuantity(number);
  if ('problem' in quantity) {
    report(quantity.problem.code, at, quantity.problem.facts);
    return null;
  }
  const { steps, exact } = toSteps(quantity.value, null, scale);
  const value = String(number);
  if (exact) return steps;
  if (Math.abs(steps) === Number.MAX_SAFE_INTEGER) report('observation_too_large', at, { name, key, value });
  else report('observation_off_step', at, { name, key, value, step: scale.step, unit: scale.unit.word });
  return null;
}

function readEnds(
  key: string,
  { from, to }: { readonly from: number; readonly to: number },
  at: Path,
  [fromKey, toKey]: readonly [string | number, string | number],
  scale: Scale,
  reading: Reading,
): { low: number; high: number } | null {
  const low = readOnStep(key, from, [...at, fromKey], scale, reading);
  const high = readOnStep(key, to, [...at, toKey], scale, reading);
  if (low === null || high === null) return null;
  if (low <= high) return { low, high };
  const facts = { name: reading.name, key, from: String(from), to: String(to), unit: scale.unit.word };
  reading.report('observation_range_reversed', at, facts);
  return null;
}

/** The ends of the bands, in steps of age, null for the last; null when one of them is wrong. */
function readAges(key: string, bands: readonly BandInFile[], reading: Reading): (number | null)[] | null {
  const ages = bands.map((_, index) => readAge(key, bands, index, reading));
  return ages.includes(undefined) ? null : ages.map((age) => age ?? null);
}

/** The end of one band; null when it is rightly open, undefined when it is wrong. */
function readAge(
  key: string,
  bands: readonly BandInFile[],
  index: number,
  { name, path, report }: Reading,
): number | null | undefined {
  const last = index === bands.length - 1;
  const written = bands[index]?.age_below;
  const at = [...path, key, index];
  if (written === undefined) {
    if (!last) report('observation_band_open', at, { name, key });
    return last ? null : undefined;
  }
  const age = String(written);
  const steps = ageSteps(age);
  const before = bands[index - 1]?.age_below;
  if (last) report('observation_band_last', [...at, 'age_below'], { name, key, age });
  else if (steps === null) report('observation_band_age', [...at, 'age_below'], { name, key, written: age });
  else if (before !== undefined && steps <= (ageSteps(String(before)) ?? 0)) {
    report('observation_band_order', [...at, 'age_below'], { name, key, age, before: String(before) });
  } else return steps;
  return undefined;
}

function ageSteps(written: string): number | null {
  const quantity = parseQuantity(written);
  const unit = 'problem' in quantity ? null : quantity.unit;
  if ('problem' in quantity || !unit || !sameDimension(unit.dimension, ageScale.unit.dimension)) return null;
  const { steps, exact } = toSteps(quantity.value, unit, ageScale);
  return exact && steps > 0 ? steps : null;
}
