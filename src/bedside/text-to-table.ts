/** One cell of a table, and where it stands in the text. */
export interface Cell {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export interface Table {
  /** Lines that say anything; the first holds the names of the columns. */
  readonly lines: readonly (readonly Cell[])[];
  readonly separator: string;
  /** Where a quotation mark stands that is never closed; null when there is none. */
  readonly openQuote: number | null;
}

const separators = ['\t', ';', ','] as const;

/**
 * A table of values between commas, semicolons or tabs, as spreadsheets save and copy it (RFC 4180). The separator is the one that
 * the first line has most of.
 *
 * `textToTable('time,systolic\n14:00,119').lines[1]?.[1]?.text` is `'119'`.
 */
export function textToTable(text: string): Table {
  const first = /^[^\r\n]*/.exec(text.trimStart())?.[0] ?? '';
  const counts = separators.map((each) => first.split(each).length);
  const separator = separators[counts.indexOf(Math.max(...counts))] ?? ',';
  const lines: Cell[][] = [[]];
  let at = 0;
  while (at <= text.length) {
    const cell = cellAt(text, at, separator);
    if (cell === null) return { lines: saying(lines), separator, openQuote: at };
    lines.at(-1)?.push(cell.cell);
    at = cell.next;
    const ended = text.slice(cell.end, cell.next);
    if (ended !== separator) lines.push([]);
  }
  return { lines: saying(lines), separator, openQuote: null };
}

/** Lines with anything but blanks in them. */
const saying = (lines: readonly (readonly Cell[])[]): (readonly Cell[])[] =>
  lines.filter((line) => line.some(({ text }) => text !== ''));

interface Found {
  readonly cell: Cell;
  /** Where the separator or the end of the line stands, and what follows it. */
  readonly end: number;
  readonly next: number;
}

/** The cell that begins at a place; null when it opens a quotation mark and never closes it. */
function cellAt(text: string, at: number, separator: string): Found | null {
  const blank = /[ ]*/y;
  blank.lastIndex = at;
  const start = at + (blank.exec(text)?.[0].length ?? 0);
  const quoted = text[start] === '"';
  const close = quoted ? closingQuote(text, start) : start;
  if (close === -1) return null;
  let end = close;
  while (end < text.length && text[end] !== separator && text[end] !== '\n') end += 1;
  const inside = quoted
    ? text.slice(start + 1, close - 1).replaceAll('""', '"') + text.slice(close, end)
    : text.slice(start, end);
  const cell = {
    text: inside.trim(),
    start,
    end: Math.max(start, start + text.slice(start, end).trimEnd().length),
  };
  return { cell, end, next: end + 1 };
}

/** The place after the quotation mark that closes one; -1 when none does. Two in a row stand for one. */
function closingQuote(text: string, open: number): number {
  for (let at = open + 1; at < text.length; at += 1) {
    if (text[at] !== '"') continue;
    if (text[at + 1] === '"') at += 1;
    else return at + 1;
  }
  return -1;
}
