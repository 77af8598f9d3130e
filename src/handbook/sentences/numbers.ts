import Fraction from 'fraction.js';
import { unitByWord, type Unit } from '../../vocabulary/units.ts';

/** A number with all its digits, and its unit: `90 mmHg`, `−0.5`, `1/3 h`. */
export function sayNumber(value: Fraction, unit: Unit | null): string {
  const text = value.toString();
  const exact = /^-?[0-9.]+$/.test(text) && new Fraction(text).equals(value) ? text : value.toFraction();
  return `${exact.replace('-', '−')}${unit ? ` ${unit.word}` : ''}`;
}

const pattern = /^(−?[0-9]+(?:\.[0-9]+)?(?:\/[1-9][0-9]*)?)(?: (\S+))?$/;

/** A number that is said so; null for anything else. */
export function readNumber(words: string): { readonly value: Fraction; readonly unit: Unit | null } | null {
  const [, digits, word] = pattern.exec(words) ?? [];
  if (digits === undefined) return null;
  const unit = word === undefined ? null : unitByWord(word);
  if (unit === undefined) return null;
  const value = new Fraction(digits.replace('−', '-'));
  return sayNumber(value, unit) === words ? { value, unit } : null;
}

/** A number in exactly this unit; null for anything else. */
export function readIn(words: string, unit: Unit | null): Fraction | null {
  const read = readNumber(words);
  return read && read.unit === unit ? read.value : null;
}

/** Steps of an observation or a limit as a number. */
export const fromSteps = (steps: number, stepsPerUnit: Fraction): Fraction =>
  new Fraction(steps).div(stepsPerUnit);

/** The same back; null when it is no whole number of them. */
export function toWholeSteps(value: Fraction, stepsPerUnit: Fraction): number | null {
  const steps = value.mul(stepsPerUnit);
  return steps.d === 1n ? Number(steps.s * steps.n) : null;
}

/** Points of a score: `1 point`, `3 points`. */
export const sayPoints = (points: number): string =>
  `${sayNumber(new Fraction(points), null)} ${points === 1 ? 'point' : 'points'}`;

/** What is said before points, and how many they are; null when none are said. */
export function readPoints(words: string): { readonly before: string; readonly points: number } | null {
  const [, before = '', digits] = /^(?:(.*) )?(−?[0-9]+) points?$/.exec(words) ?? [];
  const points = digits === undefined ? null : readIn(digits, null)?.valueOf();
  return points !== null && points !== undefined && words.endsWith(sayPoints(points))
    ? { before, points }
    : null;
}

const lengths = { min: 60_000, h: 3_600_000, d: 86_400_000, s: 1000 } as const;

/** A length of time, exact, in hours or minutes where that is whole: `4 h`, `90 min`. */
export function sayTime(milliseconds: number): string {
  const word = (['h', 'min'] as const).find((each) => milliseconds % lengths[each] === 0) ?? 's';
  return sayNumber(new Fraction(milliseconds, lengths[word]), unitByWord(word) ?? null);
}

export function readTime(words: string): number | null {
  const read = readNumber(words);
  const word = read?.unit?.word;
  if (!read || (word !== 'h' && word !== 'min' && word !== 's')) return null;
  const milliseconds = toWholeSteps(read.value, new Fraction(lengths[word]));
  return milliseconds !== null && sayTime(milliseconds) === words ? milliseconds : null;
}
