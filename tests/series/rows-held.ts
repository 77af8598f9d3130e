import { compare, held, is, ms } from './protocol-builder.ts';
import type { Row } from './row.ts';
import { at } from './ward.ts';

const low = compare('heart_rate', 'below', 50);
const rate = (clock: string, heart_rate: unknown): object => ({ at: at(clock), heart_rate });

/** For how long a condition has held. */
export const heldRows: readonly Row[] = [
  {
    name: 'held from the run’s first set to the present set, not to the evaluation time',
    measures: { slow: held(low, '6 h') },
    series: {
      at: at('12:30'),
      sets: [rate('08:00', 60), rate('09:00', 45), rate('11:00', 40), rate('12:00', 49)],
    },
    narrow: { 'slow:low': ms('3 h'), 'slow:high': ms('3 h'), 'slow:sure': 1, 'slow:maybe': 1 },
  },
  {
    name: 'held is 0 when the condition holds in the present set alone',
    measures: { slow: held(low, '6 h') },
    series: { sets: [rate('11:00', 60), rate('12:00', 45)] },
    narrow: { 'slow:low': 0, 'slow:high': 0 },
  },
  {
    name: 'held is 0 when the condition does not hold in the present set',
    measures: { slow: held(low, '6 h') },
    series: { sets: [rate('10:00', 40), rate('11:00', 40), rate('12:00', 50)] },
    narrow: { 'slow:low': 0, 'slow:high': 0 },
  },
  {
    name: 'only the latest run counts',
    measures: { slow: held(low, '6 h') },
    series: {
      sets: [rate('09:00', 40), rate('10:00', 40), rate('11:00', 60), rate('11:30', 40), rate('12:00', 40)],
    },
    narrow: { 'slow:low': ms('30 min'), 'slow:high': ms('30 min') },
  },
  {
    name: 'a gap exactly as long as the longest goes on',
    measures: { slow: held(low, '6 h', '30 min') },
    series: { sets: [rate('11:00', 40), rate('11:30', 40), rate('12:00', 40)] },
    narrow: { 'slow:low': ms('1 h'), 'slow:high': ms('1 h') },
  },
  {
    name: 'a gap one millisecond longer breaks the run',
    measures: { slow: held(low, '6 h', '30 min') },
    series: { sets: [rate('10:59:59.999', 40), rate('11:29:59.999', 40), rate('12:00', 40)] },
    narrow: { 'slow:low': 0, 'slow:high': 0 },
  },
  {
    name: 'a gap further back ends the run there',
    measures: { slow: held(low, '6 h', '30 min') },
    series: { sets: [rate('10:00', 40), rate('11:00', 40), rate('11:30', 40), rate('12:00', 40)] },
    narrow: { 'slow:low': ms('1 h'), 'slow:high': ms('1 h') },
  },
  {
    name: 'a missing value breaks what is certain; what is possible goes on',
    measures: { slow: held(low, '6 h') },
    series: {
      sets: [rate('09:00', 40), rate('10:00', 40), { at: at('11:00'), temperature: 36.5 }, rate('12:00', 40)],
    },
    narrow: { 'slow:low': 0, 'slow:high': ms('3 h') },
  },
  {
    name: 'a refused value is missing too',
    measures: { slow: held(low, '6 h') },
    series: { sets: [rate('10:00', 40), rate('11:00', 400), rate('11:30', 40), rate('12:00', 40)] },
    narrow: { 'slow:low': ms('30 min'), 'slow:high': ms('2 h') },
    refused: [['heart_rate', '400']],
  },
  {
    name: 'a range that only may be below breaks what is certain',
    measures: { slow: held(low, '6 h') },
    series: { sets: [rate('11:00', { low: 45, high: 50 }), rate('12:00', 40)] },
    narrow: { 'slow:low': 0, 'slow:high': ms('1 h') },
  },
  {
    name: 'missing in the present set: possibly held, surely not; an earlier value does not stand in here',
    measures: { slow: held(low, '6 h') },
    series: { sets: [rate('10:00', 40), rate('11:00', 40), { at: at('12:00'), temperature: 36.5 }] },
    narrow: { 'slow:low': 0, 'slow:high': ms('2 h'), 'heart_rate:low': 40 },
    wide: { 'heart_rate:low': 0, 'heart_rate:high': 300 },
  },
  {
    name: 'a set exactly as old as the window is no longer part of the run',
    measures: { slow: held(low, '2 h'), longer: held(low, '6 h') },
    series: { sets: [rate('10:00', 40), rate('10:00:00.001', 40), rate('12:00', 40)] },
    narrow: { 'slow:low': ms('2 h') - 1, 'slow:high': ms('2 h') - 1, 'longer:low': ms('2 h') },
  },
  {
    name: 'held reads standing facts at each set’s time',
    measures: { scale: held(is('oxygen_scale', 'scale_2'), '6 h') },
    series: {
      patient: { standing: { oxygen_scale: { value: 'scale_2', by: 'Dr Ash', at: at('10:30') } } },
      sets: [rate('10:00', 80), rate('11:00', 80), rate('12:00', 80)],
    },
    narrow: { 'scale:low': ms('1 h'), 'scale:high': ms('1 h') },
  },
  {
    name: 'held with a limit that was changed for the patient',
    measures: { low_pressure: held(compare('systolic', 'at_most', 'mean_floor'), '6 h') },
    series: {
      patient: { limits: { mean_floor: { value: 80, by: 'Dr Ash' } } },
      sets: [
        { at: at('10:00'), systolic: 81 },
        { at: at('11:00'), systolic: 80 },
        { at: at('12:00'), systolic: 70 },
      ],
    },
    narrow: { 'low_pressure:low': ms('1 h'), 'low_pressure:high': ms('1 h') },
  },
];
