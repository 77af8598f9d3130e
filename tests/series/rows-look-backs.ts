import { is, lookBack, ms, number } from './protocol-builder.ts';
import type { Row } from './row.ts';
import { at } from './ward.ts';

const never = 1e12;
const onLeftArm = { where: is('limb', 'left_arm') };
const rates = (measure: 'highest' | 'lowest' | 'average' | 'earliest' | 'latest' | 'change', more = {}) =>
  lookBack(measure, 'heart_rate', '4 h', more);

/** Look backs but for `held`. */
export const lookBackRows: readonly Row[] = [
  {
    name: 'a set exactly as old as the window is no longer in it; one millisecond younger it is, and so is the present set',
    measures: {
      readings: lookBack('count', 'heart_rate', '4 h'),
      peak: rates('highest'),
      first: rates('earliest'),
    },
    series: {
      sets: [
        { at: at('08:00'), heart_rate: 150 },
        { at: at('08:00:00.001'), heart_rate: 120 },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: {
      'readings:low': 2,
      'readings:high': 2,
      'peak:low': 120,
      'peak:high': 120,
      'first:low': 120,
      'first:high': 120,
    },
  },
  {
    name: 'highest and lowest of ranges',
    measures: { peak: rates('highest'), trough: rates('lowest') },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: { low: 90, high: 110 } },
        { at: at('11:00'), heart_rate: { low: 80, high: 130 } },
        { at: at('12:00'), heart_rate: 95 },
      ],
    },
    narrow: {
      'peak:low': 95,
      'peak:high': 130,
      'peak:sure': 1,
      'peak:maybe': 1,
      'trough:low': 80,
      'trough:high': 95,
      'trough:sure': 1,
    },
  },
  {
    name: 'where holds, may hold, does not hold: a sure member, a member, none',
    measures: {
      peak: rates('highest', onLeftArm),
      trough: rates('lowest', onLeftArm),
      average: rates('average', onLeftArm),
      first: rates('earliest', onLeftArm),
      last: rates('latest', onLeftArm),
      readings: lookBack('count', 'heart_rate', '4 h', onLeftArm),
      since: lookBack('minutes_since', 'heart_rate', '4 h', onLeftArm),
    },
    series: {
      sets: [
        { at: at('09:00'), heart_rate: 100, limb: 'left_arm' },
        { at: at('10:00'), heart_rate: 120, limb: 'right_arm' },
        { at: at('11:00'), heart_rate: 70 },
        { at: at('12:00'), heart_rate: 200, limb: 'leg' },
      ],
    },
    narrow: {
      'peak:low': 100,
      'peak:high': 100,
      'trough:low': 70,
      'trough:high': 100,
      'average:low': 70,
      'average:high': 100,
      'average:count': 1,
      'average:sure': 1,
      'first:low': 70,
      'first:high': 100,
      'last:low': 70,
      'last:high': 100,
      'last:sure': 1,
      'readings:low': 1,
      'readings:high': 2,
      'since:low': ms('1 h'),
      'since:high': ms('3 h'),
    },
  },
  {
    name: 'only an unsure member: maybe a value, from its low to its high',
    measures: {
      peak: rates('highest', onLeftArm),
      trough: rates('lowest', onLeftArm),
      average: rates('average', onLeftArm),
      since: lookBack('minutes_since', 'heart_rate', '4 h', onLeftArm),
    },
    series: {
      sets: [
        { at: at('11:00'), heart_rate: { low: 70, high: 80 } },
        { at: at('12:00'), heart_rate: 60, limb: 'leg' },
      ],
    },
    narrow: {
      'peak:low': 70,
      'peak:high': 80,
      'peak:sure': 0,
      'peak:maybe': 1,
      'trough:low': 70,
      'trough:high': 80,
      'average:low': 70,
      'average:high': 80,
      'average:count': 1,
      'average:sure': 0,
      'average:maybe': 1,
      'since:low': ms('1 h'),
      'since:high': never,
    },
  },
  {
    name: 'no member: no value, the ends are everything that it could be',
    measures: {
      peak: rates('highest', onLeftArm),
      average: rates('average', onLeftArm),
      change: rates('change', onLeftArm),
    },
    series: { sets: [{ at: at('12:00'), heart_rate: 60, limb: 'leg' }] },
    narrow: {
      'peak:low': 0,
      'peak:high': 300,
      'peak:sure': 0,
      'peak:maybe': 0,
      'average:low': 0,
      'average:high': 300,
      'average:count': 1,
      'average:maybe': 0,
      'change:low': -300,
      'change:high': 300,
      'change:sure': 0,
      'change:maybe': 0,
    },
  },
  {
    name: 'an average is the sum over the count, also of ranges',
    measures: { average: rates('average') },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 81 },
        { at: at('11:00'), heart_rate: { low: 90, high: 100 } },
        { at: at('12:00'), heart_rate: 95 },
      ],
    },
    narrow: {
      'average:low': 266,
      'average:high': 276,
      'average:count': 3,
      'average:sure': 1,
      'average:maybe': 1,
    },
  },
  {
    name: 'earliest, latest and change of sure members keep their ranges',
    measures: { first: rates('earliest'), last: rates('latest'), change: rates('change') },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: { low: 90, high: 94 } },
        { at: at('11:00'), heart_rate: 150 },
        { at: at('12:00'), heart_rate: { low: 100, high: 110 } },
      ],
    },
    narrow: {
      'first:low': 90,
      'first:high': 94,
      'last:low': 100,
      'last:high': 110,
      'change:low': 6,
      'change:high': 20,
      'change:sure': 1,
      'change:maybe': 1,
    },
  },
  {
    name: 'a change needs two members',
    measures: { change: rates('change') },
    series: { sets: [{ at: at('12:00'), heart_rate: 90 }] },
    narrow: { 'change:low': -300, 'change:high': 300, 'change:sure': 0, 'change:maybe': 0 },
  },
  {
    name: 'a change of two members of which one is unsure: maybe, from lowest less highest to highest less lowest',
    measures: { change: rates('change', onLeftArm) },
    series: {
      sets: [
        { at: at('11:00'), heart_rate: { low: 90, high: 94 }, limb: 'left_arm' },
        { at: at('12:00'), heart_rate: 100 },
      ],
    },
    narrow: { 'change:low': -10, 'change:high': 10, 'change:sure': 0, 'change:maybe': 1 },
  },
  {
    name: 'a change with two sure members and an unsure one: surely a value, but of the hull',
    measures: { change: rates('change', onLeftArm) },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 60 },
        { at: at('11:00'), heart_rate: 90, limb: 'left_arm' },
        { at: at('12:00'), heart_rate: 100, limb: 'left_arm' },
      ],
    },
    narrow: { 'change:low': -40, 'change:high': 40, 'change:sure': 1, 'change:maybe': 1 },
  },
  {
    name: 'present_set: left_out leaves the present set out, also when it is the only one',
    measures: {
      before: rates('latest', { leftOut: true }),
      readings: lookBack('count', 'systolic', '4 h', { leftOut: true }),
    },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 70 },
        { at: at('11:00'), heart_rate: 80 },
        { at: at('12:00'), heart_rate: 120, systolic: 120, diastolic: 80 },
      ],
    },
    narrow: { 'before:low': 80, 'before:high': 80, 'readings:low': 0, 'readings:high': 0 },
  },
  {
    name: 'the present set is the latest one, also when the question comes later',
    measures: { before: rates('latest', { leftOut: true }), last: rates('latest') },
    series: {
      at: at('13:00'),
      sets: [
        { at: at('11:00'), heart_rate: 80 },
        { at: at('12:00'), heart_rate: 120 },
      ],
    },
    narrow: { 'before:low': 80, 'last:low': 120 },
  },
  {
    name: 'the window is counted from the evaluation time, not from the last set',
    measures: {
      readings: lookBack('count', 'heart_rate', '4 h'),
      since: lookBack('minutes_since', 'heart_rate', '4 h'),
    },
    series: {
      at: at('13:00'),
      sets: [
        { at: at('09:00'), heart_rate: 80 },
        { at: at('12:00'), heart_rate: 120 },
      ],
    },
    narrow: { 'readings:low': 1, 'readings:high': 1, 'since:low': ms('1 h'), 'since:high': ms('1 h') },
  },
  {
    name: 'a refused value is no member, and is told while it would be in the window',
    measures: { readings: lookBack('count', 'heart_rate', '4 h') },
    series: {
      sets: [
        { at: at('08:00'), heart_rate: 990 },
        { at: at('09:00'), heart_rate: 999 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'readings:low': 1, 'readings:high': 1 },
    refused: [['heart_rate', '999']],
  },
  {
    name: 'values in a window count however short they are good for',
    reads: [number('urine_output', 'mL/h', [0, 3000], { role: 'helps' })],
    measures: { average: lookBack('average', 'urine_output', '6 h') },
    series: {
      sets: [
        { at: at('07:00'), urine_output: 20 },
        { at: at('08:00'), urine_output: 31 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'average:low': 51, 'average:high': 51, 'average:count': 2, 'urine_output:known': 0 },
  },
];
