import type { Course, Form, HandoffFacts, SetInJson, Sheet } from '../../../src/index.ts';

/** A protocol, or a ward policy, as protocols.json holds it: text, which the worker checks. */
export interface SiteProtocol {
  readonly kind: 'protocol' | 'ward';
  readonly id: string;
  readonly title: string;
  readonly file: string;
  readonly text: string;
  readonly ladder: SiteText | null;
  /** The cases.yaml beside it; null when there is none. */
  readonly cases: SiteText | null;
}

/** A text under the name that its problems cite. */
export interface SiteText {
  readonly file: string;
  readonly text: string;
}

/** All that protocols.json holds. */
export interface Site {
  /** Whether what is written here can be saved where it came from; else it can only be downloaded. */
  readonly saves: boolean;
  readonly protocols: readonly SiteProtocol[];
  /** Every ladder that a new protocol could call on. */
  readonly ladders: readonly SiteText[];
}

/** What the page asks of the worker. All that is checked or evaluated, is there. */
export type Question =
  | { readonly kind: 'open'; readonly protocol: SiteProtocol; readonly all: readonly SiteProtocol[] }
  | { readonly kind: 'read'; readonly text: string }
  | { readonly kind: 'table'; readonly text: string; readonly before: string };

/** Each answer by the kind of its question. Problems are sentences, with their place where that helps. */
export interface Answers {
  readonly open: { readonly form: Form | null; readonly problems: readonly string[] };
  readonly read: { readonly readings: readonly PageReading[]; readonly problems: readonly string[] };
  readonly table: { readonly sets: readonly SetInJson[]; readonly problems: readonly string[] };
}

/** What one protocol says of a set, as a page shows it. */
export interface PageReading {
  readonly sheet: Sheet;
  readonly facts: HandoffFacts;
  readonly courses: readonly Course[];
}

export interface Asked {
  readonly id: number;
  readonly question: Question;
}

export interface Answered {
  readonly id: number;
  /** Null: a fault of the kit itself. */
  readonly answer: Answers[Question['kind']] | null;
}
