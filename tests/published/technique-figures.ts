/** How far a fault moves a pressure, as a work prints it: systolic and diastolic in mmHg, the most where it gives a range. */
export interface TechniqueFigure {
  /** The fault as the bundled protocol names it. */
  readonly fault: string;
  readonly systolic: number;
  /** Null where the work gives none. */
  readonly diastolic: number | null;
  readonly source: string;
}

const table2015 = 'Tolonen 2015, Table 1';
const review2017 = 'Kallioinen 2017, table of effects as copied elsewhere';
const sheet = 'American Heart Association, seven tips';

/** What makes a pressure read too high. */
export const readsHigh: readonly TechniqueFigure[] = [
  { fault: 'cuff_too_small', systolic: 30, diastolic: 30, source: table2015 },
  { fault: 'cuff_too_small', systolic: 11.2, diastolic: 6.6, source: review2017 },
  { fault: 'cuff_too_small', systolic: 4.8, diastolic: 1.8, source: 'Ishigami 2023, one size too small' },
  { fault: 'cuff_too_small', systolic: 19.5, diastolic: 7.4, source: 'Ishigami 2023, two sizes too small' },
  { fault: 'cuff_over_clothing', systolic: 5, diastolic: null, source: table2015 },
  { fault: 'cuff_over_clothing', systolic: 50, diastolic: null, source: sheet },
  { fault: 'arm_below_heart', systolic: 10, diastolic: 10, source: table2015 },
  { fault: 'arm_below_heart', systolic: 23, diastolic: 12, source: review2017 },
  { fault: 'arm_not_supported', systolic: 7, diastolic: 11, source: table2015 },
  { fault: 'arm_not_supported', systolic: 4.87, diastolic: 4.81, source: review2017 },
  { fault: 'arm_not_supported', systolic: 10, diastolic: null, source: sheet },
  { fault: 'back_not_supported', systolic: 15, diastolic: 6, source: table2015 },
  { fault: 'back_not_supported', systolic: 0, diastolic: 6.5, source: review2017 },
  { fault: 'legs_crossed', systolic: 8, diastolic: 5, source: table2015 },
  { fault: 'legs_crossed', systolic: 14.89, diastolic: 10.81, source: review2017 },
  { fault: 'talking', systolic: 17, diastolic: 13, source: table2015 },
  { fault: 'talking', systolic: 10, diastolic: null, source: sheet },
  { fault: 'not_rested', systolic: 20, diastolic: 14, source: table2015 },
  { fault: 'not_rested', systolic: 11.6, diastolic: 4.3, source: review2017 },
  { fault: 'full_bladder', systolic: 15, diastolic: 10, source: table2015 },
  { fault: 'full_bladder', systolic: 33, diastolic: 18.5, source: review2017 },
  { fault: 'cold_room', systolic: 14, diastolic: 15, source: table2015 },
  { fault: 'cold_room', systolic: 32, diastolic: 23, source: review2017 },
];

/** What makes a pressure read too low. */
export const readsLow: readonly TechniqueFigure[] = [
  { fault: 'cuff_too_large', systolic: 30, diastolic: 30, source: table2015 },
  { fault: 'cuff_too_large', systolic: 3.7, diastolic: 4.7, source: review2017 },
  { fault: 'cuff_too_large', systolic: 3.6, diastolic: 1.3, source: 'Ishigami 2023, one size too large' },
  { fault: 'arm_above_heart', systolic: 15, diastolic: 15, source: "Miller's Anesthesia, 20 cm" },
];

/** The widest of all 29 sources of inaccuracy: what is taken where a fault has no size of its own. */
export const widest = { systolic: 33, diastolic: 23, source: 'Kallioinen 2017, abstract' } as const;

/** Cuffs by arm circumference in whole centimetres, both ends included. Pickering 2005. */
export const cuffTable: readonly (readonly [cuff: string, from: number, to: number])[] = [
  ['small_adult', 22, 26],
  ['adult', 27, 34],
  ['large_adult', 35, 44],
  ['thigh', 45, 52],
];

/** mmHg for each cm of height. */
export const perCentimetre: readonly (readonly [source: string, mmHg: number])[] = [
  ['blood of 1055 kg/m3 at 9.80665 m/s2', 0.776],
  ['blood of 1060 kg/m3', 0.7797],
  ['2 mmHg for each inch, American Heart Association 2005, from memory', 2 / 2.54],
];
