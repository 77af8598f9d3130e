import type { Row } from './row.ts';
import { at } from './ward.ts';

/** Ranges, device bounds, what is possible and plausible, contradictions, conversion. */
export const rangeRows: readonly Row[] = [
  {
    name: 'a value with both ends: the ends count',
    series: { systolic: { value: 100, low: 96, high: 104 } },
    narrow: { 'systolic:low': 96, 'systolic:high': 104, 'systolic:known': 1 },
  },
  {
    name: 'a range without a value',
    series: { systolic: { low: 96, high: 104 } },
    narrow: { 'systolic:low': 96, 'systolic:high': 104, 'systolic:known': 1 },
  },
  {
    name: 'a value with a low end only: the value is the high end',
    series: { systolic: { value: 104, low: 96 } },
    narrow: { 'systolic:low': 96, 'systolic:high': 104 },
  },
  {
    name: 'a value with a high end only: the value is the low end',
    series: { systolic: { value: 104, high: 110 } },
    narrow: { 'systolic:low': 104, 'systolic:high': 110 },
  },
  {
    name: 'a low end alone reaches to the highest that is possible, and is not questioned for that',
    series: { systolic: { low: 96 } },
    narrow: { 'systolic:low': 96, 'systolic:high': 350, 'systolic:known': 1 },
  },
  {
    name: 'a high end alone reaches down to the lowest that is possible',
    series: { systolic: { high: 96 } },
    narrow: { 'systolic:low': 20, 'systolic:high': 96, 'systolic:known': 1 },
  },
  {
    name: 'above the device: from one step above its bound to the highest possible; it is known',
    series: { systolic: { above_device: 250 } },
    narrow: { 'systolic:low': 251, 'systolic:high': 350, 'systolic:known': 1, 'systolic:unobtainable': 0 },
    present: { systolic: { state: 'given', range: [251, 350] } },
  },
  {
    name: 'below the device: from the lowest possible to one step below its bound; a help is not missing',
    series: { oxygen_saturation: { below_device: 50 } },
    narrow: { 'oxygen_saturation:low': 0, 'oxygen_saturation:high': 49, 'oxygen_saturation:missing': 0 },
  },
  {
    name: 'above a bound beyond which nothing is possible: refused',
    series: { systolic: { above_device: 350 } },
    narrow: { 'systolic:low': 20, 'systolic:high': 350, 'systolic:known': 0 },
    refused: [['systolic', 'above 350']],
  },
  {
    name: 'the highest and the lowest possible are used',
    series: { systolic: { value: 350 }, diastolic: 10 },
    narrow: { 'systolic:low': 350, 'diastolic:low': 10, 'diastolic:known': 1 },
    questioned: [['systolic', '350']],
  },
  {
    name: 'one step beyond what is possible is refused and counts as missing',
    series: { systolic: 351, diastolic: 9 },
    narrow: {
      'systolic:low': 20,
      'systolic:high': 350,
      'systolic:known': 0,
      'diastolic:low': 10,
      'diastolic:high': 250,
    },
    refused: [
      ['systolic', '351'],
      ['diastolic', '9'],
    ],
  },
  {
    name: 'a range with one impossible end is refused',
    series: { systolic: { value: 40, low: 19, high: 60 } },
    narrow: { 'systolic:low': 20, 'systolic:high': 350, 'systolic:known': 0 },
    refused: [['systolic', '40, from 19 to 60']],
    because: 'systolic as low as 19 mmHg is lower than 20, the lowest that is possible',
  },
  {
    name: 'a systolic of 42 is used and questioned',
    series: { systolic: 42 },
    narrow: { 'systolic:low': 42, 'systolic:high': 42, 'systolic:known': 1 },
    questioned: [['systolic', '42']],
    because: 'systolic 42 mmHg is lower than 50, the lowest that is plausible; it is used',
  },
  {
    name: 'the edges of what is plausible are not questioned',
    series: { sets: [{ at: at('12:00'), systolic: { low: 50, high: 260 } }] },
    narrow: { 'systolic:low': 50, 'systolic:high': 260 },
  },
  {
    name: 'either end of a range outside what is plausible is questioned',
    series: { systolic: { value: 55, low: 49, high: 261 } },
    narrow: { 'systolic:low': 49, 'systolic:high': 261 },
    questioned: [
      ['systolic', '55, from 49 to 261'],
      ['systolic', '55, from 49 to 261'],
    ],
    because: 'systolic as low as 49 mmHg is lower than 50',
  },
  {
    name: 'a diastolic not below the systolic: both are refused',
    series: { systolic: 104, diastolic: 110 },
    narrow: { 'systolic:low': 20, 'systolic:known': 0, 'diastolic:low': 10, 'diastolic:known': 0 },
    refused: [
      ['systolic', '104'],
      ['diastolic', '110'],
    ],
    because: 'The diastolic is never as high as the systolic: diastolic 110 mmHg, systolic 104 mmHg',
  },
  {
    name: 'equal pressures contradict each other; one step apart they do not',
    series: { systolic: 100, diastolic: 100 },
    narrow: { 'systolic:known': 0, 'diastolic:known': 0 },
    refused: [
      ['systolic', '100'],
      ['diastolic', '100'],
    ],
  },
  {
    name: 'one step apart pressures are used',
    series: { systolic: 101, diastolic: 100 },
    narrow: { 'systolic:low': 101, 'diastolic:low': 100 },
  },
  {
    name: 'ranges that only may contradict each other are used',
    series: { systolic: { low: 90, high: 101 }, diastolic: { low: 100, high: 120 } },
    narrow: { 'systolic:low': 90, 'systolic:high': 101, 'diastolic:low': 100, 'diastolic:high': 120 },
  },
  {
    name: 'ranges of which no pair can be right are refused',
    series: { systolic: { low: 90, high: 100 }, diastolic: { low: 100, high: 120 } },
    narrow: { 'systolic:known': 0, 'diastolic:known': 0 },
    refused: [
      ['systolic', '90 to 100'],
      ['diastolic', '100 to 120'],
    ],
  },
  {
    name: 'what is missing never contradicts, nor does an impossible value',
    series: { systolic: 900, diastolic: 240 },
    narrow: { 'systolic:known': 0, 'diastolic:low': 240, 'diastolic:known': 1 },
    refused: [['systolic', '900']],
  },
  {
    name: 'a value in another unit is converted exactly and rounded once; it is listed',
    series: { temperature: { value: 98.1, unit: '[degF]' } },
    narrow: { 'temperature:low': 367, 'temperature:high': 367 },
    taken: [['temperature', '98.1 [degF]', '36.7 Cel']],
  },
  {
    name: 'half a step goes away from zero',
    series: { temperature: 36.65, heart_rate: 79.5 },
    narrow: { 'temperature:low': 367, 'heart_rate:low': 80 },
    taken: [
      ['heart_rate', '79.5', '80 /min'],
      ['temperature', '36.65', '36.7 Cel'],
    ],
  },
  {
    name: 'the ends of a range are converted and rounded in the same way',
    series: { systolic: { low: 12, high: 16, unit: 'kPa' } },
    narrow: { 'systolic:low': 90, 'systolic:high': 120 },
    taken: [['systolic', '12 to 16 kPa', '90 to 120 mm[Hg]']],
  },
  {
    name: 'a device bound between two steps loses no step beyond it',
    series: { systolic: { above_device: 250.6 }, oxygen_saturation: { below_device: 50.4 } },
    narrow: { 'systolic:low': 251, 'oxygen_saturation:high': 50 },
    taken: [
      ['systolic', 'above 250.6', 'above 250 mm[Hg]'],
      ['oxygen_saturation', 'below 50.4', 'below 51 %'],
    ],
  },
  {
    name: 'choices: a given one is the only one, a missing one may be any',
    series: { consciousness: 'voice', infection_suspected: false },
    narrow: {
      'consciousness:may:alert': 0,
      'consciousness:may:voice': 1,
      'consciousness:known': 1,
      'infection_suspected:may:yes': 0,
      'infection_suspected:may:no': 1,
      'limb:may:left_arm': 1,
      'limb:may:right_arm': 1,
      'limb:may:leg': 1,
      'limb:known': 0,
      'limb:missing': 1,
    },
    present: { limb: { state: 'missing', range: null, choices: ['left_arm', 'right_arm', 'leg'] } },
  },
  {
    name: 'several: those that are given are surely in, the others are not',
    series: { technique_faults: ['talking'] },
    narrow: {
      'technique_faults:may:cuff_too_small': 0,
      'technique_faults:may:talking': 1,
      'technique_faults:sure:talking': 1,
      'technique_faults:sure:arm_hanging': 0,
      'technique_faults:known': 1,
    },
  },
  {
    name: 'several: an empty list is known, and none is in',
    series: { technique_faults: [] },
    narrow: {
      'technique_faults:may:talking': 0,
      'technique_faults:sure:talking': 0,
      'technique_faults:known': 1,
    },
    present: { technique_faults: { state: 'given', choices: [] } },
  },
  {
    name: 'several: missing, any may be in and none is surely in',
    series: {},
    narrow: {
      'technique_faults:may:talking': 1,
      'technique_faults:may:cuff_too_small': 1,
      'technique_faults:sure:talking': 0,
      'technique_faults:known': 0,
      'technique_faults:missing': 1,
    },
  },
];
