import { number, yesNo } from './protocol-builder.ts';
import type { Row } from './row.ts';
import { at } from './ward.ts';

/** Pressures that need not come from one set. */
const alone = [
  number('systolic', 'mmHg', [20, 350], { goodFor: '4 h' }),
  number('diastolic', 'mmHg', [10, 250], { goodFor: '4 h' }),
];
const pressure = { systolic: 118, diastolic: 66 };

/** Groups that are taken together, and what stands in while there is no value now. */
export const standInRows: readonly Row[] = [
  {
    name: 'the present set has only the systolic: no diastolic from an earlier set',
    series: {
      sets: [
        { at: at('11:00'), ...pressure },
        { at: at('12:00'), systolic: 104 },
      ],
    },
    narrow: { 'systolic:low': 104, 'diastolic:low': 10, 'diastolic:high': 250, 'diastolic:known': 0 },
  },
  {
    name: 'a group comes from the latest earlier set that gives any of it',
    series: {
      sets: [
        { at: at('10:00'), ...pressure },
        { at: at('11:00'), systolic: 110 },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: { 'systolic:low': 110, 'systolic:known': 1, 'diastolic:low': 10, 'diastolic:known': 0 },
    wide: { 'systolic:low': 20 },
  },
  {
    name: 'an earlier set that could not obtain a pressure gives none of the group',
    series: {
      sets: [
        { at: at('10:00'), ...pressure },
        { at: at('11:00'), systolic: { unobtainable: true } },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: { 'systolic:low': 118, 'systolic:unobtainable': 0, 'diastolic:low': 66 },
    wide: { 'systolic:low': 20, 'diastolic:low': 10 },
    present: { systolic: { state: 'earlier', atText: at('10:00'), instead: null } },
  },
  {
    name: 'an earlier set with a device bound gives the group',
    series: {
      sets: [
        { at: at('10:00'), ...pressure },
        { at: at('11:00'), systolic: { above_device: 250 } },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: { 'systolic:low': 251, 'systolic:high': 350, 'diastolic:known': 0 },
    wide: { 'systolic:low': 20 },
  },
  {
    name: 'the present set could not obtain the systolic: the whole group is the present set’s',
    series: {
      sets: [
        { at: at('11:00'), ...pressure },
        { at: at('12:00'), systolic: { unobtainable: 'no pulse felt' } },
      ],
    },
    narrow: {
      'systolic:low': 20,
      'systolic:known': 0,
      'systolic:unobtainable': 1,
      'diastolic:low': 10,
      'diastolic:known': 0,
      'diastolic:unobtainable': 0,
    },
    present: { systolic: { state: 'unobtainable', note: 'no pulse felt' }, diastolic: { state: 'missing' } },
  },
  {
    name: 'the present set gives one of the group that this protocol does not read: no earlier pressure stands in',
    series: {
      sets: [
        { at: at('11:00'), ...pressure },
        { at: at('12:00'), mean_pressure: 60 },
      ],
    },
    narrow: { 'systolic:known': 0, 'systolic:low': 20, 'diastolic:known': 0 },
    unused: ['mean_pressure'],
  },
  {
    name: 'an earlier set that gives only the one that is not read is still the latest of the group',
    series: {
      sets: [
        { at: at('10:00'), ...pressure },
        { at: at('11:00'), mean_pressure: 60 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'systolic:known': 0, 'diastolic:known': 0, 'heart_rate:low': 80 },
    unused: ['mean_pressure'],
  },
  {
    name: 'a refused pressure of the present set: missing, and none of the group stands in',
    series: {
      sets: [
        { at: at('11:00'), ...pressure },
        { at: at('12:00'), systolic: 900 },
      ],
    },
    narrow: { 'systolic:low': 20, 'systolic:high': 350, 'systolic:known': 0, 'diastolic:known': 0 },
    present: { systolic: { state: 'refused' } },
    refused: [['systolic', '900']],
    because:
      'systolic 900 mmHg is higher than 350, the highest that is possible; it is refused and counts as missing',
  },
  {
    name: 'an earlier pair that was refused gives nothing of its group, and is told',
    series: {
      sets: [
        { at: at('10:00'), ...pressure },
        { at: at('11:00'), systolic: 80, diastolic: 90 },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: { 'systolic:low': 118, 'diastolic:low': 66, 'diastolic:high': 66 },
    wide: { 'systolic:low': 20, 'diastolic:low': 10, 'diastolic:high': 250 },
    refused: [
      ['systolic', '80'],
      ['diastolic', '90'],
    ],
    because: `(${at('11:00')})`,
  },
  {
    name: 'tried now and not obtained: an earlier value stands in, and both are told apart',
    series: {
      sets: [
        { at: at('11:30'), oxygen_saturation: 88 },
        { at: at('12:00'), oxygen_saturation: { unobtainable: 'cold fingers' } },
      ],
    },
    narrow: {
      'oxygen_saturation:low': 88,
      'oxygen_saturation:high': 88,
      'oxygen_saturation:known': 1,
      'oxygen_saturation:unobtainable': 1,
      'oxygen_saturation:missing': 0,
    },
    wide: {
      'oxygen_saturation:low': 0,
      'oxygen_saturation:high': 100,
      'oxygen_saturation:known': 1,
      'oxygen_saturation:missing': 1,
    },
    present: {
      oxygen_saturation: {
        state: 'earlier',
        instead: 'unobtainable',
        note: 'cold fingers',
        atText: at('11:30'),
      },
    },
  },
  {
    name: 'an impossible value now: an earlier one stands in, and the refusal is told',
    series: {
      sets: [
        { at: at('11:00'), heart_rate: 90 },
        { at: at('12:00'), heart_rate: 301 },
      ],
    },
    narrow: { 'heart_rate:low': 90, 'heart_rate:known': 1 },
    wide: { 'heart_rate:low': 0, 'heart_rate:high': 300 },
    present: { heart_rate: { state: 'earlier', instead: 'refused' } },
    refused: [['heart_rate', '301']],
  },
  {
    name: 'an impossible earlier value is missing: the one before it stands in, and the refusal is told',
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 90 },
        { at: at('11:00'), heart_rate: 999 },
        { at: at('12:00'), temperature: 36.5 },
      ],
    },
    narrow: { 'heart_rate:low': 90, 'heart_rate:known': 1 },
    wide: { 'heart_rate:low': 0, 'heart_rate:high': 300 },
    refused: [['heart_rate', '999']],
  },
  {
    name: 'an impossible earlier value is of no concern once there is a value now',
    series: {
      sets: [
        { at: at('11:00'), heart_rate: 999 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'heart_rate:low': 80 },
  },
  {
    name: 'declined is missing, and is not unobtainable',
    series: { oxygen_saturation: { declined: 'asleep' }, heart_rate: { declined: true } },
    narrow: {
      'oxygen_saturation:known': 0,
      'oxygen_saturation:unobtainable': 0,
      'oxygen_saturation:missing': 1,
      'heart_rate:low': 0,
      'heart_rate:high': 300,
    },
    present: {
      oxygen_saturation: { state: 'declined', note: 'asleep' },
      heart_rate: { state: 'declined', note: null },
    },
  },
  {
    name: 'an earlier yes of a need stands in; wide, it may be either',
    series: {
      sets: [
        { at: at('08:00'), infection_suspected: true },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: {
      'infection_suspected:may:yes': 1,
      'infection_suspected:may:no': 0,
      'infection_suspected:known': 1,
    },
    wide: { 'infection_suspected:may:no': 1 },
  },
  {
    name: 'an observation in the scope counts as a need: no flag says that it is missing, wide has its whole range',
    reads: [yesNo('pregnant', { role: 'scope', goodFor: '24 h' })],
    series: {
      sets: [
        { at: at('08:00'), pregnant: 'no' },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: { 'pregnant:may:yes': 0, 'pregnant:may:no': 1, 'pregnant:known': 1 },
    wide: { 'pregnant:may:yes': 1 },
  },
  {
    name: 'an earlier value that contradicts one of now does not stand in, and is told',
    reads: alone,
    series: {
      sets: [
        { at: at('11:00'), systolic: 80 },
        { at: at('12:00'), diastolic: 90 },
      ],
    },
    narrow: { 'systolic:low': 20, 'systolic:high': 350, 'systolic:known': 0, 'diastolic:low': 90 },
    refused: [['systolic', '80']],
    because: 'The diastolic is never as high as the systolic; the earlier value of',
  },
  {
    name: 'two earlier values that contradict each other: neither stands in',
    reads: alone,
    series: {
      sets: [
        { at: at('10:00'), systolic: 80 },
        { at: at('11:00'), diastolic: 80 },
        { at: at('12:00'), heart_rate: 90 },
      ],
    },
    narrow: { 'systolic:known': 0, 'diastolic:known': 0, 'heart_rate:low': 90 },
    refused: [
      ['diastolic', '80'],
      ['systolic', '80'],
    ],
  },
  {
    name: 'an impossible earlier value for which nothing stands in is told while it would be good',
    series: {
      sets: [
        { at: at('08:00'), heart_rate: 999 },
        { at: at('12:00'), temperature: 36.5 },
      ],
    },
    narrow: { 'heart_rate:low': 0, 'heart_rate:known': 0 },
    refused: [['heart_rate', '999']],
  },
  {
    name: 'an impossible value older than the one that stands in is of no concern',
    series: {
      sets: [
        { at: at('10:00'), heart_rate: 999 },
        { at: at('11:00'), heart_rate: 90 },
        { at: at('12:00'), temperature: 36.5 },
      ],
    },
    narrow: { 'heart_rate:low': 90 },
    wide: { 'heart_rate:low': 0, 'heart_rate:high': 300 },
  },
  {
    name: 'a standing observation is in no group: stating it now does not keep earlier pressures out',
    reads: [number('usual_systolic', 'mmHg', [50, 250], { standing: true, takenWith: 'pressure' })],
    series: {
      sets: [
        { at: at('11:00'), ...pressure },
        { at: at('12:00'), usual_systolic: 150 },
      ],
    },
    narrow: { 'systolic:low': 118, 'diastolic:low': 66, 'usual_systolic:low': 150 },
    wide: { 'systolic:low': 20, 'diastolic:low': 10 },
  },
];
