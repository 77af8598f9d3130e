import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { vitalSigns } from '../../src/index.ts';
import { convert, unitByUcum, type Unit } from '../../src/vocabulary/units.ts';
import { codes, faults, units } from './lists.ts';

const judge = UcumLhcUtils.getInstance();

const unit = (code: string): Unit => {
  const found = unitByUcum(code);
  if (!found) throw new Error(`The kit has no unit ${code}.`);
  return found;
};

test.each(codes.codes)('$id is the code of $observation', ({ code, observation, units: printed }) => {
  const entry = vitalSigns.observations.get(observation);
  expect(entry?.loinc).toBe(code);
  expect(printed.map((each) => unit(each).dimension)).toEqual(printed.map(() => entry?.unit?.dimension));
  if (printed.length === 0) expect(entry?.kind).toBe('choice');
});

test.each(units.codes)('$id: $valid', ({ code, valid, read_as: word }) => {
  expect(judge.validateUnitString(code).status === 'valid').toBe(valid);
  // A code that is valid but not known here is refused, not read as something near it.
  expect(unitByUcum(code)?.word).toBe(word);
});

test.each(units.conversions)('$id', ({ value, from, to, expected, off_by: offBy }) => {
  const ours = convert(new Fraction(value), unit(from), unit(to)).valueOf();
  expect(Math.abs(ours - expected)).toBeLessThanOrEqual(offBy);
  const { toVal } = judge.convertUnitTo(from, value, to);
  expect(Math.abs((toVal ?? Number.NaN) - ours)).toBeLessThanOrEqual(1e-9);
});

test.each(faults.faults)('$id: the dictionary says of $fault: $says', ({ fault, says }) => {
  const choices = vitalSigns.observations.get('technique_faults')?.choices ?? [];
  expect(choices.find(({ choice }) => choice === fault)?.meaning).toBe(says);
});
