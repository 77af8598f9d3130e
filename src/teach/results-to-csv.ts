import type { Answered } from './results.ts';
import { verdictTitles } from './verdict-in-words.ts';

const columns: readonly (readonly [string, (answer: Answered) => string])[] = [
  ['time', ({ at }) => at],
  ['protocol', ({ protocol }) => protocol],
  ['edition', ({ edition }) => String(edition)],
  ['case', (answer) => answer.case],
  ['said', ({ said }) => said],
  ['rule says', ({ ruleSays }) => ruleSays],
  ['how it stands', ({ verdict }) => verdictTitles[verdict]],
  ['showing', ({ showing }) => String(showing)],
  ['observations seen', ({ seen }) => String(seen)],
  ['observations given', ({ given }) => String(given)],
  ['output and vessels said', ({ outputAndVessels }) => outputAndVessels],
  ['output and vessels by the case', ({ caseSays }) => caseSays],
];

/** Answers as CSV after RFC 4180, one a line below the names of the columns. `resultsToCsv([])` is the names alone. */
export function resultsToCsv(answers: readonly Answered[]): string {
  const lines = [columns.map(([name]) => name), ...answers.map((each) => columns.map(([, of]) => of(each)))];
  return lines.map((line) => `${line.map(csvCell).join(',')}\r\n`).join('');
}

/**
 * One cell. A program for tables would take what begins with one of these signs for a formula and work it out; an apostrophe keeps it a
 * text. What already begins with apostrophes before such a sign has one more, so that it can be told from what was given one.
 *
 * `csvCell('=1+1')` is `'=1+1` with the apostrophe.
 */
export function csvCell(text: string): string {
  const safe = /^'*[=+\-@\t\r\n]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
