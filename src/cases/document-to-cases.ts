import type * as File from '../shape/generated/types.ts';
import { checkShape } from '../shape/check-shape.ts';
import { partAt, type Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { hasErrors, reporter, type Finding, type Problem, type Report } from '../problems/problem.ts';
import type { Path } from '../problems/place.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { nearestOf } from '../protocol/names.ts';
import { documentToSeries } from '../series/document-to-series.ts';
import type { Series } from '../series/series.ts';
import { setVocabularyOf, type SetVocabulary } from '../series/set-reading.ts';
import type { Case } from './case.ts';
import { readExpectation } from './read-expectation.ts';

/** The cases of a file that could be read, and the problems of the others. */
export interface ReadCases {
  readonly cases: readonly Case[];
  readonly problems: readonly Problem[];
}

/** Reads a case file beside its protocol: every name exists, no case contradicts itself. */
export function documentToCases(document: Document, protocol: Protocol): ReadCases {
  const { value: file, problems } = checkShape('cases', document);
  if (!file) return { cases: [], problems };
  const findings: Finding[] = [];
  const report = reporter(findings);
  if (file.protocol !== protocol.name) {
    report('case_of_another_protocol', ['protocol'], { name: file.protocol, protocol: protocol.name });
  }
  const seen = new Set<string>();
  const inSets: Problem[] = [];
  const cases = file.cases.map((each, index) => {
    const path = ['cases', index];
    if (seen.has(each.case)) report('case_twice', [...path, 'case'], { name: each.case });
    seen.add(each.case);
    return readCase(each, path, { document, protocol, report, findings, inSets });
  });
  const found = [...problems, ...findingsToProblems(document, findings), ...inSets];
  found.sort((left, right) => left.line - right.line || left.column - right.column);
  return { cases: cases.filter((each) => each !== null), problems: found };
}

/** What is given in a case: one set, or a series. Null with a mistake. */
export function readStory(
  file: Pick<File.Case, 'given' | 'series'>,
  path: Path,
  document: Document,
  vocabulary: SetVocabulary,
  report: Report,
): { series: Series | null; problems: readonly Problem[] } {
  const both = file.given !== undefined && file.series !== undefined;
  if (both || (file.given === undefined && file.series === undefined)) {
    report('case_needs_one_story', path, { both });
    return { series: null, problems: [] };
  }
  const root = partAt(document, [...path, file.given === undefined ? 'series' : 'given']).node;
  const read = documentToSeries({ ...document, root }, vocabulary, { units: 'trade' });
  return hasErrors(read.problems) ? { series: null, problems: read.problems } : read;
}

interface Reading {
  readonly document: Document;
  readonly protocol: Protocol;
  readonly report: Report;
  readonly findings: readonly Finding[];
  /** Problems of what is given. */
  readonly inSets: Problem[];
}

/** Reads one case; null when it has a mistake: it is not run, because its answer would mean nothing. */
function readCase(file: File.Case, path: Path, reading: Reading): Case | null {
  const { document, protocol, report, findings, inSets } = reading;
  const before = findings.length;
  const expect = readExpectation(file.expect, [...path, 'expect'], protocol, report);
  if (file.source !== undefined && !protocol.sources.has(file.source)) {
    const nearMiss = nearestOf(file.source, protocol.sources.keys());
    report('unknown_source', [...path, 'source'], { name: file.source }, { nearMiss });
  }
  const { series, problems } = readStory(file, path, document, setVocabularyOf(protocol), report);
  inSets.push(...problems);
  if (!series || findings.length > before) return null;
  return { name: file.case, source: file.source ?? null, series, expect, path };
}
