import type { Ladder, Level } from '../../protocol/protocol.ts';
import type { Parents } from '../../protocol/based-on/basis.ts';
import type { Dictionary } from '../../vocabulary/dictionary.ts';
import type { ObservationEntry } from '../../vocabulary/observation.ts';
import type { Part } from '../sketch/sketch.ts';

/** The kinds of files that are written in the room. */
export type WrittenKind = 'protocol' | 'cases' | 'ladder' | 'ward' | 'ward_cases';

/** What stands beside the text that is being written. */
export interface AuthoringSurroundings {
  /** The kit's own dictionary, schema/vital_signs.yaml, unless told otherwise. */
  readonly dictionary?: Dictionary;
  /** The ladder of the protocol or the ward; null where there is none, or it has problems. */
  readonly ladder: Ladder | null;
  /** The texts of the protocols that there are, by their names: what may be based on, and what a ward may read with. */
  readonly parents?: Parents;
  /** Beside a case file: the text of its protocol, as it stands now; of a ward's cases: the text of the ward policy. */
  readonly beside?: string;
}

/** A limit as far as it is written. */
export interface KnownLimit {
  readonly name: string;
  readonly title: string;
  readonly value: string;
  readonly unit: string;
  readonly between: readonly string[];
  readonly setBy: string;
}

/** A measure as far as it is written. */
export interface KnownMeasure {
  readonly name: string;
  readonly title: string;
  readonly meaning: string;
  readonly unit: string;
  /** How it is worked out: `formula`, `curve`, …; empty where nothing says so yet. */
  readonly how: string;
  readonly part: Part;
}

/** A rule as far as it is written. */
export interface KnownRule {
  readonly name: string;
  readonly title: string;
  readonly level: string;
  readonly says: string;
  readonly when: Part | undefined;
}

/** A protocol that this file may name. */
export interface KnownProtocol {
  readonly name: string;
  readonly title: string;
  readonly edition: string;
}

/** Every name that a text can use, of itself, of what it is based on, and of what stands around it. */
export interface Known {
  /** Everything that can be observed: the dictionary, and what is declared in place. */
  readonly observations: ReadonlyMap<string, ObservationEntry>;
  /** What is listed under needs, helps or standing, or read by applies_when. */
  readonly listed: ReadonlyMap<string, string>;
  readonly limits: ReadonlyMap<string, KnownLimit>;
  readonly measures: ReadonlyMap<string, KnownMeasure>;
  readonly rules: ReadonlyMap<string, KnownRule>;
  /** Name and words. */
  readonly sources: ReadonlyMap<string, string>;
  readonly actions: ReadonlyMap<string, string>;
  readonly faults: ReadonlyMap<string, string>;
  readonly levels: readonly Level[];
  readonly ladder: string | null;
  readonly protocols: ReadonlyMap<string, KnownProtocol>;
  /** What comes from the protocol that this one is based on. */
  readonly inherited: { readonly limits: ReadonlySet<string>; readonly rules: ReadonlySet<string> };
  /** The name of the protocol or ward that a case file is for. */
  readonly subject: string | null;
}
