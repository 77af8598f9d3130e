/**
 * The published table of the early warning score, typed off row by row.
 *
 * Source: Royal College of Physicians. National Early Warning Score (NEWS) 2: Standardising the assessment of acute-illness
 * severity in the NHS. Updated report of a working party. London: RCP, 2017. Chart 1. Nothing here is taken from the
 * protocol that is held against it.
 */
export interface TableRow {
  readonly parameter: string;
  /** The measure of the protocol that gives the points of this row. */
  readonly measure: string;
  /** What else has to be given for this row to be the one that counts. */
  readonly along: Readonly<Record<string, string | boolean>>;
  /** The seven columns: points 3, 2, 1, 0, 1, 2, 3. An empty one has no values. */
  readonly columns: readonly [string, string, string, string, string, string, string];
}

/** The rows of numbers. Scale 2 is one row in print and two here, for air and for oxygen. */
export const numberRows: readonly TableRow[] = [
  {
    parameter: 'respiratory_rate',
    measure: 'breathing_points',
    along: {},
    columns: ['≤8', '', '9–11', '12–20', '', '21–24', '≥25'],
  },
  {
    parameter: 'oxygen_saturation',
    measure: 'saturation_points',
    along: { oxygen_scale: 'scale_1', on_oxygen: false },
    columns: ['≤91', '92–93', '94–95', '≥96', '', '', ''],
  },
  {
    parameter: 'oxygen_saturation',
    measure: 'saturation_points',
    along: { oxygen_scale: 'scale_1', on_oxygen: true },
    columns: ['≤91', '92–93', '94–95', '≥96', '', '', ''],
  },
  {
    parameter: 'oxygen_saturation',
    measure: 'saturation_points',
    along: { oxygen_scale: 'scale_2', on_oxygen: false },
    columns: ['≤83', '84–85', '86–87', '88–92 ≥93', '', '', ''],
  },
  {
    parameter: 'oxygen_saturation',
    measure: 'saturation_points',
    along: { oxygen_scale: 'scale_2', on_oxygen: true },
    columns: ['≤83', '84–85', '86–87', '88–92', '93–94', '95–96', '≥97'],
  },
  {
    parameter: 'systolic',
    measure: 'pressure_points',
    along: {},
    columns: ['≤90', '91–100', '101–110', '111–219', '', '', '≥220'],
  },
  {
    parameter: 'heart_rate',
    measure: 'rate_points',
    along: {},
    columns: ['≤40', '', '41–50', '51–90', '91–110', '111–130', '≥131'],
  },
  {
    parameter: 'temperature',
    measure: 'temperature_points',
    along: {},
    columns: ['≤35.0', '', '35.1–36.0', '36.1–38.0', '38.1–39.0', '≥39.1', ''],
  },
];

/** The rows of words: air or oxygen, and consciousness. Chart 1 prints new confusion, voice, pain and unresponsive as one. */
export const wordRows: readonly {
  readonly parameter: string;
  readonly measure: string;
  readonly points: readonly (readonly [string | boolean, number])[];
}[] = [
  {
    parameter: 'on_oxygen',
    measure: 'oxygen_points',
    points: [
      [true, 2],
      [false, 0],
    ],
  },
  {
    parameter: 'consciousness',
    measure: 'consciousness_points',
    points: [
      ['alert', 0],
      ['new_confusion', 3],
      ['voice', 3],
      ['pain', 3],
      ['unresponsive', 3],
    ],
  },
];

const pointsOfColumn = [3, 2, 1, 0, 1, 2, 3] as const;

/** Whether a printed band holds a value: `≤8`, `≥25`, or `9–11` with both ends. */
function holds(band: string, value: number): boolean {
  if (band.startsWith('≤')) return value <= Number(band.slice(1));
  if (band.startsWith('≥')) return value >= Number(band.slice(1));
  const [from, to] = band.split('–').map(Number);
  if (from === undefined || to === undefined) throw new Error(`"${band}" is no band.`);
  return value >= from && value <= to;
}

/** The points that a row gives to a value. Throws where the table, as typed here, has a hole or says two things. */
export function pointsInTable(row: TableRow, value: number): number {
  const columns = row.columns.map((column) =>
    column.split(' ').some((band) => band !== '' && holds(band, value)),
  );
  const found = pointsOfColumn.filter((_, index) => columns[index]);
  const [points] = found;
  if (points === undefined || found.length > 1) {
    throw new Error(`${row.parameter} ${value} stands in ${found.length} columns.`);
  }
  return points;
}
