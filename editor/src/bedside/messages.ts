import type { BedsideSheet, Course, Form, HandoffFacts, SetInJson } from '../../../src/index.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';

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
  readonly sheet: BedsideSheet;
  readonly facts: HandoffFacts;
  readonly courses: readonly Course[];
}
