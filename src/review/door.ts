/** What the library offers of the questions about a protocol as a whole. */
export { lookForUnguarded, type UnguardedChange, type UnguardedSearch } from './guards/look-for-unguarded.ts';
export { findingsOf, type Findings, type FindingsAsked } from './findings/find-findings.ts';
export type { Finding, FindingKind, OpenQuestion, Witness } from './findings/finding.ts';
export { headings as findingHeadings, scope as findingsScope } from './findings/wording.ts';
export type {
  ChangedCase,
  ChangedLevel,
  ChangedRule,
  ChangedStand,
  ChangedWords,
  Comparison,
  OtherLevels,
} from './compare/comparison.ts';
export {
  groundInWords,
  notWhole,
  othersInWords,
  regionParts,
  ruleIsWords,
  type RegionParts,
} from './compare/comparison-in-words.ts';
export { compareSides } from './compare/compare.ts';
export type { Compared } from './compare/side.ts';
export { comparisonToHtml } from './compare/report/comparison-to-html.ts';
export {
  answerBefore,
  changedPlane,
  changeInWords,
  moveOf,
  type ChangedPlane,
  type Move,
} from './cells/changed-plane.ts';
export { mostGroups, proofsOf } from './requirements/prove.ts';
export type { Proof } from './requirements/proof.ts';
export { ofTheRules, whyNotSettled } from './requirements/proof-in-words.ts';
export { requirementKey } from '../protocol/requirements/requirement.ts';
export { requirementsOf, type StatedRequirement } from './requirements/stated.ts';
export { redCases } from './guards/guards-of.ts';
export type {
  StoredDraft,
  StoredLine,
  StoredPart,
  StoredResults,
  StoredText,
} from './stored/stored-results.ts';
