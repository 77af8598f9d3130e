import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { nearestUnit } from '../../src/vocabulary/unit-names.ts';
import {
  convert,
  roundAwayFromZero,
  sameDimension,
  unitByUcum,
  unitByWord,
  units,
  type Unit,
} from '../../src/vocabulary/units.ts';

const judge = UcumLhcUtils.getInstance();

/** Our conversion and the judge's: it works in binary, and takes 6.0221367e23 for a mole. */
function bothWays(value: string, from: Unit, to: Unit): { ours: number; judged: number } {
  const { status, toVal } = judge.convertUnitTo(from.ucum, Number(value), to.ucum);
  if (status !== 'succeeded' || toVal === null) throw new Error(`${from.ucum} to ${to.ucum}: ${status}`);
  return { ours: convert(new Fraction(value), from, to).valueOf(), judged: toVal };
}

const pairs = units.flatMap((from) =>
  units
    .filter((to) => sameDimension(from.dimension, to.dimension))
    .map((to) => ({ from, to, name: `${from.word} → ${to.word}` })),
);

test.each(pairs)('$name as the UCUM library converts it', ({ from, to }) => {
  const wrong = ['0', '1', '7.5', '98.1', '120', '-3.2', '1013.25', '0.0625'].filter((value) => {
    const { ours, judged } = bothWays(value, from, to);
    // Temperatures pass through kelvins on the judge's way.
    const size = Math.max(1, Math.abs(judged), Math.abs(Number(value)), from.dimension.temperature ? 500 : 0);
    return !(Math.abs(ours - judged) <= 1e-12 * size);
  });
  expect(wrong).toEqual([]);
});

test('every two units of one dimension were compared, and more than one dimension has several', () => {
  expect(pairs.length).toBeGreaterThan(units.length + 60);
});

test.each(
  units.filter((one) => !pairs.some(({ from, to }) => from === one && to !== one)).map((one) => one.word),
)('%s stands alone in its dimension, so its factor is 1 in its own unit', (word) => {
  expect(['mmol/L', 'mL/kg/h']).toContain(word);
});

test.each(units)('$ucum is a valid UCUM code', ({ ucum, word }) => {
  expect(judge.validateUnitString(ucum).status).toBe('valid');
  expect(unitByUcum(ucum)?.word).toBe(word);
  expect(unitByWord(word)?.ucum).toBe(ucum);
});

test.each(['mmHg', 'bpm', 'beats/min', '°F'])(
  'the judge refuses %s, so words and codes are two lists',
  (word) => {
    expect(judge.validateUnitString(word).status).not.toBe('valid');
    expect(unitByUcum(word)).toBeUndefined();
  },
);

test('no word and no code stands twice', () => {
  expect(new Set(units.map(({ word }) => word)).size).toBe(units.length);
  expect(new Set(units.map(({ ucum }) => ucum)).size).toBe(units.length);
});

test('units of different dimensions cannot be converted by the judge either', () => {
  // To UCUM a mole and a count of cells are plain numbers; here they are kept apart.
  const counted = ({ dimension }: Unit): boolean =>
    dimension.cells !== undefined || dimension.amount !== undefined;
  const others = units.flatMap((from) =>
    units
      .filter((to) => !sameDimension(from.dimension, to.dimension) && !counted(from) && !counted(to))
      .map((to) => [from, to] as const),
  );
  expect(others.length).toBeGreaterThan(100);
  const converted = others.filter(
    ([from, to]) => judge.convertUnitTo(from.ucum, 1, to.ucum).status !== 'failed',
  );
  expect(converted).toEqual([]);
});

test('a difference of temperatures has no offset', () => {
  const [celsius, fahrenheit] = [unitByWord('°C'), unitByWord('°F')] as [Unit, Unit];
  expect(convert(new Fraction('1.8'), fahrenheit, celsius, true).toString()).toBe('1');
  const judged = bothWays('101.8', fahrenheit, celsius).judged - bothWays('100', fahrenheit, celsius).judged;
  expect(judged).toBeCloseTo(1, 10);
});

test.each([
  ['1/2', 1n],
  ['-1/2', -1n],
  ['3/2', 2n],
  ['5/2', 3n],
  ['-5/2', -3n],
  ['49/100', 0n],
  ['-49/100', 0n],
  ['7', 7n],
  ['0', 0n],
])('%s rounds to %s', (value, rounded) => {
  expect(roundAwayFromZero(new Fraction(value))).toBe(rounded);
});

test.each([
  ['mm Hg', 'mmHg'],
  ['MMHG', 'mmHg'],
  ['mm[Hg]', 'mmHg'],
  ['bpm', '/min'],
  ['beats/min', '/min'],
  ['breaths per minute', '/min'],
  ['per min', '/min'],
  ['C', '°C'],
  ['ºC', '°C'],
  ['celcius', '°C'],
  ['degF', '°F'],
  ['[degF]', '°F'],
  ['percent', '%'],
  ['yrs', 'y'],
  ['years', 'y'],
  ['months', 'mo'],
  ['weeks', 'wk'],
  ['days', 'd'],
  ['hrs', 'h'],
  ['hours', 'h'],
  ['minutes', 'min'],
  ['secs', 's'],
  ['ml/hr', 'mL/h'],
  ['l/min', 'L/min'],
  ['lpm', 'L/min'],
  ['mmol/l', 'mmol/L'],
  ['10*9/L', '10^9/L'],
  ['10^3/µL', '10^3/uL'],
  ['kgs', 'kg'],
  ['lbs', 'lb'],
  ['{score}', 'points'],
])('%s was meant for %s', (written, word) => {
  expect(nearestUnit(written)).toBe(word);
});

test.each(['banana', 'q', 'mg/dL', 'stone', 'J', '', '°', '?', 'x'.repeat(100)])(
  '%j is near no unit',
  (written) => {
    expect(nearestUnit(written)).toBeNull();
  },
);
