import type { SiteProtocol } from '../common/site-protocol.ts';
import type { Part, Texts } from './parts.ts';

/** What the page asks of a worker of this room. All that is checked or evaluated, is there. */
export type Question =
  /** Comes before all others: what does not change while one writes. */
  | { readonly kind: 'open'; readonly protocol: SiteProtocol; readonly all: readonly SiteProtocol[] }
  | { readonly kind: 'check'; readonly texts: Texts }
  /** About the texts that were checked last. */
  | { readonly kind: 'case'; readonly name: string };

export interface Answers {
  readonly open: { readonly opened: true };
  readonly check: Checked;
  readonly case: CaseInFull | null;
}

/** What is wrong at a place of a text, in the words of the command line. */
export interface ProblemHere {
  readonly severity: 'error' | 'warning';
  readonly part: Part;
  /** From 1, as the column, which counts characters. */
  readonly line: number;
  readonly column: number;
  readonly length: number;
  readonly says: string;
  readonly expected: string | null;
  readonly nearMiss: string | null;
  /** What certainly mends it, each by one click. */
  readonly mends: readonly Mend[];
}

export interface Mend {
  readonly title: string;
  readonly part: Part;
  readonly splices: readonly SpliceHere[];
}

/** What stands from `from` to before `to` gives way to `text`. */
export interface SpliceHere {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Lines of a text, both included, from 1. */
export interface LinesHere {
  readonly first: number;
  readonly last: number;
}

/** What the check of both texts found. */
export interface Checked {
  readonly problems: readonly ProblemHere[];
  /** Whether the protocol can be read with: without that no case says anything. */
  readonly usable: boolean;
  /** In the order of the file; empty while the protocol cannot be read with. */
  readonly cases: readonly CaseHere[];
  readonly rules: readonly RuleHere[];
}

/** A case and what came of it. */
export interface CaseHere {
  readonly name: string;
  readonly lines: LinesHere;
  readonly passes: boolean;
  /** Of a case that fails: what is otherwise, a sentence each; of one that passes: what it shows. */
  readonly why: readonly string[];
  /** Names of the rules that it meets. */
  readonly met: readonly string[];
}

export interface RuleHere {
  readonly name: string;
  readonly title: string;
  /** Where it stands in this text; null for one that stands in the protocol that this one is based on. */
  readonly lines: LinesHere | null;
}

/** A case in full: what is observed, what the protocol says, and by which lines. */
export interface CaseInFull {
  readonly name: string;
  readonly observed: readonly { readonly title: string; readonly words: string }[];
  readonly heading: string;
  readonly couldBe: string | null;
  readonly reasons: readonly string[];
  readonly rules: readonly RuleInCase[];
}

/** A rule that decided something in a case. */
export interface RuleInCase {
  readonly name: string;
  readonly title: string;
  readonly level: string | null;
  readonly decidedBy: readonly string[];
  readonly lines: LinesHere | null;
}
