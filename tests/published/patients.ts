import { numberRows, pointsInTable, wordRows, type TableRow } from './full-table.ts';
import { adult } from './kit.ts';

/** An invented patient with a whole set, and what the published table says of it. */
export interface Patient {
  readonly set: object;
  readonly total: number;
  readonly threeInOne: boolean;
}

/** One value of one parameter, with its published points. */
interface Sign {
  readonly given: Readonly<Record<string, string | number | boolean>>;
  readonly points: number;
}

/** A value inside each band of a row, from the printed ends. */
function signsOfRow(row: TableRow): Sign[] {
  const printed = row.columns.flatMap((column) => column.split(' ')).filter((band) => band !== '');
  return printed.map((band) => {
    const value = Number(band.split('–')[0]?.replace(/[≤≥]/, ''));
    return { given: { [row.parameter]: value }, points: pointsInTable(row, value) };
  });
}

function signsOfWords(parameter: string): Sign[] {
  const row = wordRows.find((each) => each.parameter === parameter);
  return (row?.points ?? []).map(([choice, points]) => ({ given: { [parameter]: choice }, points }));
}

/** The signs of each parameter, on scale 1; the first of each is an ordinary one, without points. */
function signs(): Sign[][] {
  const rows = numberRows.filter(
    ({ along }) => along['oxygen_scale'] !== 'scale_2' && along['on_oxygen'] !== true,
  );
  const all = [...rows.map(signsOfRow), signsOfWords('on_oxygen'), signsOfWords('consciousness')];
  return all.map((each) => each.toSorted((left, right) => left.points - right.points));
}

const patient = (chosen: readonly Sign[]): Patient => ({
  set: adult(Object.assign({}, ...chosen.map(({ given }) => given)) as object),
  total: chosen.reduce((sum, { points }) => sum + points, 0),
  threeInOne: chosen.some(({ points }) => points === 3),
});

/** Every patient with two signs of two parameters, and the rest as given. */
function pairsOn(rest: readonly Sign[], all: readonly (readonly Sign[])[]): Patient[] {
  const pairs: Patient[] = [];
  for (const [at, left] of all.entries()) {
    for (const [to, right] of all.entries()) {
      if (to <= at) continue;
      for (const one of left) {
        for (const two of right) pairs.push(patient(rest.with(at, one).with(to, two)));
      }
    }
  }
  return pairs;
}

/**
 * Patients with every two signs of two parameters, once with all else ordinary and once with all else a point off; and
 * patients who get worse, one parameter after another, up to the highest total.
 */
export function fewPatients(): Patient[] {
  const all = signs();
  const ordinary = all.flatMap(([first]) => first ?? []);
  const pointOff = all.flatMap((each) => each.find(({ points }) => points === 1) ?? each[0] ?? []);
  const worst = all.flatMap((each) => each.at(-1) ?? []);
  const worse = worst.map((_, count) =>
    patient([...worst.slice(0, count + 1), ...ordinary.slice(count + 1)]),
  );
  return [...pairsOn(ordinary, all), ...pairsOn(pointOff, all), ...worse];
}
