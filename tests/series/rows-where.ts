import { all, any, atLeastOf, compare, is, known, lookBack, none, unobtainable } from './protocol-builder.ts';
import type { Row } from './row.ts';
import { at } from './ward.ts';

/** What `where` asks of one set. */
export const whereRows: readonly Row[] = [
  {
    name: 'where with a number that the set gives as a range is unsure',
    measures: { peak: lookBack('highest', 'heart_rate', '4 h', { where: compare('systolic', 'below', 90) }) },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 100, systolic: 89, diastolic: 50 },
        { at: at('11:00'), heart_rate: 130, systolic: { low: 89, high: 95 } },
        { at: at('12:00'), heart_rate: 150, systolic: 90, diastolic: 50 },
      ],
    },
    narrow: { 'peak:low': 100, 'peak:high': 130, 'peak:sure': 1 },
  },
  {
    name: 'where with a number in another unit is compared exactly',
    measures: {
      below: lookBack('count', 'systolic', '4 h', { where: compare('systolic', 'below', '12 kPa') }),
      at_least: lookBack('count', 'systolic', '4 h', { where: compare('systolic', 'at_least', '12 kPa') }),
      at_most: lookBack('count', 'systolic', '4 h', { where: compare('systolic', 'at_most', '12 kPa') }),
      above: lookBack('count', 'systolic', '4 h', { where: compare('systolic', 'above', '12 kPa') }),
    },
    // 12 kPa is 90.007 mmHg.
    series: {
      sets: [
        { at: at('11:00'), systolic: 90, diastolic: 50 },
        { at: at('12:00'), systolic: 91, diastolic: 50 },
      ],
    },
    narrow: {
      'below:low': 1,
      'at_least:low': 1,
      'at_most:low': 1,
      'above:low': 1,
      'above:high': 1,
      'below:high': 1,
    },
  },
  {
    name: 'where asks for what is known and what could not be obtained in the set itself, not for what stands in',
    measures: {
      with_pressure: lookBack('count', 'heart_rate', '4 h', { where: known('systolic') }),
      without: lookBack('count', 'heart_rate', '4 h', { where: known('systolic', false) }),
      no_pulse: lookBack('count', 'heart_rate', '4 h', { where: unobtainable('systolic') }),
    },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 80, systolic: 120, diastolic: 80 },
        { at: at('11:00'), heart_rate: 82, systolic: { unobtainable: true } },
        { at: at('12:00'), heart_rate: 84 },
      ],
    },
    narrow: {
      'with_pressure:low': 1,
      'with_pressure:high': 1,
      'without:low': 2,
      'without:high': 2,
      'no_pulse:low': 1,
      'no_pulse:high': 1,
      'systolic:known': 1,
    },
    wide: {},
  },
  {
    name: 'where reads the standing facts that hold at the set’s own time',
    measures: {
      on_scale_2: lookBack('count', 'heart_rate', '6 h', { where: is('oxygen_scale', 'scale_2') }),
      stated: lookBack('count', 'heart_rate', '6 h', { where: known('oxygen_scale') }),
    },
    series: {
      patient: {
        standing: { oxygen_scale: { value: 'scale_2', by: 'Dr Ash', at: at('10:00'), until: at('12:00') } },
      },
      sets: [
        { at: at('09:00'), heart_rate: 80 },
        { at: at('10:00'), heart_rate: 80 },
        { at: at('11:00'), heart_rate: 80 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'on_scale_2:low': 2, 'on_scale_2:high': 2, 'stated:low': 2, 'oxygen_scale:may:scale_1': 1 },
  },
  {
    name: 'where with a standing fact that a set stated long before the window',
    measures: {
      on_scale_2: lookBack('count', 'heart_rate', '2 h', { where: is('oxygen_scale', 'scale_2') }),
    },
    series: {
      sets: [
        { at: at('01:00'), oxygen_scale: 'scale_1' },
        { at: at('02:00'), oxygen_scale: 'scale_2' },
        { at: at('11:00'), heart_rate: 80 },
        { at: at('11:30'), oxygen_scale: 'scale_1', heart_rate: 80 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'on_scale_2:low': 1, 'on_scale_2:high': 1 },
  },
  {
    name: 'all, any, none and at_least_of of one set, with a part that is unsure',
    measures: {
      any: lookBack('count', 'heart_rate', '1 h', {
        where: any(is('limb', 'leg'), compare('heart_rate', 'above', 90)),
      }),
      all: lookBack('count', 'heart_rate', '1 h', {
        where: all(is('limb', 'leg'), compare('heart_rate', 'above', 90)),
      }),
      none: lookBack('count', 'heart_rate', '1 h', { where: none(is('limb', 'leg')) }),
      two_of: lookBack('count', 'heart_rate', '1 h', {
        where: atLeastOf(2, is('limb', 'leg'), compare('heart_rate', 'above', 90), known('systolic')),
      }),
      faulty: lookBack('count', 'heart_rate', '1 h', {
        where: is('technique_faults', 'talking', 'arm_hanging'),
      }),
    },
    series: { sets: [{ at: at('12:00'), heart_rate: 100 }] },
    narrow: {
      'any:low': 1,
      'all:low': 0,
      'all:high': 1,
      'none:low': 0,
      'none:high': 1,
      'two_of:low': 0,
      'two_of:high': 1,
      'faulty:low': 0,
      'faulty:high': 1,
    },
  },
  {
    name: 'where asks for more than a range surely is, and its edge belongs to at_least and not to above',
    measures: {
      above: lookBack('count', 'heart_rate', '4 h', { where: compare('heart_rate', 'above', 90) }),
      at_least: lookBack('count', 'heart_rate', '4 h', { where: compare('heart_rate', 'at_least', 90) }),
      below: lookBack('count', 'heart_rate', '4 h', { where: compare('heart_rate', 'below', 90) }),
      at_most: lookBack('count', 'heart_rate', '4 h', { where: compare('heart_rate', 'at_most', 90) }),
    },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 90 },
        { at: at('11:00'), heart_rate: { low: 89, high: 91 } },
        { at: at('12:00'), heart_rate: 91 },
      ],
    },
    narrow: {
      'above:low': 1,
      'above:high': 2,
      'at_least:low': 2,
      'at_least:high': 3,
      'below:low': 0,
      'below:high': 1,
      'at_most:low': 1,
      'at_most:high': 2,
    },
  },
  {
    name: 'a statement that a window’s first sets still need is kept, also when it was changed soon after',
    measures: {
      on_scale_2: lookBack('count', 'heart_rate', '2 h', { where: is('oxygen_scale', 'scale_2') }),
    },
    series: {
      sets: [
        { at: at('02:00'), oxygen_scale: 'scale_2' },
        { at: at('10:20'), heart_rate: 80 },
        { at: at('10:40'), oxygen_scale: 'scale_1' },
        { at: at('10:50'), heart_rate: 80 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'on_scale_2:low': 1, 'on_scale_2:high': 1 },
  },
];
