import fc from 'fast-check';

/** Chances, drawn from fast-check so that a failing example is repeated from its seed and made smaller. */
export interface Draw {
  /** From the first to the last, both included. */
  whole(first: number, last: number): number;
  /** True in so many of a hundred draws. Smaller examples say false. */
  chance(percent: number): boolean;
  one<T>(list: readonly T[]): T;
  /** Between `least` and `most` different ones, in the order of the list. */
  some<T>(list: readonly T[], least: number, most: number): T[];
}

/** A whole number from the first to the last, both included. */
export type Whole = Draw['whole'];

/** All other chances come from whole numbers. */
export function drawFrom(whole: Whole): Draw {
  const one = <T>(list: readonly T[]): T => {
    const found = list[whole(0, list.length - 1)];
    if (found === undefined) throw new Error('nothing to draw from');
    return found;
  };
  return {
    whole,
    chance: (percent) => whole(0, 99) >= 100 - percent,
    one,
    some: (list, least, most) => {
      const left = [...list.keys()];
      const taken = Array.from({ length: Math.min(whole(least, most), left.length) }, () =>
        left.splice(whole(0, left.length - 1), 1),
      );
      return taken
        .flat()
        .sort((a, b) => a - b)
        .flatMap((index) => list.slice(index, index + 1));
    },
  };
}

/** Whatever `make` builds from chances. */
export const drawn = <T>(make: (draw: Draw) => T): fc.Arbitrary<T> =>
  fc
    .noBias(fc.gen())
    .map((value) => make(drawFrom((first, last) => value(fc.integer, { min: first, max: last }))));
