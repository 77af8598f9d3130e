import { expect } from 'vitest';
import { inputsOf } from '../../src/logic/inputs.ts';
import type { LookBack, Observation, Protocol } from '../../src/protocol/protocol.ts';
import type { Present } from '../../src/series/bounds.ts';
import { documentToSeries } from '../../src/series/document-to-series.ts';
import { setVocabularyOf } from '../../src/series/set-reading.ts';
import type { Series } from '../../src/series/series.ts';
import { seriesToBounds } from '../../src/series/series-to-bounds.ts';
import { documentOf } from './document-of.ts';
import { wardProtocol } from './ward.ts';

/** Named inputs of logic with their values. */
export type Inputs = Readonly<Record<string, number>>;

/** A small series and the bounds that `language.md` gives it, worked out by hand. */
export interface Row {
  readonly name: string;
  readonly series: unknown;
  readonly measures?: Readonly<Record<string, LookBack>>;
  /** Observations that the row's protocol reads otherwise, or in addition. */
  readonly reads?: readonly Observation[];
  readonly narrow: Inputs;
  /** Where it differs from narrow. Without this nothing stands in, and both are the same array. */
  readonly wide?: Inputs;
  readonly present?: Readonly<Record<string, Partial<Present>>>;
  /** Each list in full; empty without this. A remark is its observation and what was given. */
  readonly taken?: readonly (readonly [string, string, string])[];
  readonly refused?: readonly (readonly [string, string])[];
  readonly questioned?: readonly (readonly [string, string])[];
  readonly unused?: readonly string[];
  /** Words that the reason of the first refusal or question must have. */
  readonly because?: string;
}

export function seriesOf(value: unknown, protocol: Protocol, units: 'ucum' | 'trade' = 'ucum'): Series {
  const { series, problems } = documentToSeries(documentOf(value), setVocabularyOf(protocol), { units });
  expect(problems).toEqual([]);
  if (!series) throw new TypeError('there is no series');
  return series;
}

/** The inputs of these names. A name that logic does not read is a mistake in the row. */
export function named(protocol: Protocol, inputs: Float64Array, names: readonly string[]): Inputs {
  const places = new Map(inputsOf(protocol).map(({ name }, index) => [name, index]));
  return Object.fromEntries(
    names.map((name) => {
      const place = places.get(name);
      if (place === undefined) throw new RangeError(`logic does not read ${name}`);
      return [name, inputs[place] as number];
    }),
  );
}

/** Checks everything that a row says. */
export function checkRow(row: Row): void {
  const protocol = wardProtocol(row.measures, row.reads);
  const { narrow, wide, facts } = seriesToBounds(protocol, seriesOf(row.series, protocol));
  expect(named(protocol, narrow, Object.keys(row.narrow))).toEqual(row.narrow);
  if (row.wide) {
    const expected = { ...row.narrow, ...row.wide };
    expect(named(protocol, wide, Object.keys(expected))).toEqual(expected);
  } else expect(wide).toBe(narrow);
  for (const [name, expected] of Object.entries(row.present ?? {})) {
    expect(facts.present.get(name)).toMatchObject(expected);
  }
  expect(facts.taken.map(({ observation, given, as }) => [observation, given, as])).toEqual(row.taken ?? []);
  expect(facts.refused.map(({ observation, given }) => [observation, given])).toEqual(row.refused ?? []);
  expect(facts.questioned.map(({ observation, given }) => [observation, given])).toEqual(
    row.questioned ?? [],
  );
  expect(facts.unused).toEqual(row.unused ?? []);
  if (row.because !== undefined) {
    expect((facts.refused[0] ?? facts.questioned[0])?.because).toContain(row.because);
  }
}
