import { partAt, type ListNode } from '../../document/document.ts';
import { yamlToDocument } from '../../document/yaml-to-document.ts';
import type { Splice } from '../splice.ts';
import { lineEndOf, plainText } from '../yaml-text.ts';
import { column, dashOf, lineEnd, lineStart } from './places.ts';

/** What a case file is for: a protocol or a ward policy, by its name. */
export type CasesHead = { readonly protocol: string } | { readonly ward: string };

/**
 * The edit that adds a case after the last one, in the file's own indentation and line ends. `caseYaml` is the case as an item of a list, as
 * it is proposed: `- case: …` and the lines below it. A text without anything in it becomes a file with its head. Null where the
 * text cannot be read, or its cases stand in brackets.
 */
export function addCase(casesText: string, caseYaml: string, head: CasesHead): readonly Splice[] | null {
  const lines = dedented(caseYaml);
  if (isEmpty(casesText)) return [atTheEnd(casesText, newFile(lines, head))];
  const { draft: document } = yamlToDocument('', casesText);
  if (!document) return null;
  const { node: cases, keySpan } = partAt(document, ['cases']);
  if (!keySpan) return null;
  if (cases.kind === 'list' && cases.items.length > 0) return afterLast(casesText, cases, lines);
  const isNothing = cases.kind === 'list' || (cases.kind === 'scalar' && cases.value === null);
  return isNothing ? inPlaceOfNothing(casesText, cases.span, keySpan.end, lines) : null;
}

/** Nothing but comments. */
const isEmpty = (text: string): boolean => text.split('\n').every((line) => /^\s*(?:#.*)?$/.test(line));

function newFile(lines: readonly string[], head: CasesHead): string[] {
  const [key, name] = 'ward' in head ? ['ward', head.ward] : ['protocol', head.protocol];
  return [`${key}: ${plainText(name)}`, 'cases:', ...indented(lines, 2)];
}

function atTheEnd(text: string, lines: readonly string[]): Splice {
  const newline = lineEndOf(text);
  const before = text === '' || text.endsWith('\n') ? '' : newline;
  return { from: text.length, to: text.length, text: before + lines.map((line) => line + newline).join('') };
}

/** The lines of a case, moved to the left until its dash is first. */
function dedented(yaml: string): string[] {
  const lines = yaml
    .replace(/\r\n/g, '\n')
    .replace(/^\n+|\s+$/g, '')
    .split('\n');
  const indent = /^ */.exec(lines[0] ?? '')?.[0].length ?? 0;
  return lines.map((line) => line.slice(Math.min(indent, line.length - line.trimStart().length)));
}

const indented = (lines: readonly string[], indent: number): string[] =>
  lines.map((line) => (line === '' ? '' : ' '.repeat(indent) + line));

function afterLast(text: string, cases: ListNode, lines: readonly string[]): Splice[] | null {
  const dash = dashOf(text, cases, cases.items.length - 1);
  const last = cases.items.at(-1);
  if (text[cases.span.start] === '[' || dash === null || !last) return null;
  const newline = lineEndOf(text);
  const at = lineEnd(text, last.span.end);
  const apart = cases.items.length > 1 && !isBlankBefore(text, dash) ? '' : newline;
  const put = indented(lines, column(text, dash)).map((line) => newline + line);
  return [{ from: at, to: at, text: apart + put.join('') }];
}

/** Whether an empty line stands above a place's line. */
function isBlankBefore(text: string, at: number): boolean {
  const start = lineStart(text, at);
  return (
    start > 0 && /(?:^|\n)[ \t]*\r?\n(?:[ \t]*#[^\n]*\n)*$/.test(text.slice(Math.max(0, start - 2000), start))
  );
}

/** `cases:` or `cases: []` with the first case; a comment behind stays on its line. */
function inPlaceOfNothing(
  text: string,
  { start, end }: ListNode['span'],
  keyEnd: number,
  lines: readonly string[],
): Splice[] {
  const newline = lineEndOf(text);
  const isWritten = text[start] === '[';
  const at = lineEnd(text, isWritten ? end : keyEnd);
  const put = {
    from: at,
    to: at,
    text: indented(lines, 2)
      .map((line) => newline + line)
      .join(''),
  };
  return isWritten ? [{ from: text.slice(0, start).trimEnd().length, to: end, text: '' }, put] : [put];
}
