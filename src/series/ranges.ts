import type { Band } from '../protocol/protocol.ts';

/** From the lowest to the highest, both included, in steps. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

/** How far one observation may be read too high, and too low, in steps. */
export interface Doubt {
  readonly high: number;
  readonly low: number;
}

/** A range with its bands of ages, ready to be asked. */
export interface Range {
  readonly bands: readonly Band[];
  /** The hull of all bands. */
  readonly hull: Span;
}

/** Null when there are no bands: nothing is known of such a range. */
export function rangeOf(bands: readonly Band[]): Range | null {
  const [first] = bands;
  return first ? { bands, hull: bands.length === 1 ? first : hullOf(bands) } : null;
}

/**
 * The range for an age, in steps of age: the band that it falls in. Where the age itself is a range, the hull
 * of the bands that it touches; where it is unknown (null), the hull of all. A band begins at the end of the
 * one before and excludes its own.
 */
export function spanFor(range: Range, age: Span | null): Span {
  const { bands, hull } = range;
  if (age === null || bands.length === 1) return hull;
  let found: Span | null = null;
  let begins = -Infinity;
  for (const band of bands) {
    const ends = band.ageBelow ?? Infinity;
    if (age.low < ends && age.high >= begins) found = found ? hullOf([found, band]) : band;
    begins = ends;
  }
  return found ?? hull;
}

function hullOf(bands: readonly Span[]): Span {
  return {
    low: Math.min(...bands.map((band) => band.low)),
    high: Math.max(...bands.map((band) => band.high)),
  };
}
