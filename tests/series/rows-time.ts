import { compare, held, is, lookBack, ms } from './protocol-builder.ts';
import type { Row } from './row.ts';
import { at } from './ward.ts';

/** The evaluation time, offsets, order, sets at one instant, values that grow too old. */
export const timeRows: readonly Row[] = [
  {
    name: 'a single set without a time: its values count, and what it lacks is missing',
    series: { systolic: 104, diastolic: 48 },
    narrow: {
      'systolic:low': 104,
      'systolic:high': 104,
      'systolic:known': 1,
      'heart_rate:low': 0,
      'heart_rate:high': 300,
      'heart_rate:known': 0,
      'heart_rate:unobtainable': 0,
      'oxygen_saturation:missing': 1,
    },
    present: { systolic: { state: 'given', at: null }, heart_rate: { state: 'missing', range: [0, 300] } },
  },
  {
    name: 'a single set without a time is a series of one: count 1, since 0, held 0',
    series: { systolic: 84 },
    measures: {
      held_low: held(compare('systolic', 'below', 90), '4 h'),
      readings: lookBack('count', 'systolic', '4 h'),
      since: lookBack('minutes_since', 'systolic', '4 h'),
      peak: lookBack('highest', 'systolic', '4 h'),
    },
    narrow: {
      'readings:low': 1,
      'readings:high': 1,
      'since:low': 0,
      'since:high': 0,
      'held_low:low': 0,
      'held_low:high': 0,
      'peak:low': 84,
      'peak:sure': 1,
    },
  },
  {
    name: 'no set at all: everything is missing',
    series: { sets: [], at: at('12:00') },
    measures: {
      readings: lookBack('count', 'systolic', '4 h'),
      since: lookBack('minutes_since', 'systolic', '4 h'),
    },
    narrow: {
      'systolic:low': 20,
      'systolic:high': 350,
      'systolic:known': 0,
      'readings:low': 0,
      'readings:high': 0,
      'since:low': 1e12,
      'since:high': 1e12,
    },
  },
  {
    name: 'one instant written at +00:00 and at +05:45 is one set',
    series: {
      sets: [
        { at: '2026-03-02T12:05:00+00:00', systolic: 104 },
        { at: '2026-03-02T17:50:00+05:45', diastolic: 48 },
      ],
    },
    measures: { readings: lookBack('count', 'systolic', '4 h') },
    narrow: {
      'systolic:low': 104,
      'diastolic:low': 48,
      'diastolic:high': 48,
      'readings:low': 1,
      'readings:high': 1,
    },
    present: { systolic: { state: 'given' }, diastolic: { state: 'given', at: Date.UTC(2026, 2, 2, 12, 5) } },
  },
  {
    name: 'the night the clocks go back: 01:30 comes twice, an hour apart',
    series: {
      sets: [
        { at: '2026-10-25T01:30:00+01:00', systolic: 120, diastolic: 70 },
        { at: '2026-10-25T01:30:00+00:00', systolic: 100, diastolic: 60 },
      ],
    },
    measures: {
      change: lookBack('change', 'systolic', '2 h'),
      in_the_hour: lookBack('count', 'systolic', '1 h'),
      held_low: held(is('consciousness', 'alert', 'voice', 'pain'), '4 h'),
    },
    narrow: {
      'change:low': -20,
      'change:high': -20,
      'in_the_hour:low': 1,
      'in_the_hour:high': 1,
      'held_low:low': ms('1 h'),
      'held_low:high': ms('1 h'),
    },
    wide: {},
  },
  {
    name: 'the night the clocks go forward: from 00:30 to 02:30 is one hour',
    series: {
      sets: [
        { at: '2026-03-29T00:30:00+00:00', infection_suspected: 'yes' },
        { at: '2026-03-29T02:30:00+01:00', infection_suspected: 'no' },
      ],
    },
    measures: { since: lookBack('minutes_since', 'infection_suspected', '4 h') },
    narrow: { 'since:low': ms('1 h'), 'since:high': ms('1 h') },
  },
  {
    name: 'an earlier value stands in exactly at its good_for, known in both, counted as missing in wide',
    series: {
      sets: [
        { at: at('08:00'), systolic: 118, diastolic: 66 },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: { 'systolic:low': 118, 'systolic:high': 118, 'systolic:known': 1, 'diastolic:low': 66 },
    wide: { 'systolic:low': 20, 'systolic:high': 350, 'diastolic:low': 10 },
    present: {
      systolic: { state: 'earlier', range: [118, 118], atText: at('08:00'), at: Date.UTC(2026, 2, 2, 8) },
      heart_rate: { state: 'given', atText: null },
    },
  },
  {
    name: 'one millisecond later it is missing',
    series: {
      at: at('12:00:00.001'),
      sets: [
        { at: at('08:00'), systolic: 118, diastolic: 66 },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: {
      'systolic:low': 20,
      'systolic:high': 350,
      'systolic:known': 0,
      'diastolic:known': 0,
      'heart_rate:low': 90,
    },
    present: { systolic: { state: 'missing' }, heart_rate: { state: 'given' } },
  },
  {
    name: 'asked later than the last set: its values count while they are good, and are no earlier values',
    series: { at: at('16:00'), sets: [{ at: at('12:00'), systolic: 104, diastolic: 48, temperature: 38.5 }] },
    narrow: { 'systolic:low': 104, 'systolic:known': 1, 'temperature:low': 250, 'temperature:high': 450 },
    present: { systolic: { state: 'given' }, temperature: { state: 'missing' } },
  },
  {
    name: 'a value of the present set that is too old is missing, and no older one stands in',
    series: {
      at: at('16:00:00.001'),
      sets: [
        { at: at('11:00'), heart_rate: 70 },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: { 'heart_rate:low': 0, 'heart_rate:high': 300, 'heart_rate:known': 0 },
    present: { heart_rate: { state: 'missing' } },
  },
  {
    name: 'without good_for a value counts at its own time, to the millisecond',
    series: { at: at('12:00:00.001'), sets: [{ at: at('12:00'), temperature: 36.5, heart_rate: 80 }] },
    narrow: { 'temperature:low': 250, 'temperature:known': 0, 'heart_rate:low': 80 },
  },
  {
    name: 'without good_for an earlier value never stands in',
    series: {
      sets: [
        { at: at('11:59'), temperature: 36.5 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'temperature:low': 250, 'temperature:high': 450, 'temperature:known': 0 },
  },
  {
    name: 'a middle set that lacks the observation does not hide the one before',
    series: {
      sets: [
        { at: at('08:00'), consciousness: 'voice' },
        { at: at('10:00'), heart_rate: 85 },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: {
      'consciousness:may:alert': 0,
      'consciousness:may:voice': 1,
      'consciousness:may:pain': 0,
      'consciousness:known': 1,
      'heart_rate:low': 90,
    },
    wide: { 'consciousness:may:alert': 1, 'consciousness:may:pain': 1 },
    present: { consciousness: { state: 'earlier', choices: ['voice'], atText: at('08:00') } },
  },
  {
    name: 'sets that were entered out of order are read in the order of their times',
    series: {
      sets: [
        { at: at('12:00'), heart_rate: 95 },
        { at: at('08:00'), heart_rate: 70 },
        { at: at('10:00'), heart_rate: 80 },
      ],
    },
    measures: {
      first: lookBack('earliest', 'heart_rate', '6 h'),
      last: lookBack('latest', 'heart_rate', '6 h'),
      change: lookBack('change', 'heart_rate', '3 h'),
    },
    narrow: { 'heart_rate:low': 95, 'first:low': 70, 'last:low': 95, 'change:low': 15, 'change:high': 15 },
  },
  {
    name: 'two different values at one instant: both are refused',
    series: {
      sets: [
        { at: at('12:00'), heart_rate: 104, systolic: 120, diastolic: 80 },
        { at: at('12:00'), heart_rate: 106 },
      ],
    },
    narrow: { 'heart_rate:low': 0, 'heart_rate:high': 300, 'heart_rate:known': 0, 'systolic:low': 120 },
    present: { heart_rate: { state: 'refused' } },
    refused: [
      ['heart_rate', '104'],
      ['heart_rate', '106'],
    ],
    because: '104 | 106',
  },
  {
    name: 'the same value at one instant in two units is one value, and none was moved',
    series: {
      sets: [
        { at: at('12:00'), temperature: { value: 98.6, unit: '[degF]' } },
        { at: at('12:00'), temperature: 37 },
      ],
    },
    narrow: { 'temperature:low': 370, 'temperature:high': 370, 'temperature:known': 1 },
  },
  {
    name: 'the same several at one instant in another order is the same',
    series: {
      sets: [
        { at: at('12:00'), technique_faults: ['talking', 'arm_hanging'] },
        { at: at('12:00'), technique_faults: ['arm_hanging', 'talking'] },
      ],
    },
    narrow: {
      'technique_faults:sure:talking': 1,
      'technique_faults:sure:arm_hanging': 1,
      'technique_faults:may:cuff_too_small': 0,
    },
  },
  {
    name: 'a value and an unobtainable at one instant: the value is refused, that it could not be obtained is not lost',
    series: {
      sets: [
        { at: at('12:00'), oxygen_saturation: 97 },
        { at: at('12:00'), oxygen_saturation: { unobtainable: 'cold fingers' } },
      ],
    },
    narrow: {
      'oxygen_saturation:low': 0,
      'oxygen_saturation:high': 100,
      'oxygen_saturation:known': 0,
      'oxygen_saturation:unobtainable': 1,
      'oxygen_saturation:missing': 1,
    },
    refused: [
      ['oxygen_saturation', '97'],
      ['oxygen_saturation', 'unobtainable: cold fingers'],
    ],
  },
  {
    name: 'two reasons at one instant why it could not be obtained are both kept',
    series: {
      sets: [
        { at: at('12:00'), oxygen_saturation: { unobtainable: 'nail varnish' } },
        { at: at('12:00'), oxygen_saturation: { unobtainable: 'cold fingers' } },
      ],
    },
    narrow: {
      'oxygen_saturation:unobtainable': 1,
      'oxygen_saturation:known': 0,
      'oxygen_saturation:missing': 1,
    },
    present: { oxygen_saturation: { state: 'unobtainable', note: 'cold fingers; nail varnish' } },
  },
  {
    name: 'a set after the evaluation time is refused, value by value',
    series: {
      at: at('11:00'),
      sets: [
        { at: at('10:00'), heart_rate: 80 },
        { at: at('11:00:00.001'), heart_rate: 140, weight: 80 },
      ],
    },
    narrow: { 'heart_rate:low': 80, 'heart_rate:high': 80 },
    refused: [
      ['heart_rate', '140'],
      ['weight', '80'],
    ],
    because: `${at('11:00:00.001')}, after ${at('11:00')}`,
  },
  {
    name: 'a set exactly at the evaluation time is the present one',
    series: {
      at: at('11:00'),
      sets: [
        { at: at('10:00'), heart_rate: 80 },
        { at: '2026-03-02T12:00:00+01:00', heart_rate: 140 },
      ],
    },
    narrow: { 'heart_rate:low': 140 },
  },
];
