import { expect, test } from 'vitest';
import { checkRow, type Row } from './row.ts';
import { ageRows } from './rows-ages.ts';
import { heldRows } from './rows-held.ts';
import { lookBackRows } from './rows-look-backs.ts';
import { memberRows } from './rows-members.ts';
import { rangeRows } from './rows-ranges.ts';
import { standInRows } from './rows-stand-ins.ts';
import { limitRows, standingRows } from './rows-standing.ts';
import { timeRows } from './rows-time.ts';
import { whereRows } from './rows-where.ts';

const rows: readonly Row[] = [
  ...timeRows,
  ...standInRows,
  ...rangeRows,
  ...ageRows,
  ...standingRows,
  ...limitRows,
  ...lookBackRows,
  ...memberRows,
  ...whereRows,
  ...heldRows,
];

test('the table has at least 60 rows, each with a name of its own', () => {
  expect(new Set(rows.map(({ name }) => name)).size).toBe(rows.length);
  expect(rows.length).toBeGreaterThanOrEqual(60);
});

test.each(rows)('$name', (row) => {
  expect.hasAssertions();
  checkRow(row);
});
