import { age, lookBack, number } from './protocol-builder.ts';
import type { Row } from './row.ts';
import { at } from './ward.ts';

const day = 16;
const year = 5844;

/** A rate whose possible and plausible ranges change with age. */
const rateByAge = number(
  'heart_rate',
  '/min',
  [
    [28 * day, 60, 250],
    [year, 50, 240],
    [null, 20, 220],
  ],
  {
    goodFor: '4 h',
    plausible: [
      [28 * day, 80, 220],
      [null, 30, 200],
    ],
  },
);
const standingAge = [rateByAge, age({ role: 'scope', standing: true })];

/** Ranges that change with age. */
export const ageRows: readonly Row[] = [
  {
    name: 'age bands: an adult has the last band',
    reads: standingAge,
    series: { age: 58 },
    narrow: { 'age:low': 58 * year, 'heart_rate:low': 20, 'heart_rate:high': 220 },
  },
  {
    name: 'age bands: a band ends below its age, the next begins there',
    reads: standingAge,
    series: { age: { value: 28, unit: 'd' } },
    narrow: { 'age:low': 28 * day, 'heart_rate:low': 50, 'heart_rate:high': 240 },
    taken: [['age', '28 d', '0.07666 a']],
  },
  {
    name: 'age bands: one step younger is still the first band',
    reads: standingAge,
    series: { age: { value: 27.9375, unit: 'd' } },
    narrow: { 'age:low': 28 * day - 1, 'heart_rate:low': 60, 'heart_rate:high': 250 },
    taken: [['age', '27.9375 d', '0.076489 a']],
  },
  {
    name: 'age bands: of an age that is a range, the hull of the bands that it touches',
    reads: standingAge,
    series: { age: { low: 20, high: 40, unit: 'd' } },
    narrow: { 'heart_rate:low': 50, 'heart_rate:high': 250 },
    taken: [['age', '20 to 40 d', '0.054757 to 0.109514 a']],
  },
  {
    name: 'age bands: of an unknown age, the hull of all',
    reads: standingAge,
    series: {},
    narrow: { 'age:low': 0, 'age:high': 130 * year, 'heart_rate:low': 20, 'heart_rate:high': 250 },
  },
  {
    name: 'age bands: 230 /min is refused for an adult',
    reads: standingAge,
    series: { age: 58, heart_rate: 230 },
    narrow: { 'heart_rate:low': 20, 'heart_rate:high': 220, 'heart_rate:known': 0 },
    refused: [['heart_rate', '230']],
    because: 'heart rate 230 /min is higher than 220, the highest that is possible at this age',
  },
  {
    name: 'age bands: 230 /min is used while the age is unknown, and questioned',
    reads: standingAge,
    series: { heart_rate: 230 },
    narrow: { 'heart_rate:low': 230, 'heart_rate:known': 1 },
    questioned: [['heart_rate', '230']],
    because: 'heart rate 230 /min is higher than 220, the highest that is plausible at any age; it is used',
  },
  {
    name: 'age bands: an age that the protocol does not read still chooses the band',
    reads: [rateByAge],
    series: { age: 58, heart_rate: 25 },
    narrow: { 'heart_rate:low': 25 },
    questioned: [['heart_rate', '25']],
    because: 'lower than 30, the lowest that is plausible at this age',
  },
  {
    name: 'age bands: an age that stands in chooses the band in narrow; wide has the hull',
    reads: [rateByAge, age({ role: 'needs', goodFor: '24 h' })],
    series: {
      sets: [
        { at: at('08:00'), age: 58 },
        { at: at('12:00'), temperature: 36.5 },
      ],
    },
    narrow: { 'age:low': 58 * year, 'age:known': 1, 'heart_rate:low': 20, 'heart_rate:high': 220 },
    wide: { 'age:low': 0, 'age:high': 130 * year, 'heart_rate:high': 250 },
  },
  {
    name: 'age bands: an earlier value that turns out impossible once the age is known does not stand in, and is told',
    reads: standingAge,
    series: {
      sets: [
        { at: at('11:00'), heart_rate: 230 },
        { at: at('12:00'), age: 58 },
      ],
    },
    narrow: { 'heart_rate:low': 20, 'heart_rate:high': 220, 'heart_rate:known': 0 },
    refused: [['heart_rate', '230']],
    because: `heart rate cannot have this value at this age; the earlier value of ${at('11:00')} does not stand in`,
  },
  {
    name: 'age bands: the age that an earlier set’s own values are checked with is the one that is known at its time',
    reads: standingAge,
    measures: { peak: lookBack('highest', 'heart_rate', '4 h') },
    series: {
      sets: [
        { at: at('10:00'), age: { value: 27, unit: 'd' }, heart_rate: 230 },
        { at: at('12:00'), age: { value: 58, unit: 'a' }, heart_rate: 90 },
      ],
    },
    narrow: { 'peak:low': 230, 'peak:high': 230, 'heart_rate:low': 90 },
    questioned: [['heart_rate', '230']],
  },
  {
    name: 'age bands: a value of now is checked with an earlier age that stands in',
    reads: [rateByAge, age({ role: 'needs', goodFor: '24 h' })],
    series: {
      sets: [
        { at: at('08:00'), age: 58 },
        { at: at('12:00'), heart_rate: 230 },
      ],
    },
    narrow: { 'heart_rate:low': 20, 'heart_rate:high': 220, 'heart_rate:known': 0 },
    wide: { 'heart_rate:high': 250, 'age:low': 0 },
    refused: [['heart_rate', '230']],
  },
];
