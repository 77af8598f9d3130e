import Fraction from 'fraction.js';
import type * as File from '../shape/generated/types.ts';
import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import { nearestUnit } from '../vocabulary/unit-names.ts';
import { tenPower } from '../vocabulary/ten-power.ts';
import { roundAwayFromZero, unitByWord, type Unit } from '../vocabulary/units.ts';
import type { Limit } from './protocol.ts';
import { readQuantity } from './read-quantity.ts';
import { plainWords } from './words.ts';
import type { WholeFile } from './based-on/whole-file.ts';

/** The limits of a file: named numbers with the bounds inside which they may be changed. */
export function readLimits(file: WholeFile, report: Report): ReadonlyMap<string, Limit> {
  const limits = new Map<string, Limit>();
  for (const [name, each] of Object.entries(file.limits ?? {})) {
    const limit = readLimit(name, each, ['limits', name], report);
    if (limit) limits.set(name, limit);
  }
  return limits;
}

function readLimit(name: string, file: File.Limit, path: Path, report: Report): Limit | null {
  const unit = file.unit === undefined ? null : unitByWord(file.unit);
  if (unit === undefined) {
    const written = String(file.unit);
    report('unknown_unit', [...path, 'unit'], { unit: written }, { nearMiss: () => nearestUnit(written) });
    return null;
  }
  const value = inUnit(file.value, unit, [...path, 'value'], report);
  const between = file.between?.map((each, index) => inUnit(each, unit, [...path, 'between', index], report));
  const [low, high] = between ?? [value, value];
  if (!value || !low || !high) return null;
  if (low.compare(high) > 0)
    report('between_wrong_way', [...path, 'between'], { from: low.toString(), to: high.toString() });
  else if (value.compare(low) < 0 || value.compare(high) > 0) {
    report('limit_outside_bounds', [...path, 'value'], {
      name,
      value: value.toString(),
      low: low.toString(),
      high: high.toString(),
    });
  }
  // The step of a limit is the finest decimal place that its numbers are written in.
  const stepsPerUnit = new Fraction(
    [value, low, high].reduce((most, each) => (each.d > most ? tenPower(each.d) : most), 1n),
  );
  const steps = (each: Fraction): number => Number(roundAwayFromZero(each.mul(stepsPerUnit)));
  return {
    name,
    title: file.title ?? plainWords(name),
    unit,
    stepsPerUnit,
    value: steps(value),
    between: between ? [steps(low), steps(high)] : null,
    setBy: file.set_by ?? null,
    path,
  };
}

function inUnit(written: number | string, unit: Unit | null, path: Path, report: Report): Fraction | null {
  const read = readQuantity(written, path, report);
  if (!read) return null;
  if (!read.unit || read.unit === unit) return read.value;
  else if (!unit) report('limit_without_unit', path, { written: String(written) });
  else report('limit_in_two_units', path, { written: String(written), unit: unit.word });
  return null;
}
