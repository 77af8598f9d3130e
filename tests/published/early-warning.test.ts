import { expect, test } from 'vitest';
import { askable } from '../bundled.ts';
import { responseFigures, totalRange } from './early-warning-responses.ts';
import { adult, ask } from './kit.ts';
import { fewPatients, type Patient } from './patients.ts';

const protocol = askable('early_warning_score');

test('with nothing taken the total can be all that the table allows, and nothing is settled', () => {
  const { measures, level } = ask(protocol, adult({}));
  expect(measures['score_total']).toMatchObject({ low: totalRange.low, high: totalRange.high });
  expect(level).toMatchObject({ at_least: null, could_be: 'emergency_call', settled: false });
});

/** The published row that answers a patient: the one with the highest totals that fits. */
const rowFor = ({ total, threeInOne }: Patient): (typeof responseFigures)[number] => {
  const fitting = responseFigures.filter(
    (row) => total >= row.total[0] && total <= row.total[1] && (row.threeInOne ?? threeInOne) === threeInOne,
  );
  const [row] = fitting;
  if (!row || fitting.length > 1) {
    throw new Error(`${fitting.length} published rows answer a total of ${total}.`);
  }
  return row;
};

const patients = fewPatients();

/** Hundreds of sets are read in one test; a busy machine may need longer than is usual. In milliseconds. */
const patience = 60_000;

test.each(responseFigures)(
  '$id calls for $level',
  (row) => {
    const meant = patients.filter((patient) => rowFor(patient) === row);
    expect(meant.length).toBeGreaterThan(0);
    const read = meant.map(({ set }) => ask(protocol, set));
    const said = read.map(({ measures, level }) => ({ total: measures['score_total']?.value, level }));
    expect(said).toEqual(
      meant.map(({ total }) => ({
        total,
        level: expect.objectContaining({
          at_least: row.level,
          could_be: row.level,
          settled: true,
        }) as unknown,
      })),
    );
  },
  patience,
);

test('the patients stand on both sides of every published total', () => {
  const totals = new Set(patients.map(({ total }) => total));
  const ends = responseFigures.flatMap(({ total }) => total);
  expect(ends.filter((end) => !totals.has(end))).toEqual([]);
  // Three or four points come with and without three in one parameter.
  const threes = patients.filter(({ total }) => total === 3 || total === 4);
  expect(new Set(threes.map(({ threeInOne, total }) => `${total} ${threeInOne}`)).size).toBe(4);
});
