import type { Path } from '../problems/place.ts';
import type { Series } from '../series/series.ts';

/** One case, read: what is given, and what the council expects. */
export interface Case {
  readonly name: string;
  readonly source: string | null;
  readonly series: Series;
  readonly expect: Expectation;
  readonly path: Path;
}

/** What is expected. What is null, or not listed, is not asked. */
export interface Expectation {
  readonly level: {
    /** The level's name, `none`, or null when not asked. */
    readonly atLeast: string | null;
    readonly couldBe: string | null;
    readonly settled: boolean | null;
  };
  readonly applies: 'yes' | 'no' | 'unsure' | null;
  readonly met: readonly string[];
  readonly notMet: readonly string[];
  readonly undecided: readonly string[];
  readonly explained: readonly string[];
  /** Faults of technique that are there. */
  readonly faults: readonly string[];
  /** By the observation: both ends, in its unit. */
  readonly truth: ReadonlyMap<string, { readonly low: number; readonly high: number }>;
  readonly notReliable: readonly string[];
  readonly refused: readonly string[];
  readonly questioned: readonly string[];
  readonly takeFirst: readonly string[];
  readonly askFirst: readonly string[];
  readonly measures: ReadonlyMap<string, ExpectedMeasure>;
  readonly nothingElseMet: boolean;
}

/** As written: compared at the decimals that stand there. */
export type ExpectedMeasure = number | 'missing' | 'never' | { readonly low: number; readonly high: number };
