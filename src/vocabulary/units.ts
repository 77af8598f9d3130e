import Fraction from 'fraction.js';

/** A unit: the trade's word for it, its UCUM code, and what it measures. */
export interface Unit {
  /** As it stands in YAML and in sentences: `mmHg`. */
  readonly word: string;
  /** As it stands in JSON: `mm[Hg]`. */
  readonly ucum: string;
  /** Exponents of pressure, time, temperature, …; only those that are not zero. */
  readonly dimension: Dimension;
  /** One of this unit in the dimension's own unit. */
  readonly factor: Fraction;
  /** What is added after multiplying: only for temperatures. A difference has no offset. */
  readonly offset: Fraction;
}

export type Base = 'pressure' | 'time' | 'temperature' | 'mass' | 'length' | 'volume' | 'amount' | 'cells';
export type Dimension = Readonly<Partial<Record<Base, number>>>;

const zero = new Fraction(0);

function unit(
  word: string,
  ucum: string,
  dimension: Dimension,
  factor: Fraction | number | string,
  offset = zero,
): Unit {
  return Object.freeze({
    word,
    ucum,
    dimension: Object.freeze(dimension),
    factor: new Fraction(factor),
    offset,
  });
}

/**
 * Every unit that a file may name. Own units of the dimensions: mmHg, min, °C, kg, cm, L, mmol, 10⁹ cells.
 *
 * Sources: UCUM, case-sensitive codes; a year of 365.25 d and a month of a twelfth of it as there (a_j, mo_j);
 * 1 mmHg = 133.322 Pa as UCUM defines `m[Hg]`.
 */
export const units: readonly Unit[] = Object.freeze([
  unit('mmHg', 'mm[Hg]', { pressure: 1 }, 1),
  unit('kPa', 'kPa', { pressure: 1 }, new Fraction(1_000_000, 133_322)),
  unit('cmH2O', 'cm[H2O]', { pressure: 1 }, new Fraction(980_665, 1_333_220)),
  unit('ms', 'ms', { time: 1 }, new Fraction(1, 60_000)),
  unit('s', 's', { time: 1 }, new Fraction(1, 60)),
  unit('min', 'min', { time: 1 }, 1),
  unit('h', 'h', { time: 1 }, 60),
  unit('d', 'd', { time: 1 }, 1440),
  unit('wk', 'wk', { time: 1 }, 10_080),
  unit('mo', 'mo', { time: 1 }, 43_830),
  unit('y', 'a', { time: 1 }, 525_960),
  unit('/min', '/min', { time: -1 }, 1),
  unit('/s', '/s', { time: -1 }, 60),
  unit('/h', '/h', { time: -1 }, new Fraction(1, 60)),
  unit('°C', 'Cel', { temperature: 1 }, 1),
  unit('°F', '[degF]', { temperature: 1 }, new Fraction(5, 9), new Fraction(-160, 9)),
  unit('%', '%', {}, new Fraction(1, 100)),
  unit('g', 'g', { mass: 1 }, new Fraction(1, 1000)),
  unit('kg', 'kg', { mass: 1 }, 1),
  unit('lb', '[lb_av]', { mass: 1 }, new Fraction('0.45359237')),
  unit('mm', 'mm', { length: 1 }, new Fraction(1, 10)),
  unit('cm', 'cm', { length: 1 }, 1),
  unit('m', 'm', { length: 1 }, 100),
  unit('in', '[in_i]', { length: 1 }, new Fraction('2.54')),
  unit('mL', 'mL', { volume: 1 }, new Fraction(1, 1000)),
  unit('L', 'L', { volume: 1 }, 1),
  unit('mL/h', 'mL/h', { volume: 1, time: -1 }, new Fraction(1, 60_000)),
  unit('L/min', 'L/min', { volume: 1, time: -1 }, 1),
  unit('mL/kg/h', 'mL/kg/h', { volume: 1, mass: -1, time: -1 }, new Fraction(1, 60_000)),
  unit('mmol/L', 'mmol/L', { amount: 1, volume: -1 }, 1),
  unit('10^9/L', '10*9/L', { cells: 1, volume: -1 }, 1),
  unit('10^3/uL', '10*3/uL', { cells: 1, volume: -1 }, 1),
  unit('points', '{score}', {}, 1),
]);

const byWord = new Map(units.map((each) => [each.word, each]));
const byUcum = new Map(units.map((each) => [each.ucum, each]));

/** The unit that a file calls so; undefined when there is none. `unitByWord('mmHg')?.ucum` is `'mm[Hg]'`. */
export const unitByWord = (word: string): Unit | undefined => byWord.get(word);

/** The unit of a UCUM code; undefined when there is none. `unitByUcum('[degF]')?.word` is `'°F'`. */
export const unitByUcum = (code: string): Unit | undefined => byUcum.get(code);

/** Whether two dimensions are the same. A missing exponent is zero. */
export function sameDimension(left: Dimension, right: Dimension): boolean {
  const bases = new Set([...Object.keys(left), ...Object.keys(right)]) as Set<Base>;
  return [...bases].every((base) => (left[base] ?? 0) === (right[base] ?? 0));
}

/**
 * A value converted exactly. Both units must measure the same.
 *
 * `convert(new Fraction('98.1'), degF, cel)` is 661/18. A difference of two values is converted with `difference: true`,
 * which leaves the offset out.
 */
export function convert(value: Fraction, from: Unit, to: Unit, difference = false): Fraction {
  const own = value.mul(from.factor);
  if (difference) return own.div(to.factor);
  return own.add(from.offset).sub(to.offset).div(to.factor);
}

/** The nearest whole number; halves away from zero. */
export function roundAwayFromZero(value: Fraction): bigint {
  const twice = value.abs().mul(2).add(1);
  const floor = twice.n / twice.d / 2n;
  return value.s < 0n ? -floor : floor;
}
