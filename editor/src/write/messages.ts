import type { Completion, Form, Hover, Splice, UnguardedChange } from '../../../src/index.ts';
import type { PlaneHere } from '../common/map/plane-here.ts';
import type { SiteProtocol, SiteText } from '../common/site-protocol.ts';
import type { Part, Texts } from './parts.ts';

/** What the page asks of a worker of this room. All that is checked or evaluated, is there. */
export type Question =
  /** Comes before all others: what does not change while one writes. */
  | {
      readonly kind: 'open';
      readonly protocol: SiteProtocol;
      readonly all: readonly SiteProtocol[];
      readonly ladders: readonly SiteText[];
    }
  | { readonly kind: 'check'; readonly texts: Texts }
  /** About the texts that were checked last. */
  | { readonly kind: 'case'; readonly name: string }
  /** What is to be entered by hand for a case. */
  | { readonly kind: 'form' }
  | { readonly kind: 'draft'; readonly name: string; readonly given: GivenSet }
  /** The edit that adds a case after the last one of a text. */
  | { readonly kind: 'add_case'; readonly cases: string; readonly name: string; readonly yaml: string }
  /** What can stand at a place of a text, and what a word there means. */
  | { readonly kind: 'offers'; readonly part: Part; readonly texts: Texts; readonly offset: number }
  | { readonly kind: 'hover'; readonly part: Part; readonly texts: Texts; readonly offset: number }
  /** The map of two observations, the others held; null: those that are looked at first, and ordinary values. */
  | {
      readonly kind: 'map';
      readonly texts: Texts;
      readonly axes: readonly [string, string] | null;
      readonly held: GivenSet | null;
    }
  /** Goes on looking for unguarded changes of some texts for a little while; another version begins anew. */
  | { readonly kind: 'unguarded'; readonly texts: Texts; readonly version: number }
  /** What became of everything that must always hold. */
  | { readonly kind: 'requirements'; readonly texts: Texts };

export type Opening = Extract<Question, { kind: 'open' }>;

export interface Answers {
  readonly open: { readonly opened: true };
  readonly check: Checked;
  readonly case: { readonly case: CaseInFull | null };
  readonly form: { readonly form: Form | null };
  readonly draft: CaseDraft;
  /** Null where the text cannot be read. */
  readonly add_case: { readonly splices: readonly Splice[] | null };
  readonly offers: { readonly offers: readonly Completion[] };
  readonly hover: { readonly hover: Hover | null };
  readonly map: { readonly map: MapHere | null };
  readonly unguarded: UnguardedSoFar;
  readonly requirements: RequirementsHere;
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
  readonly splices: readonly Splice[];
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
  /** What is wrong with the ladder, where that keeps the protocol from being read. */
  readonly ladder: readonly string[];
  /** In the order of the file; empty while the protocol cannot be read with. */
  readonly cases: readonly CaseHere[];
  readonly rules: readonly RuleHere[];
}

/** Whether the text of the cases could be read at all; if not, that there are none says nothing. */
export const casesAreRead = (checked: Checked | null): boolean =>
  checked !== null &&
  (checked.cases.length > 0 ||
    checked.problems.every(({ part, severity }) => part !== 'cases' || severity !== 'error'));

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
  /** What is to be taken and asked first, in short. */
  readonly toGet: readonly string[];
  /** On a ward: the plan that holds, whom to tell, and what each of its protocols calls for. Else null or empty. */
  readonly plan: string | null;
  readonly tell: readonly string[];
  readonly reads: readonly string[];
  readonly rules: readonly RuleInCase[];
}

/** A rule that decided something in a case. */
export interface RuleInCase {
  readonly name: string;
  readonly title: string;
  /** On a ward: the protocol that it stands in. */
  readonly of: string | null;
  readonly level: string | null;
  readonly decidedBy: readonly string[];
  readonly lines: LinesHere | null;
}

/** What became of the requirements of a protocol; none where it states none, or cannot be read. */
export interface RequirementsHere {
  readonly answers: readonly RequirementHere[];
  /** Milliseconds that the last asking took. */
  readonly took: number;
}

export interface RequirementHere {
  readonly name: string;
  readonly title: string;
  readonly verdict: 'proven' | 'refuted' | 'not_settled';
  /** Of a refuted one: what the plainest set that breaks it is answered. */
  readonly says: string | null;
}

/** What was found about small changes up to now. */
export interface UnguardedSoFar {
  /** So many changes were looked at, of so many. */
  readonly looked: number;
  readonly of: number;
  readonly found: readonly UnguardedChange[];
}

/** What is observed in a case, by the name of the observation. */
export type GivenSet = Readonly<Record<string, GivenValue>>;

export type GivenValue =
  | { readonly kind: 'number'; readonly text: string; /** UCUM code. */ readonly unit: string }
  | { readonly kind: 'choice'; readonly choice: string }
  | { readonly kind: 'several'; readonly choices: readonly string[] }
  | { readonly kind: 'unobtainable' | 'declined' };

/** A case that expects what the protocol says now. */
export interface CaseDraft {
  readonly problems: readonly string[];
  /** The level in words; null with problems. */
  readonly heading: string | null;
  readonly couldBe: string | null;
  readonly why: readonly string[];
  /** What is refused or questioned. */
  readonly refused: readonly string[];
  readonly yaml: string | null;
}

/** A map, and what it can be asked for. */
export interface MapHere extends PlaneHere {
  /** Every observation that can be an axis. */
  readonly axes: readonly { readonly name: string; readonly title: string }[];
  /** Cases with a number on both axes, in whole steps. */
  readonly points: readonly {
    readonly name: string;
    readonly passes: boolean;
    readonly x: number;
    readonly y: number;
  }[];
  /** What the others are held at; what is not in it is missing. */
  readonly held: GivenSet;
  readonly form: Form;
}
