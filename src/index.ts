/**
 * The library: text in, problems or a protocol that can be asked, a set in, an explained outcome out. Pure: nothing here
 * touches the file system, the clock or the network, so the same code runs in a page.
 *
 *     const { ladder } = readLadder('ladder.yaml', ladderText);
 *     const { protocol, problems } = readProtocol('protocol.yaml', protocolText, { ladder });
 *     const { series } = readSet('set.json', '{ "systolic": 104 }', protocol);
 *     const outcome = evaluate(protocol, series);
 */
import { caseProblems } from './cases/case-problems.ts';
import { documentToCases } from './cases/document-to-cases.ts';
import type { CaseResult } from './cases/case-result.ts';
import { runCase } from './cases/run-case.ts';
import { yamlToDocument } from './document/yaml-to-document.ts';
import { outcomeOf } from './outcome/bounds-to-outcome.ts';
import type { Compiled } from './outcome/compile.ts';
import type { Problem } from './problems/problem.ts';
import { documentToLadder } from './protocol/document-to-protocol.ts';
import type { Ladder } from './protocol/protocol.ts';
import { documentToChecked } from './review/document-to-checked.ts';
import { seriesToBounds } from './series/series-to-bounds.ts';
import type { Series } from './series/series.ts';
import { textToSeries } from './series/text-to-series.ts';
import type { Outcome } from './shape/generated/types.ts';
import { textToFile } from './shape/text-to-file.ts';
import type { Dictionary } from './vocabulary/dictionary.ts';
import { vitalSigns } from './vocabulary/vital-signs.ts';

export { showProblem } from './problems/show-problem.ts';
export {
  blanks,
  blanksLeft,
  emptyBackground,
  handoffText,
  type Background,
  type HandoffFacts,
} from './bedside/handoff.ts';
export type { Course } from './bedside/course.ts';
export type { Field, FieldGroup, Form, LimitField } from './bedside/form.ts';
export { protocolReader, type Reader } from './bedside/reader.ts';
export type { Gap, Said, Sheet, SheetLevel } from './bedside/sheet.ts';
export type { LocalTime, SetInJson } from './bedside/text-to-sets.ts';
export { logicToJson } from './logic/logic-to-json.ts';
export {
  vitalSigns,
  type CaseResult,
  type Compiled,
  type Dictionary,
  type Ladder,
  type Outcome,
  type Problem,
  type Series,
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
  { ladder, dictionary = vitalSigns, today = null }: ReadWith,
): { protocol: Compiled | null; problems: readonly Problem[] } {
  const { document, problems } = yamlToDocument(file, text);
  if (!document) return { protocol: null, problems: textToFile('protocol', file, text).problems };
  const { compiled, problems: found } = documentToChecked(document, { dictionary, ladder, today });
  return { protocol: compiled, problems: [...problems, ...found] };
}

/**
 * Reads a set or a series from JSON, with UCUM units, for one protocol. Null when it cannot be asked: a key that is not
 * known or stands twice, text where a number belongs. A value that no body has is no problem here: the outcome refuses it.
 *
 * `readSet('set.json', '{ "systolic": 104, "systolic": 48 }', protocol).problems[0]?.code` is `'key_twice'`.
 */
export function readSet(
  file: string,
  text: string,
  { protocol }: Compiled,
): { series: Series | null; problems: readonly Problem[] } {
  return textToSeries(file, text, protocol);
}

/**
 * What a protocol says about a set in its series, explained. The outcome is plain JSON after schema/outcome.schema.json.
 *
 * Of an empty set `evaluate(protocol, series).level.at_least` is null: missing is never normal.
 */
export function evaluate(protocol: Compiled, series: Series): Outcome {
  return outcomeOf(protocol, seriesToBounds(protocol.protocol, series));
}

/**
 * Runs the cases of a protocol from their YAML. A case that does not come out as expected is a problem at the line that
 * expects otherwise.
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
  const read = documentToCases(document, protocol.protocol);
  const results = read.cases.map((each) => runCase(protocol, each));
  const failed = results.flatMap((result) => caseProblems(result, document));
  return { results, problems: [...problems, ...read.problems, ...failed] };
}
