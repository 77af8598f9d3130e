import Fraction from 'fraction.js';
import type { Observation as ObservationInFile } from './generated/dictionary-file.ts';
import type { Band } from './observation.ts';
import { parseQuantity } from './quantity.ts';
import type { Parts } from './read-choices.ts';
import { checkInside } from './inside.ts';
import { readOnStep, readRange, type Reading, type Scale } from './read-range.ts';
import { nearestUnit } from './unit-names.ts';
import { convert, sameDimension, unitByWord, type Unit } from './units.ts';

/** Reads what a number has: unit, step and ranges. Null when it cannot do without what is missing or wrong. */
export function readNumber(plain: ObservationInFile, reading: Reading): Parts | null {
  const { name, path, report } = reading;
  for (const key of ['unit', 'step', 'possible'] as const) {
    if (plain[key] !== undefined) continue;
    report('observation_lacks', path, { name, key, kind: 'number' }, { part: 'key' });
  }
  const unit = readUnit(plain.unit, reading);
  const scale = unit && readScale(unit, plain.step, reading);
  if (!scale || plain.possible === undefined) return null;
  const possible = readRange('possible', plain.possible, scale, reading);
  const plausible =
    plain.plausible === undefined ? [] : readRange('plausible', plain.plausible, scale, reading);
  const ordinary = readValue('ordinary', plain.ordinary, scale, reading);
  const ifNotStated = readValue('if_not_stated', plain.if_not_stated, scale, reading);
  if (!possible) return null;
  checkInside({ possible, plausible: plausible ?? [], ordinary, ifNotStated }, scale, reading);
  return {
    unit: scale.unit,
    stepsPerUnit: scale.stepsPerUnit,
    possible: frozen(possible),
    plausible: frozen(plausible ?? []),
    ordinary,
    ifNotStated,
    choices: [],
  };
}

const frozen = (bands: readonly Band[]): readonly Band[] =>
  Object.freeze(bands.map((band) => Object.freeze(band)));

function readUnit(word: string | undefined, { path, report }: Reading): Unit | null {
  if (word === undefined) return null;
  const unit = unitByWord(word);
  if (!unit) report('unknown_unit', [...path, 'unit'], { unit: word }, { nearMiss: nearestUnit(word) });
  return unit ?? null;
}

/** The step may be in another unit that measures the same: `0.0625 d` of a number in years is 5844 steps in one year. */
function readScale(
  unit: Unit,
  step: number | string | undefined,
  { name, path, report }: Reading,
): Scale | null {
  if (step === undefined) return null;
  const at = [...path, 'step'];
  const quantity = parseQuantity(step);
  if ('problem' in quantity) {
    report(quantity.problem.code, at, quantity.problem.facts, { nearMiss: quantity.problem.nearMiss });
    return null;
  }
  const own = quantity.unit ?? unit;
  if (!sameDimension(own.dimension, unit.dimension)) {
    report('observation_step_unit', at, { name, step: own.word, unit: unit.word });
    return null;
  }
  if (quantity.value.compare(0) <= 0) {
    report('observation_step', at, { name, written: String(step) });
    return null;
  }
  const stepsPerUnit = new Fraction(1).div(convert(quantity.value, own, unit, true));
  return { unit, stepsPerUnit, step: quantity.unit ? String(step) : `${step} ${unit.word}` };
}

function readValue(
  key: 'ordinary' | 'if_not_stated',
  written: ObservationInFile['ordinary'],
  scale: Scale,
  reading: Reading,
): number | null {
  if (written === undefined) return null;
  const { name, path, report } = reading;
  if (typeof written === 'number') return readOnStep(key, written, [...path, key], scale, reading);
  report('observation_value_unfit', [...path, key], { name, key, written: String(written), kind: 'number' });
  return null;
}
