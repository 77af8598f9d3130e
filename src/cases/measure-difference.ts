import Fraction from 'fraction.js';
import { isNever, type Exact } from '../outcome/exact.ts';
import type { ExpectedMeasure } from './case.ts';
import type { Asked, Difference } from './case-result.ts';

/** Compares a measure's value at the decimals that the case writes: 66.67 is expected of 200/3. */
export function measureDifference(measure: string, expected: ExpectedMeasure, asked: Asked): Difference[] {
  const { compiled, answers, path } = asked;
  const at = { what: `the measure "${measure}"`, path: [...path, 'measures', measure] };
  const maybe = compiled.amounts.maybe(measure)(answers.narrow.result) !== 0;
  if (!maybe || expected === 'missing') {
    return !maybe && expected === 'missing'
      ? []
      : [{ ...at, expected: inWords(expected), found: maybe ? 'a value' : 'missing' }];
  }
  const { low, high } = compiled.amounts.of({ kind: 'measure', name: measure }).amount(answers.narrow);
  const ends = typeof expected === 'object' ? [expected.low, expected.high] : [expected, expected];
  const same = [low, high].every((value, index) => agrees(value, ends[index] as number | 'never'));
  return same
    ? []
    : [
        {
          ...at,
          expected: inWords(expected),
          found: `${shown(low)}${low === high ? '' : ` to ${shown(high)}`}`,
        },
      ];
}

function agrees(value: Exact, expected: number | string): boolean {
  if (isNever(value) || typeof expected === 'string') return isNever(value) && expected === 'never';
  const decimals = String(expected).split('.')[1]?.length ?? 0;
  return toFraction(value)
    .round(decimals)
    .equals(new Fraction(String(expected)));
}

const shown = (value: Exact): string => (isNever(value) ? 'never' : toFraction(value).round(6).toString());

const toFraction = ({ n, d }: Exact): Fraction => new Fraction(n).div(new Fraction(d));

function inWords(expected: ExpectedMeasure): string {
  return typeof expected === 'object' ? `${expected.low} to ${expected.high}` : String(expected);
}
