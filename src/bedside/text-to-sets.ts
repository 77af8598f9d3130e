import { problemAt, type Problem } from '../problems/problem.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { ObservationEntry } from '../vocabulary/observation.ts';
import { lettersOf } from '../vocabulary/words.ts';
import { readColumns, unitCalled, type Column } from './table-columns.ts';
import type { TellAt } from './tell-at.ts';
import { textToTable, type Cell } from './text-to-table.ts';

/** A set as JSON carries it: its time, and what was observed. */
export type SetInJson = Readonly<Record<string, unknown>> & { readonly at: string };

/** Turns a day (or none: the latest such time) and a clock time, as they are said here, into a time with its offset. */
export type LocalTime = (day: string | null, clock: string) => string | null;

/** So many earlier sets are taken from a table. */
const most = 500;

/**
 * Reads earlier sets from a table: a column for the time, one for each observation, a line for each set. All problems come at once;
 * with one of them there are no sets, as nothing in the table may be left out unseen.
 *
 * `time,bp,temp (°F)` with `14:00,119/66,97.3` is one set with a systolic of 119, a diastolic of 66 and a temperature of 97.3 °F.
 */
export function textToSets(
  file: string,
  text: string,
  protocol: Protocol,
  localTime: LocalTime,
): { sets: readonly SetInJson[]; problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const tell: TellAt = (code, { start, end }, facts, near = null) => {
    if (problems.length < 100) problems.push(problemAt(file, text, { start, end }, code, facts, near));
  };
  const table = textToTable(text);
  const here: Cell = { text: '', start: table.openQuote ?? 0, end: (table.openQuote ?? 0) + 1 };
  const [names, ...lines] = table.lines;
  if (table.openQuote !== null) tell('table_quote_open', here, {});
  else if (!names || lines.length === 0 || lines.length > most) tell('table_empty', here, {});
  else {
    const columns = readColumns(names, protocol, tell);
    if (!columns.some((column) => column?.holds === 'time')) tell('table_without_time', here, {});
    const reading = { columns, comma: table.separator !== ',', protocol, localTime, tell };
    const sets = lines.map((cells) => readLine(cells, reading)).filter((set) => set !== null);
    if (problems.length === 0) return { sets, problems };
  }
  return { sets: [], problems };
}

interface Reading {
  readonly columns: readonly Column[];
  /** Whether a comma may stand between a number and its decimals. */
  readonly comma: boolean;
  readonly protocol: Protocol;
  readonly localTime: LocalTime;
  readonly tell: TellAt;
}

function readLine(cells: readonly Cell[], reading: Reading): SetInJson | null {
  const { columns, tell } = reading;
  const [first] = cells;
  const filled = cells.findLastIndex(({ text }) => text !== '') + 1;
  if (first && filled > columns.length) {
    tell('table_more_cells', first, { cells: filled, columns: columns.length });
    return null;
  }
  const at = timeOf(cells, reading);
  const observed: Record<string, unknown> = {};
  columns.forEach((column, index) => {
    const cell = cells[index];
    if (column?.holds !== 'observation' || !cell || cell.text === '' || cell.text === '-') return;
    Object.assign(observed, readCell(cell, column, reading));
  });
  return at === null ? null : { at, ...observed };
}

function timeOf(cells: readonly Cell[], { columns, localTime, tell }: Reading): string | null {
  const cellOf = (holds: 'day' | 'time'): Cell | undefined =>
    cells[columns.findIndex((each) => each?.holds === holds)];
  const [day, time] = [cellOf('day'), cellOf('time')];
  const cell = time ?? cells[0];
  if (!cell) return null;
  const [, ownDay = null, clock = null] =
    /^(?:(\d{4}-\d{2}-\d{2})[T ])?(\d{1,2}:\d{2}(?::\d{2})?)$/.exec(cell.text) ?? [];
  const hasOffset = /^\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:\d{2})$/i.test(
    cell.text,
  );
  const at = hasOffset
    ? cell.text.replace(' ', 'T').replace(/T(\d{2}:\d{2})(?=[Zz+-])/, 'T$1:00')
    : clock === null
      ? null
      : localTime(ownDay ?? (day && day.text !== '' ? day.text : null), clock);
  if (at === null && columns.some((column) => column?.holds === 'time')) {
    tell('table_time', cell, { written: [day?.text ?? '', cell.text].join(' ').trim() });
  }
  return at;
}

type ObservationColumn = Extract<Column, { holds: 'observation' }>;

/** What one cell says, by the name of the observation; a pressure may say both of its numbers. */
function readCell(
  cell: Cell,
  column: ObservationColumn,
  reading: Reading,
): Readonly<Record<string, unknown>> {
  const { entry } = column;
  const nothing = nothingIn(cell.text);
  if (nothing) return { [entry.name]: nothing };
  if (entry.kind !== 'number') return { [entry.name]: readChoice(cell, entry, reading.tell) };
  const pair = /^(\d+(?:[.,]\d+)?)\s*\/\s*(\d+(?:[.,]\d+)?)$/.exec(cell.text);
  const diastolic = reading.protocol.vocabulary.get('diastolic');
  const isFree = !reading.columns.some(
    (each) => each?.holds === 'observation' && each.entry.name === 'diastolic',
  );
  if (pair && entry.name === 'systolic' && diastolic && isFree) {
    const [systolic, other] = [pair[1] ?? '', pair[2] ?? ''];
    return {
      systolic: readNumber({ ...cell, text: systolic }, column, reading),
      diastolic: readNumber({ ...cell, text: other }, { ...column, entry: diastolic }, reading),
    };
  }
  return { [entry.name]: readNumber(cell, column, reading) };
}

/** `not obtained: cold fingers`, `declined`. */
function nothingIn(text: string): object | null {
  const [, word = '', reason] = /^([^:]*?)(?:\s*:\s*(.+))?$/.exec(text) ?? [];
  const why = reason ?? true;
  const letters = lettersOf(word);
  if (['notobtained', 'unobtainable', 'couldnotbeobtained', 'notobtainable'].includes(letters))
    return { unobtainable: why };
  return ['declined', 'patientdeclined'].includes(letters) ? { declined: why } : null;
}

function readNumber(cell: Cell, { entry, unit }: ObservationColumn, { comma, tell }: Reading): unknown {
  const [, digits, word] = /^(-?\d+(?:[.,]\d+)?)\s*(\S+)?$/.exec(cell.text) ?? [];
  const own = word === undefined ? (unit ?? entry.unit) : unitCalled(word, entry);
  if (digits === undefined || !own || digits.length > 15 || (digits.includes(',') && !comma)) {
    tell('table_number', cell, {
      written: cell.text,
      title: entry.title,
      unit: (unit ?? entry.unit)?.word ?? null,
    });
    return null;
  }
  return { value: Number(digits.replace(',', '.')), unit: own.ucum };
}

function readChoice(cell: Cell, entry: ObservationEntry, tell: TellAt): unknown {
  const wanted = entry.kind === 'several' ? cell.text.split('+').map((each) => each.trim()) : [cell.text];
  if (entry.kind === 'several' && lettersOf(cell.text) === 'none') return [];
  const found = wanted.map((each) => choiceCalled(each, entry));
  if (found.includes(null)) {
    const choices = entry.choices.map(({ title }) => title);
    tell('table_choice', cell, { written: cell.text, title: entry.title, choices });
    return null;
  }
  return entry.kind === 'several' ? found : found[0];
}

function choiceCalled(text: string, { choices, kind }: ObservationEntry): string | null {
  const letters = lettersOf(text);
  const yesNo = new Map([
    ['y', 'yes'],
    ['true', 'yes'],
    ['n', 'no'],
    ['false', 'no'],
  ]);
  const wanted = kind === 'yes_no' ? (yesNo.get(letters) ?? letters) : letters;
  return choices.find(({ choice, title }) => [choice, title].map(lettersOf).includes(wanted))?.choice ?? null;
}
