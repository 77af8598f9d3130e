/** What the library offers of the questions about a protocol as a whole. */
export { lookForUnguarded, type UnguardedChange, type UnguardedSearch } from './guards/look-for-unguarded.ts';
export { findingsOf, type Findings, type FindingsAsked } from './findings/find-findings.ts';
export type { Finding, FindingKind, OpenQuestion, Witness } from './findings/finding.ts';
export { headings as findingHeadings, scope as findingsScope } from './findings/wording.ts';
