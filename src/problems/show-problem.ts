import type { Problem } from './problem.ts';
import { visible } from './visible.ts';

/** So many characters of the line are shown around the place. */
const width = 100;

/**
 * A problem as plain text for a terminal: place, severity, sentence, the line with a caret below, what was expected, what was
 * probably meant. Nothing in it can move the cursor or hide: what cannot be seen is shown by its number.
 *
 *     protocol.yaml:4:3: error: "levle" is not something that can stand in item 1 of "rules".
 *       levle: call_doctor
 *       ^^^^^
 *     expected: one of level, title, …
 *     Did you mean "level"?
 */
export function showProblem(problem: Problem): string {
  const { file, line, column, severity, says, expected, near_miss: nearMiss } = problem;
  const lines = [`${visible(file)}:${line}:${column}: ${severity}: ${visible(says)}`];
  if (problem.source.trim() !== '') lines.push(...excerpt(problem));
  if (expected !== null) lines.push(`expected: ${visible(expected)}`);
  if (nearMiss !== null) lines.push(`Did you mean "${visible(nearMiss)}"?`);
  return lines.join('\n');
}

/** The line of the text and the carets below it. Tabs stay, in both, so that the caret stands right at every tab width. */
function excerpt({ source, column, length }: Problem): [string, string] {
  const start = column - 1;
  const from = source.length <= width ? 0 : Math.max(0, Math.min(start - 30, source.length - width));
  const to = source.length <= width ? source.length : from + width;
  const before = source.slice(from, start);
  const marked = source.slice(start, Math.min(start + length, to));
  const left = from > 0 ? '…' : '';
  const right = to < source.length ? '…' : '';
  const shown = left + seen(before) + seen(marked) + seen(source.slice(start + marked.length, to)) + right;
  const below = blank(left + seen(before)) + '^'.repeat(Math.max(1, characters(seen(marked))));
  return [`  ${shown}`, `  ${below}`];
}

const seen = (text: string): string => text.split('\t').map(visible).join('\t');
const blank = (text: string): string => text.replace(/[^\t]/gu, ' ');
const characters = (text: string): number => [...text].length;
