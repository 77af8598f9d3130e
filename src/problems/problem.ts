import type { Code, Facts } from './catalogue.ts';
import type { Severity } from './entry.ts';
import { catalogue } from './catalogue.ts';
import type { Path, Span } from './place.ts';

/** Something wrong in a text, with its place: data, never thrown. */
export interface Problem {
  readonly code: Code;
  readonly severity: Severity;
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** From 1, in characters. */
  readonly column: number;
  /** The whole line of the text. */
  readonly source: string;
  /** How many characters of the line are meant, from `column`; at least 1. */
  readonly length: number;
  /** What is wrong, in a sentence for a nurse. */
  readonly says: string;
  /** What was expected, where that can be said. */
  readonly expected: string | null;
  /** What was probably meant; null when nothing is near. */
  readonly near_miss: string | null;
}

/** A problem before it has a place: what a check reports. */
export interface Finding<C extends Code = Code> {
  readonly code: C;
  readonly facts: Facts<C>;
  readonly path: Path;
  /** Whether the key at the path is meant, or the value there. */
  readonly part: 'key' | 'value';
  readonly nearMiss: NearMiss;
}

/** What was probably meant; null when nothing is near. Asked only of problems that are shown, where looking for it takes time. */
export type NearMiss = string | null | (() => string | null);

/** How a check says what it found. `part` is `value` and there is no near miss unless told otherwise. */
export type Report = <C extends Code>(
  code: C,
  path: Path,
  facts: Facts<C>,
  more?: { part?: 'key' | 'value'; nearMiss?: NearMiss },
) => void;

/** Collects findings in a list. */
export function reporter(findings: Finding[]): Report {
  return (code, path, facts, more = {}) => {
    findings.push({ code, path, facts, part: more.part ?? 'value', nearMiss: more.nearMiss ?? null });
  };
}

/** A problem at a span of a text. */
export function problemAt<C extends Code>(
  file: string,
  text: string,
  span: Span,
  code: C,
  facts: Facts<C>,
  nearMiss: string | null = null,
): Problem {
  const start = Math.min(span.start, text.length);
  const lineStart = text.lastIndexOf('\n', start - 1) + 1;
  const newline = text.indexOf('\n', start);
  const lineEnd = newline === -1 ? text.length : newline;
  const source = text.slice(lineStart, lineEnd).replace(/\r$/, '');
  const before = text.slice(0, lineStart);
  let line = 1;
  for (let at = before.indexOf('\n'); at !== -1; at = before.indexOf('\n', at + 1)) line += 1;
  const entry: (typeof catalogue)[Code] = catalogue[code];
  const says = entry.says as (facts: Facts<C>) => string;
  const expected = entry.expected as ((facts: Facts<C>) => string) | null;
  return {
    code,
    severity: entry.severity,
    file,
    line,
    column: start - lineStart + 1,
    source,
    length: Math.max(1, Math.min(span.end, lineEnd) - start),
    says: says(facts),
    expected: expected ? expected(facts) : null,
    near_miss: nearMiss,
  };
}

/** Whether any of the problems is an error. */
export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === 'error');
}
