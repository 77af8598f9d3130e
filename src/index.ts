/**
 * The library: text in, problems or a protocol that can be asked, a set in, an explained outcome out. Pure: nothing here
 * touches the file system, the clock or the network, so the same code runs in a page.
 *
 *     const { ladder } = readLadder('ladder.yaml', ladderText);
 *     const { protocol, problems } = readProtocol('protocol.yaml', protocolText, { ladder });
 *     const { series } = readSet('set.json', '{ "systolic": 104 }', protocol);
 *     const outcome = evaluate(protocol, series);
 */
import { documentToCasesReport, type CasesReport } from './authoring/document-to-cases-report.ts';
import { formOf, type Form } from './bedside/form.ts';
import { caseProblems } from './cases/case-problems.ts';
import type { CaseResult } from './cases/case-result.ts';
import { casesIn } from './cases/run-cases.ts';
import { runWardCases as casesOfWard, type WardCaseResult } from './cases/ward-cases.ts';
import type { Document } from './document/document.ts';
import { yamlToDocument } from './document/yaml-to-document.ts';
import type { Compiled } from './outcome/compile.ts';
import { seriesToOutcome } from './outcome/series-to-outcome.ts';
import type { Problem } from './problems/problem.ts';
import type { Parents, ParentText } from './protocol/based-on/basis.ts';
import { documentToLadder } from './protocol/document-to-protocol.ts';
import type { Ladder } from './protocol/protocol.ts';
import { beginWard, documentToCheckedWard } from './review/document-to-checked-ward.ts';
import { documentToChecked } from './review/document-to-checked.ts';
import type { Series } from './series/series.ts';
import { setVocabularyOf } from './series/set-reading.ts';
import { textToSeries } from './series/text-to-series.ts';
import type { Outcome, WardOutcome } from './shape/generated/types.ts';
import { teacherOf, type Teacher } from './teach/teacher.ts';
import { textToFile } from './shape/text-to-file.ts';
import type { Dictionary } from './vocabulary/dictionary.ts';
import { vitalSigns } from './vocabulary/vital-signs.ts';
import type { WardSurroundings } from './ward/document-to-ward.ts';
import { protocolsAsOne } from './ward/as-one.ts';
import { wardOutcomeOf } from './ward/series-to-ward-outcome.ts';
import type { Ward } from './ward/ward.ts';

export { isName, schemaNear, startTexts, type StartFrom } from './authoring/start-texts.ts';
export { completionsAt, type AuthoringQuestion, type Completion } from './authoring/completions-at.ts';
export { ordinaryValues, type OrdinaryValue } from './authoring/ordinary-values.ts';
export {
  documentToCasesReport,
  type CaseReport,
  type CasesReport,
  type DecidingRule,
} from './authoring/document-to-cases-report.ts';
export { addCase, type CasesHead } from './authoring/edits/add-case.ts';
export { addEntry, addItem } from './authoring/edits/add-part.ts';
export { removePart } from './authoring/edits/remove-part.ts';
export { alikeLines, withOwnLineEnds } from './authoring/alike-lines.ts';
export { setValue } from './authoring/edits/set-value.ts';
export { askedEditions } from './ward/asked-editions.ts';
export * from './handbook/door.ts';
export { wardLevelSays } from './authoring/ward-level-says.ts';
export { hoverAt, type Hover } from './authoring/hover-at.ts';
export type { AuthoringSurroundings, WrittenKind } from './authoring/known/known.ts';
export { linesOf, type FileLines, type PartLines } from './authoring/lines-of.ts';
export { mendsOf, type CheckAgain, type Mend } from './authoring/mends-of.ts';
export type { OfferKind } from './authoring/offers/offer.ts';
export { spliced, type Splice } from './authoring/splice.ts';
export type { Plain } from './authoring/yaml-text.ts';
export { Workbench, type CaseAnswer, type Written, type WrittenTexts } from './authoring/workbench.ts';
export * from './review/door.ts';
export * from './editions/door.ts';
export { showProblem } from './problems/show-problem.ts';
export { proveRequirements } from './review/requirements/prove.ts';
export {
  blanks,
  blanksLeft,
  draftSaid,
  emptyBackground,
  handoffText,
  type Background,
  type HandoffFacts,
  type SaidOfSource,
} from './bedside/handoff.ts';
export type { Course } from './bedside/course.ts';
export type { Field, FieldGroup, LimitField } from './bedside/form.ts';
export { protocolReader, wardReader, type Reader } from './bedside/reader.ts';
export type { BedsideSheet, Gap, Said, Sheet, SheetFaults, SheetGaps, SheetLevel } from './bedside/sheet.ts';
export type { LocalTime, SetInJson } from './bedside/text-to-sets.ts';
export { axesOf } from './review/cells/axes-of.ts';
export { cellAt } from './review/cells/cell-at.ts';
export { linesOverPlane, type PlaneLine } from './review/cells/lines-over-plane.ts';
export {
  cellInWords,
  levelInWords,
  pointInWords,
  rulesThatAre,
  stepInWords,
} from './review/cells/plane-in-words.ts';
export { planeOf, type PlaneAsked } from './review/cells/plane-of.ts';
export { valueAt, type Axis, type Cell, type Plane, type PlaneAnswer } from './review/cells/plane.ts';
export { caution } from './outcome/caution.ts';
export { afterAnswer, deckOf, type Card, type Deck } from './teach/deck.ts';
export type { CaseCard } from './teach/case-card.ts';
export type { ConditionWords } from './teach/condition-in-words.ts';
export type { Handout, HandoutLevel, HandoutPart, HandoutRule } from './teach/handout.ts';
export {
  asRules,
  isMissed,
  judge,
  verdicts,
  type RulesSay,
  type Said as SaidLevel,
  type Verdict,
} from './teach/judge.ts';
export type { MapGround, MapOrWhy } from './teach/on-the-map.ts';
export { outputAndVessels, type OutputAndVessels } from './teach/output-and-vessels.ts';
export { resultsOf, type Answered, type Counts, type Results } from './teach/results.ts';
export { resultsToCsv } from './teach/results-to-csv.ts';
export type { Answer as DrillAnswer, Lessons, Teacher } from './teach/teacher.ts';
export type { Drill, DrillLine, DrillPart } from './teach/unfold.ts';
export { saidInWords, sayable, verdictInWords, verdictTitles } from './teach/verdict-in-words.ts';
export { logicToJson } from './logic/logic-to-json.ts';
export {
  vitalSigns,
  type CaseResult,
  type Compiled,
  type Dictionary,
  type Document,
  type Form,
  type Ladder,
  type Parents,
  type ParentText,
  type Outcome,
  type Problem,
  type Series,
  type Ward,
  type WardOutcome,
};

/**
 * Reads a ladder from its YAML. Null when it has errors; the problems then say which, each with its place.
 *
 * `readLadder('ladder.yaml', text).ladder?.levels[0]?.name` is the name of the lowest level.
 */
export function readLadder(
  file: string,
  text: string,
): { ladder: Ladder | null; problems: readonly Problem[] } {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) return { ladder: null, problems: textToFile('ladder', file, text).problems };
  const read = documentToLadder(document);
  return { ladder: read.ladder, problems: [...problems, ...read.problems] };
}

/** What a protocol is read with. */
export interface ReadWith {
  /** The ladder that its rules call on; without one the protocol has an error. */
  readonly ladder: Ladder | null;
  /** The kit's own dictionary, schema/vital_signs.yaml, unless told otherwise. */
  readonly dictionary?: Dictionary;
  /** Protocols that this one may be based on, by their names; only those that a `based_on` leads to are read. */
  readonly parents?: Parents;
  /** Year-month-day, to be told of an overdue review; null (the default) asks nothing. */
  readonly today?: string | null;
}

/**
 * Reads and checks a protocol. Null when it has errors; warnings can come with a protocol. All problems come at once.
 *
 * `readProtocol('protocol.yaml', 'protocol: x', { ladder }).problems[0]?.line` is 1.
 */
export function readProtocol(
  file: string,
  text: string,
  { ladder, dictionary = vitalSigns, today = null, parents = new Map() }: ReadWith,
): { protocol: Compiled | null; problems: readonly Problem[] } {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) return { protocol: null, problems: textToFile('protocol', file, text).problems };
  const { compiled, problems: found } = documentToChecked(document, {
    dictionary,
    ladder,
    today,
    parents,
  });
  return { protocol: compiled, problems: [...problems, ...found] };
}

/**
 * Reads a set or a series from JSON, with UCUM units, for one protocol or one ward. Null when it cannot be asked: a key that is not
 * known or stands twice, text where a number belongs. A value that no body has is no problem here: the outcome refuses it.
 *
 * `readSet('set.json', '{ "systolic": 104, "systolic": 48 }', protocol).problems[0]?.code` is `'key_twice'`.
 */
export function readSet(
  file: string,
  text: string,
  reader: Compiled | Ward,
): { series: Series | null; problems: readonly Problem[] } {
  return textToSeries(
    file,
    text,
    'vocabulary' in reader ? reader.vocabulary : setVocabularyOf(reader.protocol),
  );
}

/**
 * What a protocol says about a set in its series, explained. The outcome is plain JSON after schema/outcome.schema.json.
 *
 * Of an empty set `evaluate(protocol, series).level.at_least` is null: missing is never normal.
 */
export function evaluate(protocol: Compiled, series: Series): Outcome {
  return seriesToOutcome(protocol, series);
}

/** What a ward policy is read with. */
export interface ReadWardWith extends Pick<WardSurroundings, 'ladder' | 'protocols'> {
  /** Year-month-day, to be told of an overdue review; null (the default) asks nothing. */
  readonly today?: string | null;
}

/**
 * Reads and checks a ward policy: the protocols that a ward reads with together. `protocols` holds what was read before, by name;
 * null for one that has errors.
 *
 * `readWard('ward.yaml', text, { ladder, protocols }).ward?.members.length` is how many protocols it reads with.
 */
export function readWard(
  file: string,
  text: string,
  { ladder, protocols, today = null }: ReadWardWith,
): { ward: Ward | null; problems: readonly Problem[] } {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) return { ward: null, problems: textToFile('ward', file, text).problems };
  const read = documentToCheckedWard(document, { ladder, protocols, today });
  return { ward: read.ward, problems: [...problems, ...read.problems] };
}

/**
 * Reads a ward policy in two halves, for a page that shows its form while the long half of the check still runs. The ward itself,
 * and with it any outcome, only comes from `finish`, which is `readWard`.
 *
 * `openWard('ward.yaml', text, { ladder, protocols }).form?.title` is its title, and null when it has errors.
 */
export function openWard(
  file: string,
  text: string,
  { ladder, protocols, today = null }: ReadWardWith,
): {
  form: Form | null;
  problems: readonly Problem[];
  finish: () => { ward: Ward | null; problems: readonly Problem[] };
} {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) {
    const found = textToFile('ward', file, text).problems;
    return { form: null, problems: found, finish: () => ({ ward: null, problems: found }) };
  }
  const begun = beginWard(document, { ladder, protocols, today });
  return {
    form: begun.unfinished && formOf(protocolsAsOne(begun.unfinished)),
    problems: [...problems, ...begun.problems],
    finish: () => {
      const { ward, problems: found } = begun.finish();
      return { ward, problems: [...problems, ...found] };
    },
  };
}

/**
 * What a ward policy says about a set in its series: one level of all its protocols, how it is answered there, each piece of advice
 * once. Plain JSON after schema/ward_outcome.schema.json.
 *
 * Of an empty set `evaluateWard(ward, series).level?.at_least` is null: missing is never normal.
 */
export function evaluateWard(ward: Ward, series: Series): WardOutcome {
  return wardOutcomeOf(ward, series);
}

/**
 * What the Teach room works with: the cases of a protocol or a ward policy, unfolded bit by bit, and what is said of each once it is
 * answered. Null for `cases`: there are none.
 *
 * `readLessons(protocol, { file: 'cases.yaml', text }).lessons.cards.length` is how many cases can be drilled.
 */
export function readLessons(
  reads: Compiled | Ward,
  cases: { readonly file: string; readonly text: string } | null,
): Teacher {
  const read = cases && yamlToDocument(cases.file, cases.text);
  const teacher = teacherOf(reads, read?.document ?? null);
  const { lessons } = teacher;
  return read
    ? { ...teacher, lessons: { ...lessons, problems: [...read.problems, ...lessons.problems] } }
    : teacher;
}

/** Runs the cases of a ward policy from their YAML, as `runCases` does those of a protocol. */
export function runWardCases(
  file: string,
  text: string,
  ward: Ward,
): { results: readonly WardCaseResult[]; problems: readonly Problem[] } {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) return { results: [], problems: textToFile('ward_cases', file, text).problems };
  const { results, problems: found } = casesOfWard(document, ward);
  const failed = results.flatMap((result) => caseProblems(result, document));
  return { results, problems: [...problems, ...found, ...failed] };
}

/**
 * Runs the cases of a protocol from their YAML. A case that comes out otherwise is a problem at the line that expects it.
 *
 * `runCases('cases.yaml', text, protocol).results.every(({ differences }) => differences.length === 0)` when all is well.
 */
export function runCases(
  file: string,
  text: string,
  protocol: Compiled,
): { results: readonly CaseResult[]; problems: readonly Problem[] } {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) return { results: [], problems: textToFile('cases', file, text).problems };
  const { results, problems: found } = casesIn(document, protocol);
  return { results, problems: [...problems, ...found] };
}

/**
 * Reads a YAML text as a document, in which parts can be found and edits made as splices. Null when it cannot be read; the problems then
 * say why. Whether it means anything is asked of readProtocol and its like.
 *
 * `spliced(text, setValue(document, ['limits', 'mean_floor', 'value'], 70) ?? [])` is the text with another limit.
 */
export function readDocument(
  file: string,
  text: string,
): { document: Document | null; problems: readonly Problem[] } {
  const { document, problems } = yamlToDocument(file, text);
  return { document, problems };
}

/**
 * Runs the cases of a protocol as runCases does, and says of each how it came out and why: what differs, the level and the rules that
 * decide it with their sentences, the rules by their states, the numbers that were given.
 *
 * `reportCases('cases.yaml', text, protocol).cases.filter(({ met }) => met.includes('mean_too_low'))` are the cases that meet a rule.
 */
export function reportCases(file: string, text: string, protocol: Compiled): CasesReport {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) return { cases: [], problems: textToFile('cases', file, text).problems };
  const report = documentToCasesReport(document, protocol);
  return { ...report, problems: [...problems, ...report.problems] };
}
