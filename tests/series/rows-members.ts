import { compare, held, is, lookBack, ms } from './protocol-builder.ts';
import type { Row } from './row.ts';
import { at } from './ward.ts';

const never = 1e12;
const onLeftArm = { where: is('limb', 'left_arm') };

/** The present set as a member of a look back when it lacks the observation; look backs over yes or no. */
export const memberRows: readonly Row[] = [
  {
    name: 'a need that the present set lacks: narrow with the earlier value, wide with the whole range',
    measures: {
      peak: lookBack('highest', 'heart_rate', '4 h'),
      trough: lookBack('lowest', 'heart_rate', '4 h'),
      last: lookBack('latest', 'heart_rate', '4 h'),
      readings: lookBack('count', 'heart_rate', '4 h'),
      since: lookBack('minutes_since', 'heart_rate', '4 h'),
    },
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 100 },
        { at: at('11:00'), heart_rate: 90 },
        { at: at('12:00'), temperature: 36.5 },
      ],
    },
    narrow: {
      'peak:low': 100,
      'peak:high': 100,
      'trough:low': 90,
      'trough:high': 90,
      'last:low': 90,
      'last:high': 90,
      'last:sure': 1,
      'readings:low': 3,
      'since:low': 0,
      'since:high': 0,
    },
    wide: { 'peak:high': 300, 'trough:low': 0, 'last:low': 0, 'last:high': 300 },
  },
  {
    name: 'a need that the present set lacks and for which nothing stands in: a sure member with the whole range',
    measures: {
      peak: lookBack('highest', 'temperature', '4 h'),
      change: lookBack('change', 'temperature', '4 h'),
    },
    series: {
      sets: [
        { at: at('11:00'), temperature: 38.5 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: {
      'peak:low': 385,
      'peak:high': 450,
      'peak:sure': 1,
      'change:low': -135,
      'change:high': 65,
      'change:sure': 1,
    },
  },
  {
    name: 'a missing need of the present set is a member only where its where may hold',
    measures: { peak: lookBack('highest', 'temperature', '4 h', onLeftArm) },
    series: {
      sets: [
        { at: at('11:00'), temperature: 38.5, limb: 'left_arm' },
        { at: at('12:00'), limb: 'leg' },
      ],
    },
    narrow: { 'peak:low': 385, 'peak:high': 385 },
  },
  {
    name: 'a help that the present set lacks is no member',
    measures: {
      trough: lookBack('lowest', 'oxygen_saturation', '4 h'),
      none: lookBack('lowest', 'oxygen_saturation', '5 min'),
    },
    series: {
      sets: [
        { at: at('11:30'), oxygen_saturation: 91 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: {
      'trough:low': 91,
      'trough:high': 91,
      'trough:sure': 1,
      'none:low': 0,
      'none:high': 100,
      'none:maybe': 0,
    },
    wide: { 'oxygen_saturation:missing': 1 },
  },
  {
    name: 'when the question comes after the window, even the present set is outside, and no need is added',
    measures: {
      peak: lookBack('highest', 'heart_rate', '4 h'),
      held: held(compare('heart_rate', 'above', 50), '4 h'),
    },
    series: { at: at('16:00'), sets: [{ at: at('12:00'), heart_rate: 80 }] },
    narrow: {
      'peak:sure': 0,
      'peak:maybe': 0,
      'peak:high': 300,
      'held:low': 0,
      'held:high': 0,
      'heart_rate:low': 80,
    },
  },
  {
    name: 'of yes or no only the sets that say yes count',
    measures: {
      doses: lookBack('count', 'vasodilator', '6 h'),
      since: lookBack('minutes_since', 'vasodilator', '6 h'),
    },
    series: {
      sets: [
        { at: at('08:00'), vasodilator: 'yes' },
        { at: at('09:00'), vasodilator: true },
        { at: at('10:00'), vasodilator: 'no' },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'doses:low': 2, 'doses:high': 2, 'since:low': ms('3 h'), 'since:high': ms('3 h') },
    wide: {},
  },
  {
    name: 'what never happened in the window is never',
    measures: { since: lookBack('minutes_since', 'vasodilator', '6 h') },
    series: {
      sets: [
        { at: at('06:00'), vasodilator: 'yes' },
        { at: at('12:00'), vasodilator: 'no' },
      ],
    },
    narrow: { 'since:low': never, 'since:high': never, 'since:sure': 1, 'since:maybe': 1 },
  },
  {
    name: 'a need of yes or no that is missing now may be a yes: one more, at most',
    measures: {
      times: lookBack('count', 'infection_suspected', '4 h'),
      since: lookBack('minutes_since', 'infection_suspected', '4 h'),
    },
    series: {
      sets: [
        { at: at('09:00'), infection_suspected: 'yes' },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'times:low': 2, 'times:high': 2, 'since:low': 0, 'since:high': 0 },
    wide: { 'times:low': 1, 'since:high': ms('3 h') },
  },
  {
    name: 'an earlier no stands in as no: narrow does not count it, wide may',
    measures: { times: lookBack('count', 'infection_suspected', '4 h') },
    series: {
      sets: [
        { at: at('09:00'), infection_suspected: 'no' },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'times:low': 0, 'times:high': 0 },
    wide: { 'times:high': 1 },
  },
];
