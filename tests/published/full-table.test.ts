import { expect, test } from 'vitest';
import { numberRows, pointsInTable, wordRows } from './full-table.ts';
import { askable } from '../bundled.ts';
import { adult, ask } from './kit.ts';
import { possibleValues } from './possible.ts';

const protocol = askable('early_warning_score');

/** All else is given and ordinary, so that nothing but the one value can matter. */
const ordinary = {
  respiratory_rate: 16,
  oxygen_saturation: 97,
  on_oxygen: false,
  systolic: 124,
  heart_rate: 72,
  consciousness: 'alert',
  temperature: 36.8,
};

/** Hundreds of sets are read in one test; a busy machine may need longer than is usual. In milliseconds. */
const patience = 60_000;

for (const row of numberRows) {
  const along = Object.entries(row.along).map(([name, value]) => ` with ${name} ${String(value)}`);

  test(
    `every possible ${row.parameter}${along.join('')} has the points of the published table`,
    () => {
      const values = possibleValues(row.parameter);
      const published = values.map((value) => pointsInTable(row, value));
      const read = values.map((value) => {
        const set = adult({ ...ordinary, ...row.along, [row.parameter]: value });
        return ask(protocol, set).measures[row.measure]?.value;
      });
      const different = values.flatMap((value, index) =>
        read[index] === published[index]
          ? []
          : [`${value}: ${String(read[index])}, published ${String(published[index])}`],
      );
      expect(different).toEqual([]);
      // Every column that is not empty was reached, so the range was wide enough to say something.
      const columns = new Set(row.columns.flatMap((column, index) => (column === '' ? [] : [index])));
      const points = [3, 2, 1, 0, 1, 2, 3];
      expect(new Set(published)).toEqual(new Set([...columns].map((index) => points[index])));
    },
    patience,
  );
}

for (const { parameter, measure, points } of wordRows) {
  test(`every choice of ${parameter} has the points of the published table`, () => {
    const read = points.map(([choice]) => {
      const { measures } = ask(protocol, adult({ ...ordinary, [parameter]: choice }));
      return [choice, measures[measure]?.value];
    });
    expect(read).toEqual(points);
  });
}

test('the table as typed here has no hole and no value in two columns', () => {
  const wrong = numberRows.flatMap((row) =>
    possibleValues(row.parameter).flatMap((value) => {
      try {
        pointsInTable(row, value);
        return [];
      } catch (fault) {
        return [String(fault)];
      }
    }),
  );
  expect(wrong).toEqual([]);
});
