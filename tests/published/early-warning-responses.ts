const report =
  'Royal College of Physicians. National Early Warning Score (NEWS) 2: Standardising the assessment of acute-illness severity in the NHS. Updated report of a working party. London: RCP, 2017';

/** The lowest and the highest total that the published table allows. */
export const totalRange = { id: 'news2-range', low: 0, high: 20, tolerance: 0, source: `${report}. Chart 1` };

const charts2And4 = `${report}. Charts 2 and 4`;

/** One row of the published response: which totals it is for, and the level that this ladder answers with. */
interface ResponseFigure {
  readonly id: string;
  /** The totals, both included. */
  readonly total: readonly [number, number];
  /** Whether one parameter has three points: yes, no, or null where the published row does not ask. */
  readonly threeInOne: boolean | null;
  /** As published, shortened. */
  readonly frequency: string;
  /** As published, shortened. */
  readonly response: string;
  /** The level of the ladder; the ladder is this project's own, not published. */
  readonly level: string;
  readonly source: string;
}

export const responseFigures: readonly ResponseFigure[] = [
  {
    id: 'news2-response-0',
    total: [0, 0],
    threeInOne: false,
    frequency: 'at least 12-hourly',
    response: 'continue routine monitoring',
    level: 'usual_round',
    source: charts2And4,
  },
  {
    id: 'news2-response-1-4',
    total: [1, 4],
    threeInOne: false,
    frequency: 'at least 4 to 6-hourly',
    response: 'a registered nurse assesses and decides',
    level: 'look_again',
    source: charts2And4,
  },
  {
    id: 'news2-response-3-in-a-single-parameter',
    total: [3, 4],
    threeInOne: true,
    frequency: 'at least hourly',
    response: 'the medical team is told, reviews and decides',
    level: 'call_doctor',
    source: charts2And4,
  },
  {
    id: 'news2-response-5-6',
    total: [5, 6],
    threeInOne: null,
    frequency: 'at least hourly',
    response: 'urgent: the medical team at once, assessment by people skilled in acute illness',
    level: 'call_doctor',
    source: charts2And4,
  },
  {
    id: 'news2-response->=7',
    total: [7, 20],
    threeInOne: null,
    frequency: 'continuous',
    response: 'emergency: at least specialist registrar, team with critical care skills',
    level: 'emergency_call',
    source: charts2And4,
  },
];
