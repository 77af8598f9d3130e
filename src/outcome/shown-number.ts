import type { Unit } from '../vocabulary/units.ts';
import { rounded, type Written } from './decimal.ts';
import { absolute, compare, isNever, minus, same, zero, type Exact } from './exact.ts';
import { inYears } from './shown-age.ts';

/** How numbers of one unit are written. The text of an age has its unit in it; others have it after them. */
export interface Format {
  readonly unit: Unit | null;
  write(value: Exact, places: number): Written;
  /** A text with the unit after it, where it is not in the text already. */
  withUnit(text: string): string;
}

const usual = 2;
const mostPlaces = 60;

export function formatOf(unit: Unit | null): Format {
  if (unit?.word === 'y') return { unit, write: inYears, withUnit: (text) => text };
  const suffix = unit ? ` ${unit.word}` : '';
  return { unit, write: rounded, withUnit: (text) => text + suffix };
}

/** A number that stands alone: two decimals, or more where it would show as 0 without being 0. */
export function alone(value: Exact, format: Format): string {
  if (isNever(value)) return 'never';
  return notHidden(value, format).text;
}

function notHidden(value: Exact, format: Format): Written {
  const isZero = compare(value, zero) === 0;
  for (let places = usual; ; places += 1) {
    const written = format.write(value, places);
    if (isZero || places >= mostPlaces || compare(written.shown, zero) !== 0) return written;
  }
}

/** The difference of two numbers: 0 is shown only where it is 0. */
export const difference = (left: Exact, right: Exact, format: Format): string =>
  notHidden(absolute(minus(left, right)), format).text;

/** What a number is compared with: all of it where six decimals hold it, else so many decimals. */
function threshold(value: Exact, format: Format, places: number): Written {
  const whole = format.write(value, 6);
  return same(whole.shown, value) ? whole : format.write(value, places);
}

/** Numbers beside one that they are compared with, each with so many decimals that none seems to stand elsewhere. */
export interface Beside {
  readonly values: readonly string[];
  readonly to: string;
}

/**
 * `beside([64.996], 65)` is `64.996` and `65`: with two decimals it would seem to be 65. Two decimals where they are enough.
 */
export function beside(values: readonly Exact[], to: Exact, format: Format): Beside {
  for (let places = usual; ; places += 1) {
    const right = threshold(to, format, places);
    const left = values.map((value) => (isNever(value) ? null : format.write(value, places)));
    const isTrue = left.every(
      (each, index) =>
        !each || sameSide(compare(each.shown, right.shown), compare(values[index] as Exact, to)),
    );
    if (isTrue || places >= mostPlaces)
      return { values: left.map((each) => each?.text ?? 'never'), to: right.text };
  }
}

const sameSide = (left: number, right: number): boolean => Math.sign(left) === Math.sign(right);
