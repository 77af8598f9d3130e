import { error } from '../entry.ts';

type Written = { written: string };

/** Problems of earlier sets that were typed or pasted as a table. */
export const tableWording = {
  table_empty: error(
    () => 'The table has no sets in it.',
    () => 'a first line with the names of the columns, and a line for each set',
  ),
  table_without_time: error(
    () => 'No column says when the sets were taken.',
    () => 'a column called time',
  ),
  table_unknown_column: error(
    (f: { name: string }) => `The column "${f.name}" is not an observation that is known here.`,
    () => 'the name of an observation, with its unit in brackets where it is not the usual one',
  ),
  table_column_twice: error(
    (f: { name: string; first: string }) => `The columns "${f.first}" and "${f.name}" mean the same.`,
    () => 'each observation in one column',
  ),
  table_unknown_unit: error(
    (f: { name: string; unit: string }) => `"${f.unit}" is not a unit of "${f.name}".`,
    () => 'a unit that measures the same',
  ),
  table_more_cells: error(
    (f: { cells: number; columns: number }) =>
      `This line has ${f.cells} values, and there are ${f.columns} columns.`,
    () => 'at most as many values as columns; a text with the separator in it stands in quotation marks',
  ),
  table_quote_open: error(
    () => 'A quotation mark is opened here and never closed.',
    () => 'a closing quotation mark',
  ),
  table_time: error(
    (f: Written) => `"${f.written}" is no time at which a set was taken.`,
    () => 'a time such as 14:00, 2026-03-04 14:00, or one with its offset',
  ),
  table_number: error(
    (f: Written & { title: string; unit: string | null }) => `"${f.written}" is no value for ${f.title}.`,
    (f) =>
      `a number${f.unit === null ? '' : ` in ${f.unit}, or with its unit`}; nothing, for not taken; not obtained; or declined`,
  ),
  table_choice: error(
    (f: Written & { title: string; choices: readonly string[] }) =>
      `"${f.written}" is no value for ${f.title}.`,
    (f) => `one of ${f.choices.join(', ')}; nothing, for not taken; not obtained; or declined`,
  ),
} as const;
