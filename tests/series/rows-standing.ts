import { compare, lookBack } from './protocol-builder.ts';
import type { Row } from './row.ts';
import { at } from './ward.ts';

const by = 'Dr Ash';
const onScale2 = (more: object = {}): object => ({
  standing: { oxygen_scale: { value: 'scale_2', by, ...more } },
});
const scale1 = { 'oxygen_scale:may:scale_1': 1, 'oxygen_scale:may:scale_2': 0 };
const scale2 = { 'oxygen_scale:may:scale_1': 0, 'oxygen_scale:may:scale_2': 1 };
const either = { 'oxygen_scale:may:scale_1': 1, 'oxygen_scale:may:scale_2': 1 };

/** Standing facts, and limits that were changed for the patient. */
export const standingRows: readonly Row[] = [
  {
    name: 'what nobody has stated is assumed: not missing, and not known',
    series: {},
    narrow: {
      ...scale1,
      'oxygen_scale:known': 0,
      'oxygen_scale:missing': 0,
      'usual_systolic:low': 50,
      'usual_systolic:high': 250,
      'usual_systolic:missing': 1,
    },
    present: { oxygen_scale: { state: 'assumed' }, usual_systolic: { state: 'missing' } },
  },
  {
    name: 'a patient’s fact without beginning and end holds, also without a time',
    series: { patient: onScale2() },
    narrow: { ...scale2, 'oxygen_scale:known': 1, 'oxygen_scale:missing': 0 },
    present: { oxygen_scale: { state: 'standing', note: by, at: null } },
  },
  {
    name: 'a fact holds until one millisecond before its end',
    series: {
      patient: onScale2({ until: at('12:00') }),
      at: at('11:59:59.999'),
      sets: [{ at: at('08:00') }],
    },
    narrow: { ...scale2, 'oxygen_scale:known': 1 },
  },
  {
    name: 'at its end it no longer holds',
    series: { patient: onScale2({ until: at('12:00') }), at: at('12:00'), sets: [{ at: at('08:00') }] },
    narrow: { ...scale1, 'oxygen_scale:known': 0 },
    present: { oxygen_scale: { state: 'assumed', note: null } },
  },
  {
    name: 'a fact holds from its beginning, included',
    series: { patient: onScale2({ at: at('12:00') }), sets: [{ at: at('12:00') }] },
    narrow: { ...scale2, 'oxygen_scale:known': 1 },
  },
  {
    name: 'before its beginning it does not hold',
    series: { patient: onScale2({ at: at('12:00:00.001') }), sets: [{ at: at('12:00') }] },
    narrow: { ...scale1, 'oxygen_scale:known': 0 },
  },
  {
    name: 'a statement in a set has no age, and settles: it stands in both',
    series: {
      sets: [
        { at: '2026-01-05T08:00:00Z', oxygen_scale: 'scale_2', usual_systolic: 150 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { ...scale2, 'oxygen_scale:known': 1, 'usual_systolic:low': 150, 'usual_systolic:high': 150 },
    present: { oxygen_scale: { state: 'standing', note: null, at: Date.UTC(2026, 0, 5, 8), atText: null } },
  },
  {
    name: 'a fact without a beginning is older than any set',
    series: { patient: onScale2(), sets: [{ at: at('08:00'), oxygen_scale: 'scale_1' }] },
    narrow: { ...scale1, 'oxygen_scale:known': 1 },
    present: { oxygen_scale: { state: 'given' } },
  },
  {
    name: 'the later of a set’s statement and the patient’s holds',
    series: {
      patient: onScale2({ at: at('09:00') }),
      sets: [
        { at: at('08:00'), oxygen_scale: 'scale_1' },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { ...scale2, 'oxygen_scale:known': 1 },
  },
  {
    name: 'once the patient’s fact has ended, the statement before it holds again',
    series: {
      patient: { standing: { usual_systolic: { value: 160, by, at: at('09:00'), until: at('11:00') } } },
      sets: [
        { at: at('08:00'), usual_systolic: 150 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'usual_systolic:low': 150, 'usual_systolic:high': 150, 'usual_systolic:known': 1 },
  },
  {
    name: 'two values at an equal time are both refused: missing, not assumed',
    series: { patient: onScale2({ at: at('08:00') }), sets: [{ at: at('08:00'), oxygen_scale: 'scale_1' }] },
    narrow: { ...either, 'oxygen_scale:known': 0, 'oxygen_scale:missing': 1 },
    present: { oxygen_scale: { state: 'refused' } },
    refused: [
      ['oxygen_scale', 'scale_1'],
      ['oxygen_scale', 'scale_2'],
    ],
  },
  {
    name: 'the same value at an equal time is one statement',
    series: { patient: onScale2({ at: at('08:00') }), sets: [{ at: at('08:00'), oxygen_scale: 'scale_2' }] },
    narrow: { ...scale2, 'oxygen_scale:known': 1 },
    present: { oxygen_scale: { state: 'given', note: by } },
  },
  {
    name: 'two statements in sets of one instant are both refused, and nothing older holds',
    series: {
      sets: [
        { at: at('07:00'), oxygen_scale: 'scale_2' },
        { at: at('08:00'), oxygen_scale: 'scale_1' },
        { at: at('08:00'), oxygen_scale: 'scale_2' },
        { at: at('09:00'), heart_rate: 80 },
      ],
    },
    narrow: { ...either, 'oxygen_scale:known': 0, 'oxygen_scale:missing': 1 },
    refused: [
      ['oxygen_scale', 'scale_1'],
      ['oxygen_scale', 'scale_2'],
    ],
  },
  {
    name: 'an impossible statement is refused: missing, and nothing older holds',
    series: {
      sets: [
        { at: at('07:00'), usual_systolic: 150 },
        { at: at('08:00'), usual_systolic: 1500 },
        { at: at('12:00'), heart_rate: 80 },
      ],
    },
    narrow: { 'usual_systolic:low': 50, 'usual_systolic:high': 250, 'usual_systolic:known': 0 },
    refused: [['usual_systolic', '1500']],
    because: 'usual systolic 1500 mmHg is higher than 250, the highest that is possible',
  },
  {
    name: 'a patient’s fact that is impossible is refused; one that is implausible is used and questioned',
    series: { patient: { standing: { usual_systolic: { value: 210, by } } } },
    narrow: { 'usual_systolic:low': 210, 'usual_systolic:known': 1 },
    questioned: [['usual_systolic', '210']],
  },
  {
    name: 'a patient’s impossible fact is missing',
    series: { patient: { standing: { usual_systolic: { value: 251, by } } } },
    narrow: { 'usual_systolic:low': 50, 'usual_systolic:high': 250, 'usual_systolic:known': 0 },
    present: { usual_systolic: { state: 'refused', note: null } },
    refused: [['usual_systolic', '251']],
  },
  {
    name: 'a set that could not find it out states nothing: what was stated before holds',
    series: {
      sets: [
        { at: at('07:00'), usual_systolic: 150 },
        { at: at('08:00'), usual_systolic: { unobtainable: 'no record' } },
      ],
    },
    narrow: { 'usual_systolic:low': 150, 'usual_systolic:known': 1, 'usual_systolic:unobtainable': 1 },
    present: { usual_systolic: { state: 'standing', instead: 'unobtainable' } },
  },
  {
    name: 'a patient’s converted fact is listed as taken',
    series: { patient: { standing: { usual_systolic: { value: 20, unit: 'kPa', by } } } },
    narrow: { 'usual_systolic:low': 150, 'usual_systolic:high': 150 },
    taken: [['usual_systolic', '20 kPa', '150 mm[Hg]']],
  },
  {
    name: 'a patient’s fact that the protocol does not read is named',
    series: { patient: { standing: { age: { value: 58, by } } } },
    narrow: { 'systolic:known': 0 },
    unused: ['age'],
  },
];

const peakBelowFloor = {
  peak: lookBack('highest', 'systolic', '4 h', { where: compare('systolic', 'below', 'mean_floor') }),
};
const limited = (change: object): object => ({ limits: { mean_floor: { by, ...change } } });

export const limitRows: readonly Row[] = [
  {
    name: 'limits are the protocol’s own while nobody changes them',
    series: {},
    narrow: { 'mean_floor:value': 65, 'fixed_floor:value': 60 },
  },
  {
    name: 'a changed limit is used, also where a look back asks for it',
    measures: peakBelowFloor,
    series: { patient: limited({ value: 70, reason: 'long-standing high pressure' }), systolic: 69 },
    narrow: { 'mean_floor:value': 70, 'peak:low': 69, 'peak:sure': 1 },
  },
  {
    name: 'with the protocol’s own limit the same look back has no member',
    measures: peakBelowFloor,
    series: { systolic: 69 },
    narrow: { 'mean_floor:value': 65, 'peak:low': 20, 'peak:high': 350, 'peak:sure': 0, 'peak:maybe': 0 },
  },
  {
    name: 'the ends of a limit’s bounds may be chosen',
    series: { patient: limited({ value: 85 }) },
    narrow: { 'mean_floor:value': 85 },
  },
  {
    name: 'outside its bounds the change is refused, and the protocol’s own value is used',
    series: { patient: limited({ value: 86 }) },
    narrow: { 'mean_floor:value': 65 },
    refused: [['mean_floor', '86']],
    because: 'mean floor 86 mmHg is outside 55 to 85 mmHg, between which it may be changed; 65 mmHg is used',
  },
  {
    name: 'a limit that nobody may change is not changed',
    series: { patient: { limits: { fixed_floor: { value: 61, by } } } },
    narrow: { 'fixed_floor:value': 60 },
    refused: [['fixed_floor', '61']],
  },
  {
    name: 'a change that has ended is no longer used; nothing was refused',
    series: { patient: limited({ value: 70, until: at('12:00') }), sets: [{ at: at('12:00') }] },
    narrow: { 'mean_floor:value': 65 },
  },
  {
    name: 'a change that has not begun is not used yet',
    series: { patient: limited({ value: 70, at: at('12:01') }), sets: [{ at: at('12:00') }] },
    narrow: { 'mean_floor:value': 65 },
  },
  {
    name: 'a change in another unit is converted and listed',
    series: { patient: limited({ value: 9, unit: 'kPa' }) },
    narrow: { 'mean_floor:value': 68 },
    taken: [['mean_floor', '9 kPa', '68 mm[Hg]']],
  },
];
