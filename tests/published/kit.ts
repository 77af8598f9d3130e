import { evaluate, readSet } from '../../src/index.ts';
import { askable } from '../bundled.ts';

/** A number that a protocol works out: a value, or a range while something that it needs is missing. */
interface ReadMeasure {
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
}

/** What a bundled protocol says about one set, as far as published figures are held against it. */
interface BundledReading {
  readonly applies: 'yes' | 'no' | 'unsure';
  /** Undefined for a measure that has no value at all. */
  readonly measures: Readonly<Record<string, ReadMeasure | undefined>>;
  /** Null when the protocol is not for this patient. */
  readonly level: {
    readonly at_least: string | null;
    readonly could_be: string;
    readonly settled: boolean;
  } | null;
  readonly rules: readonly {
    readonly rule: string;
    readonly state: 'met' | 'not_met' | 'undecided';
  }[];
}

/**
 * Reads one set with a protocol from `protocols/`.
 *
 * The set is as in JSON: `{ respiratory_rate: 8 }`, units as UCUM codes. Many hundred sets are read with one protocol, so it is
 * loaded and compiled once for each name.
 */
export function readBundled(protocol: string, set: object): Promise<BundledReading> {
  const compiled = askable(protocol);
  const { series, problems } = readSet('set', JSON.stringify(set), compiled);
  if (!series) return Promise.reject(new Error(problems.map(({ says }) => says).join('\n')));
  return Promise.resolve(evaluate(compiled, series));
}

/** An adult for whom the bundled protocols are, with what is given. */
export const adult = (given: object): object => ({
  age: { value: 47, unit: 'a' },
  pregnancy: 'not_pregnant',
  ...given,
});
