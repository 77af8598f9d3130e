import type Fraction from 'fraction.js';
import type { Path } from '../problems/place.ts';
import type { MapNode, Node } from '../document/document.ts';
import { nearestUnit } from '../vocabulary/unit-names.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import { parseQuantity, toSteps } from '../vocabulary/quantity.ts';
import { convert, sameDimension, unitByUcum, unitByWord, units, type Unit } from '../vocabulary/units.ts';
import { entryOf, nameOfNode, scalarOf, shortened, type SetReading } from './set-reading.ts';

/** What a number belongs to: an observation or a limit. */
export interface Measured {
  readonly name: string;
  /** Null for a plain number. */
  readonly unit: Unit | null;
  readonly stepsPerUnit: Fraction;
}

/** A number as it was written. */
export interface WrittenNumber {
  readonly value: Fraction;
  /** The unit inside the text, in the trade's words: `58 y`. */
  readonly unit: Unit | null;
  /** The digits without the unit. */
  readonly digits: string;
}

/** A number in whole steps. */
export interface Steps {
  readonly steps: number;
  /** Whether it was converted, or moved to its step. */
  readonly moved: boolean;
}

/** Reads a number; in the trade's words it may carry its unit. Null when it is none, and the report has the reason. */
export function readNumber(node: Node, of: Measured, path: Path, reading: SetReading): WrittenNumber | null {
  const value = scalarOf(node);
  const isText = typeof value === 'string';
  if (typeof value !== 'number' && !isText) {
    reading.report('set_wrong_kind', path, {
      name: of.name,
      written: nameOfNode(node),
      kind: wanted(of, reading),
    });
    return null;
  }
  if (isText && reading.units === 'ucum') {
    const facts = { name: of.name, written: shortened(value), unit: of.unit?.ucum ?? null };
    reading.report('set_text_for_number', path, facts);
    return null;
  }
  const read = parseQuantity(value);
  if ('problem' in read) {
    const { code, facts, nearMiss: near } = read.problem;
    reading.report(code, path, facts, { nearMiss: near });
    return null;
  }
  if (read.unit && !measures(of, read.unit, path, reading)) return null;
  return { ...read, digits: String(value).split(' ')[0] ?? '' };
}

/** What kind of value a number is, in words. */
function wanted(of: Measured, { units: words }: SetReading): string {
  if (!of.unit) return 'a number';
  return `a number, in ${words === 'ucum' ? of.unit.ucum : of.unit.word}`;
}

/** The unit beside a value; null without one, undefined when it cannot be used and the report has the reason. */
export function readUnit(
  map: MapNode,
  of: Measured,
  path: Path,
  reading: SetReading,
): Unit | null | undefined {
  const entry = entryOf(map, 'unit');
  if (!entry) return null;
  const at = [...path, 'unit'];
  const written = String(scalarOf(entry.value));
  const unit = reading.units === 'ucum' ? unitByUcum(written) : unitByWord(written);
  if (!unit) {
    const example = ofUnit(of.unit, reading) ?? 'mm[Hg]';
    reading.report(
      'set_unknown_unit',
      at,
      { unit: shortened(written), example },
      { nearMiss: nearest(written, reading) },
    );
    return undefined;
  }
  return measures(of, unit, at, reading) ? unit : undefined;
}

function nearest(written: string, reading: SetReading): string | null {
  const word = nearestUnit(written);
  if (reading.units === 'trade') return word;
  const code = word === null ? undefined : unitByWord(word)?.ucum;
  return (
    code ??
    nearMiss(
      written,
      units.map(({ ucum }) => ({ name: ucum })),
    )
  );
}

const ofUnit = (unit: Unit | null, { units: words }: SetReading): string | null =>
  unit && (words === 'ucum' ? unit.ucum : unit.word);

/** Whether a value in the unit can be of this observation or limit; else the report says so. */
function measures(of: Measured, unit: Unit, path: Path, reading: SetReading): boolean {
  if (of.unit && sameDimension(of.unit.dimension, unit.dimension)) return true;
  const own = ofUnit(of.unit, reading) ?? 'a plain number without a unit';
  reading.report('set_unit_mismatch', path, { name: of.name, unit: ofUnit(unit, reading) ?? '', own });
  return false;
}

/** A value in whole steps, rounded once to the nearest. Without a unit it is in the observation's own. */
export function inSteps(value: Fraction, unit: Unit | null, of: Measured): Steps {
  const { steps, exact } = toSteps(value, unit, of);
  return { steps, moved: !exact || (unit !== null && unit !== of.unit) };
}

/**
 * A device's bound in whole steps: between two steps, the one on its near side, so that no value beyond the
 * bound is lost.
 *
 * Above 250.6 mmHg begins at 251, as does above 250: both bounds are 250.
 */
export function boundInSteps(
  value: Fraction,
  unit: Unit | null,
  of: Measured,
  side: 'above' | 'below',
): Steps {
  const own = unit && of.unit && unit !== of.unit ? convert(value, unit, of.unit) : value;
  const exact = own.mul(of.stepsPerUnit);
  const whole = side === 'above' ? exact.floor() : exact.ceil();
  return {
    steps: inSteps(whole.div(of.stepsPerUnit), null, of).steps,
    moved: inSteps(value, unit, of).moved,
  };
}
