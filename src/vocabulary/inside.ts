import Fraction from 'fraction.js';
import { ageScale } from './age.ts';
import type { Band } from './observation.ts';
import type { Reading, Scale } from './read-range.ts';

interface Values {
  readonly possible: readonly Band[];
  readonly plausible: readonly Band[];
  readonly ordinary: number | null;
  readonly ifNotStated: number | null;
}

/** A band with the age at which it begins. */
type BandFrom = Band & { readonly ageFrom: number };

/** Whether everything that an observation says of its values fits: plausible inside possible, the ordinary inside plausible. */
export function checkInside(
  { possible, plausible, ordinary, ifNotStated }: Values,
  scale: Scale,
  reading: Reading,
): void {
  checkPlausible(plausible, possible, scale, reading);
  const [ranges, word] = plausible.length > 0 ? [plausible, 'plausible'] : [possible, 'possible'];
  // The ordinary value is an adult's, so the last band is its range.
  const adult = ranges.slice(-1);
  checkValue('ordinary', ordinary, adult, `${word} in an adult`, scale, reading);
  checkValue('if_not_stated', ifNotStated, possible, 'possible at every age', scale, reading);
}

function checkPlausible(
  plausible: readonly Band[],
  possible: readonly Band[],
  scale: Scale,
  reading: Reading,
): void {
  const { name, path, report } = reading;
  withBeginnings(plausible).forEach((band, index) => {
    const beyond = withBeginnings(possible).find(
      (other) =>
        band.ageFrom < (other.ageBelow ?? Infinity) &&
        other.ageFrom < (band.ageBelow ?? Infinity) &&
        (band.low < other.low || band.high > other.high),
    );
    if (!beyond) return;
    report(
      'observation_plausible_wide',
      plausible.length > 1 ? [...path, 'plausible', index] : [...path, 'plausible'],
      {
        name,
        from: inUnit(band.low, scale),
        to: inUnit(band.high, scale),
        possibleFrom: inUnit(beyond.low, scale),
        possibleTo: inUnit(beyond.high, scale),
        unit: scale.unit.word,
        age: agesOf(band),
      },
    );
  });
}

function checkValue(
  key: 'ordinary' | 'if_not_stated',
  value: number | null,
  bands: readonly Band[],
  range: string,
  scale: Scale,
  { name, path, report }: Reading,
): void {
  const beyond = value === null ? undefined : bands.find(({ low, high }) => value < low || value > high);
  if (value === null || !beyond) return;
  report('observation_value_outside', [...path, key], {
    name,
    key,
    value: inUnit(value, scale),
    from: inUnit(beyond.low, scale),
    to: inUnit(beyond.high, scale),
    range,
    unit: scale.unit.word,
  });
}

const withBeginnings = (bands: readonly Band[]): BandFrom[] =>
  bands.map((band, index) => ({ ...band, ageFrom: bands[index - 1]?.ageBelow ?? 0 }));

const inUnit = (steps: number, { stepsPerUnit }: Scale): string =>
  new Fraction(steps).div(stepsPerUnit).toString();

/** The ages of a band in words; null when it holds at every age. `from 1 y to below 5 y`. */
function agesOf({ ageFrom, ageBelow }: BandFrom): string | null {
  const from = ageFrom === 0 ? '' : `from ${ageInWords(ageFrom)}`;
  const to = ageBelow === null ? '' : `below ${ageInWords(ageBelow)}`;
  if (from !== '' && to !== '') return `${from} to ${to}`;
  return from + to === '' ? null : from + to;
}

/** An age in the largest unit in which it is a whole number, else in days: `5844` is `1 y`, `448` is `28 d`. */
function ageInWords(steps: number): string {
  const perUnit = { y: Number(ageScale.stepsPerUnit.n), mo: 487, d: 16 };
  const whole = Object.entries(perUnit).find(([, each]) => steps % each === 0);
  return whole ? `${steps / whole[1]} ${whole[0]}` : `${steps / 16} d`;
}
