import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Source } from './works.ts';

const list = (name: string): unknown =>
  parse(readFileSync(new URL(`lists/${name}.yaml`, import.meta.url), 'utf8'));

/** What every line of a list has. */
interface Line {
  readonly id: string;
  readonly from_memory?: true;
  readonly note?: string;
}

interface CodeLine extends Line {
  readonly code: string;
  /** How the code is called. */
  readonly printed: string;
  readonly observation: string;
  /** Units that go with the code, as UCUM codes; none where the answer is coded. */
  readonly units: readonly string[];
}

interface UnitLine extends Line {
  readonly code: string;
  readonly valid: boolean;
  /** The word of the kit for this code; without it the kit does not know the code. */
  readonly read_as?: string;
}

interface ConversionLine extends Line {
  readonly value: number;
  readonly from: string;
  readonly to: string;
  readonly expected: number;
  readonly off_by: number;
}

interface FaultLine extends Line {
  /** A choice of the observation `technique_faults`. */
  readonly fault: string;
  /** Which way the pressure is wrong, as the dictionary says it. */
  readonly says: string;
  /** In mmHg, as printed. */
  readonly printed: string;
  readonly source: string;
}

/** LOINC codes, and the observation of each. */
export const codes = list('codes') as { readonly source: string; readonly codes: readonly CodeLine[] };

/** Codes of units, and conversions. */
export const units = list('units') as {
  readonly source: string;
  readonly codes: readonly UnitLine[];
  readonly conversions: readonly ConversionLine[];
};

/** Faults of technique. */
export const faults = list('faults') as {
  readonly sources: Readonly<Record<string, Source | undefined>>;
  readonly faults: readonly FaultLine[];
};
