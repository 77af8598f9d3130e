import type { Protocol } from '../../protocol/protocol.ts';
import type { Band, ObservationEntry } from '../../vocabulary/observation.ts';
import { smt, type Smt } from './smt.ts';
import { every, some } from './terms.ts';

/** The possible range of a number, at the ages that may be the patient's. */
export interface AgeSpan {
  /** Both ends of a value lie inside it. */
  readonly inside: (low: string, high: string) => readonly Smt[];
  /** The ends of a value are its own. */
  readonly whole: (low: string, high: string) => readonly Smt[];
}

/**
 * The possible range of a number. With bands of ages: from the lowest to the highest of the bands that the age touches; where the
 * protocol does not read the age, of some bands in a row, since any age may be the patient's.
 */
export function ageSpan(entry: ObservationEntry, { observations }: Protocol): AgeSpan {
  const bands = entry.possible;
  const runs = runsOf(bands).map((run) => ({
    ...run,
    when: observations.has('age') ? ageOf(run, bands) : [],
  }));
  const oneOf = (of: (run: Run) => readonly Smt[]): readonly Smt[] => {
    const ways = runs.map((run) => [...run.when, ...of(run)]);
    return ways.length === 1 ? (ways[0] as readonly Smt[]) : [some(ways.map(every))];
  };
  return {
    inside: (low, high) => oneOf((run) => [smt`(<= ${run.low} ${low})`, smt`(<= ${high} ${run.high})`]),
    whole: (low, high) => oneOf((run) => [smt`(= ${low} ${run.low})`, smt`(= ${high} ${run.high})`]),
  };
}

interface Run {
  readonly first: number;
  readonly last: number;
  readonly low: number;
  readonly high: number;
}

/** Each row of neighbouring bands, with its lowest and highest value. */
function runsOf(bands: readonly Band[]): Run[] {
  return bands.flatMap((_, first) =>
    bands.slice(first).map((_each, more) => {
      const row = bands.slice(first, first + more + 1);
      return {
        first,
        last: first + more,
        low: Math.min(...row.map(({ low }) => low)),
        high: Math.max(...row.map(({ high }) => high)),
      };
    }),
  );
}

/** What the age is for a row of bands: its low end in the first of them, its high end in the last. */
function ageOf({ first, last }: Run, bands: readonly Band[]): readonly Smt[] {
  const inBand = (end: string, index: number): Smt[] => {
    const [from, to] = [bands[index - 1]?.ageBelow ?? null, bands[index]?.ageBelow ?? null];
    return [
      ...(from === null ? [] : [smt`(<= ${from} ${end})`]),
      ...(to === null ? [] : [smt`(< ${end} ${to})`]),
    ];
  };
  return [...inBand('age:low', first), ...inBand('age:high', last)];
}
