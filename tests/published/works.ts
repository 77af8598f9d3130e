import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';

/** A printed figure: what is given, and what the kit must answer. */
export interface Figure extends Printed {
  /** A set as in JSON, on top of what is ordinary in its file; or a series: `{ sets: [...] }`. */
  readonly given: Readonly<Record<string, unknown>>;
  /** Values of measures, by name. */
  readonly gives?: Readonly<Record<string, number>>;
  /** How far a value may be off: half of the last place that was printed. 0 when nothing is said. */
  readonly off_by?: number;
  /** Every rule that is met. Of a protocol of this folder all the other rules must be not met. */
  readonly met?: readonly string[];
  /** Rules that are not met, for a bundled protocol, which has many more. */
  readonly not_met?: readonly string[];
  /** Observations whose values are refused, or used and questioned: these and no others. */
  readonly refused?: readonly string[];
  readonly questioned?: readonly string[];
  /** Whether the protocol is for this patient. */
  readonly applies?: 'yes' | 'no';
}

/** A printed table, and the hole or the overlap that the check of the protocol must find in it. */
export interface Found extends Printed {
  /** The bands as printed, in the language of protocols. */
  readonly exactly_one_of: readonly object[];
  readonly problem: 'partition_hole' | 'partition_overlap' | 'none';
  /** The set that the problem shows, as it words it. Where several would do, the one that the check meets first. */
  readonly example?: string;
}

interface Printed {
  /** The name of the figure; what follows ": " tells several of one figure apart. */
  readonly id: string;
  /** A name from the sources of the file or of its protocol. */
  readonly source: string;
  /** Set while nobody has looked the figure up in the work itself. */
  readonly from_memory?: true;
  /** What a reader of the figure should know. */
  readonly note?: string;
}

/** A file of `figures/`, with the protocol that it is held against. */
export interface Work {
  readonly name: string;
  /** A protocol of `protocols/` in this folder; or, of those that come with the kit, `bundled`. */
  readonly protocol?: string;
  readonly bundled?: string;
  readonly sources?: Readonly<Record<string, Source | undefined>>;
  /** What is given in every set: all else is ordinary, so that only what a figure gives can matter. */
  readonly ordinary?: Readonly<Record<string, unknown>>;
  readonly figures?: readonly Figure[];
  readonly finds?: readonly Found[];
}

export interface Source {
  readonly cite: string;
  readonly from_memory?: string;
}

const here = (path: string): URL => new URL(path, import.meta.url);

/** The text of a protocol of this folder, read as a user's file would be. */
export const protocolText = (name: string): string => readFileSync(here(`protocols/${name}.yaml`), 'utf8');

/** The protocols of this folder. */
export const protocolNames = readdirSync(here('protocols/')).map((file) => file.replace('.yaml', ''));

/** Every file of published figures. */
export const works: readonly Work[] = readdirSync(here('figures/'))
  .sort()
  .map((file) => ({
    name: file.replace('.yaml', ''),
    ...(parse(readFileSync(here(`figures/${file}`), 'utf8')) as Omit<Work, 'name'>),
  }));
