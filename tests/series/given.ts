import fc from 'fast-check';
import { lookBack, held, compare, is, known, any } from './protocol-builder.ts';
import { wardProtocol } from './ward.ts';

/** A protocol with every kind of look back. */
export const watchful = wardProtocol({
  peak: lookBack('highest', 'systolic', '3 h', { where: is('limb', 'left_arm') }),
  trough: lookBack('lowest', 'heart_rate', '3 h', { where: compare('systolic', 'below', 'mean_floor') }),
  average: lookBack('average', 'heart_rate', '2 h'),
  first: lookBack('earliest', 'oxygen_saturation', '3 h'),
  last: lookBack('latest', 'heart_rate', '3 h', { leftOut: true }),
  change: lookBack('change', 'systolic', '3 h'),
  times: lookBack('count', 'infection_suspected', '3 h'),
  since: lookBack('minutes_since', 'vasodilator', '3 h', { where: known('heart_rate') }),
  slow: held(any(compare('heart_rate', 'below', 60), is('consciousness', 'pain')), '3 h', '1 h'),
});

/** The longest that anything of it reaches back is the 24 h for which a suspected infection is good. */
export const longestReach = 24 * 3_600_000;

const unobtainable = fc.constantFrom(
  { unobtainable: 'cold' },
  { unobtainable: true },
  { declined: 'asleep' },
);
const number = (low: number, high: number): fc.Arbitrary<unknown> =>
  fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: low, max: high }) },
    {
      weight: 2,
      arbitrary: fc
        .tuple(fc.integer({ min: low, max: high }), fc.integer({ min: 0, max: 20 }))
        .map(([from, more]) => ({ low: from, high: from + more })),
    },
    { weight: 1, arbitrary: fc.integer({ min: low, max: high }).map((each) => ({ low: each })) },
    { weight: 1, arbitrary: fc.integer({ min: low, max: high }).map((each) => ({ above_device: each })) },
    { weight: 1, arbitrary: unobtainable },
    { weight: 1, arbitrary: fc.constant(999) },
  );

const observed = fc.record(
  {
    systolic: number(40, 140),
    diastolic: number(30, 90),
    heart_rate: number(40, 120),
    temperature: fc.integer({ min: 350, max: 400 }).map((tenths) => tenths / 10),
    oxygen_saturation: number(70, 99),
    consciousness: fc.constantFrom('alert', 'voice', 'pain'),
    infection_suspected: fc.constantFrom('yes', 'no', true, false),
    vasodilator: fc.constantFrom('yes', 'no', { unobtainable: true }),
    limb: fc.constantFrom('left_arm', 'leg'),
    technique_faults: fc.subarray(['cuff_too_small', 'arm_hanging', 'talking']),
    oxygen_scale: fc.constantFrom('scale_1', 'scale_2'),
    usual_systolic: fc.constantFrom(140, 150, 300),
    mean_pressure: fc.integer({ min: 60, max: 100 }),
  },
  { requiredKeys: [] },
);

const noon = Date.UTC(2026, 2, 2, 12);
export const timeAt = (milliseconds: number): string => new Date(milliseconds).toISOString();

/** A set at one of a few instants within the last five hours, so that instants and edges of windows are met often. */
const timedSet = fc
  .tuple(fc.integer({ min: 0, max: 20 }), fc.constantFrom(0, 0, 0, 1), observed)
  .map(([quarters, more, said]) => ({ at: timeAt(noon - quarters * 900_000 + more), ...said }));

const patient = fc.constantFrom(
  {},
  { standing: { oxygen_scale: { value: 'scale_2', by: 'Dr Ash', at: timeAt(noon - 3_600_000) } } },
  {
    standing: { oxygen_scale: { value: 'scale_2', by: 'Dr Ash' } },
    limits: { mean_floor: { value: 80, by: 'Dr Ash' } },
  },
  { standing: { usual_systolic: { value: 150, by: 'Dr Ash', until: timeAt(noon - 3_600_000) } } },
);

export type GivenSeries = { at: string; patient: object; sets: ({ at: string } & object)[] };

/** A series that is asked about up to five hours after its last set. */
export const givenSeries: fc.Arbitrary<GivenSeries> = fc
  .tuple(fc.array(timedSet, { maxLength: 7 }), patient, fc.constantFrom(0, 0, 1, 3_600_000, 5 * 3_600_000))
  .map(([sets, side, later]) => ({ at: timeAt(noon + 1 + later), patient: side, sets }));
