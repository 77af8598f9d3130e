import type { Problem } from '../../src/problems/problem.ts';
import type { UnitWords } from '../../src/series/set-reading.ts';
import { at } from './ward.ts';

/** A set that cannot be asked about, and why. */
export interface Reject {
  readonly code: Problem['code'];
  readonly set: unknown;
  /** The part of the source line that is meant. */
  readonly meant: string;
  readonly says: string;
  readonly near?: string;
  readonly units?: UnitWords;
}

const by = 'Dr Ash';
const stated = (name: string, more: object): object => ({
  at: at('12:00'),
  patient: { standing: { [name]: { value: 'scale_2', by, ...more } } },
});

export const rejects: readonly Reject[] = [
  {
    code: 'set_unknown_observation',
    set: { systolc: 104 },
    meant: '"systolc"',
    says: '"systolc" is not an observation',
    near: 'systolic',
  },
  { code: 'set_unknown_observation', set: { banana: 1 }, meant: '"banana"', says: '"banana"' },
  {
    code: 'set_unknown_observation',
    set: { patinet: { standing: {} } },
    meant: '"patinet"',
    says: '"patinet"',
    near: 'patient',
  },
  {
    code: 'set_unknown_observation',
    set: { sets: [{ at: at('12:00'), hart_rate: 80 }] },
    meant: '"hart_rate"',
    says: '"hart_rate"',
    near: 'heart_rate',
  },
  {
    code: 'set_observation_beside_sets',
    set: { sets: [], systolic: 104 },
    meant: '"systolic"',
    says: '"systolic" stands beside "sets"',
  },
  {
    code: 'set_not_standing',
    set: { patient: { standing: { systolic: { value: 104, by } } } },
    meant: '"systolic"',
    says: '"systolic" is observed anew each time',
  },
  {
    code: 'set_unknown_observation',
    set: { patient: { standing: { oxygen_scal: { value: 'scale_2', by } } } },
    meant: '"oxygen_scal"',
    says: '"oxygen_scal"',
    near: 'oxygen_scale',
  },
  {
    code: 'set_unknown_limit',
    set: { patient: { limits: { mean_flor: { value: 70, by } } } },
    meant: '"mean_flor"',
    says: '"mean_flor" is not a limit',
    near: 'mean_floor',
  },
  {
    code: 'set_text_for_number',
    set: { systolic: '104' },
    meant: '"104"',
    says: '"104" for "systolic" is a text; a number belongs here.',
  },
  {
    code: 'set_wrong_kind',
    set: { systolic: true },
    meant: 'true',
    says: 'true is no value for "systolic".',
  },
  {
    code: 'set_wrong_kind',
    set: { systolic: [104] },
    meant: '[',
    says: 'A list is no value for "systolic".',
  },
  {
    code: 'set_wrong_kind',
    set: { consciousness: 3 },
    meant: '3',
    says: '3 is no value for "consciousness".',
  },
  { code: 'set_wrong_kind', set: { infection_suspected: 1 }, meant: '1', says: '1 is no value' },
  {
    code: 'set_wrong_kind',
    set: { technique_faults: 'talking' },
    meant: '"talking"',
    says: '"talking" is no value for "technique_faults".',
  },
  {
    code: 'set_unknown_choice',
    set: { consciousness: 'alrt' },
    meant: '"alrt"',
    says: '"alrt" is not a choice of "consciousness".',
    near: 'alert',
  },
  {
    code: 'set_unknown_choice',
    set: { infection_suspected: 'maybe' },
    meant: '"maybe"',
    says: '"maybe" is not a choice',
  },
  {
    code: 'set_unknown_choice',
    set: { technique_faults: ['talking', 'cuff_to_small'] },
    meant: '"cuff_to_small"',
    says: '"cuff_to_small"',
    near: 'cuff_too_small',
  },
  {
    code: 'set_choice_twice',
    set: { technique_faults: ['talking', 'talking'] },
    meant: '"talking"',
    says: '"talking" stands twice',
  },
  {
    code: 'set_unknown_unit',
    set: { systolic: { value: 104, unit: 'mmHg' } },
    meant: '"mmHg"',
    says: '"mmHg" is not a unit',
    near: 'mm[Hg]',
  },
  {
    code: 'set_unknown_unit',
    set: { systolic: { value: 104, unit: 'mm[Hg]' } },
    units: 'trade',
    meant: '"mm[Hg]"',
    says: '"mm[Hg]" is not a unit',
    near: 'mmHg',
  },
  {
    code: 'set_unit_mismatch',
    set: { systolic: { value: 104, unit: '/min' } },
    meant: '"/min"',
    says: '"systolic" cannot be measured in /min.',
  },
  {
    code: 'set_unit_mismatch',
    set: { systolic: '104 /min' },
    units: 'trade',
    meant: '"104 /min"',
    says: '"systolic" cannot be measured in /min.',
  },
  {
    code: 'set_unit_of_choice',
    set: { consciousness: { value: 'alert', unit: '%' } },
    meant: '"unit"',
    says: '"consciousness" is not a number, so it has no unit.',
  },
  {
    code: 'set_unit_twice',
    set: { temperature: { value: '98.1 °F', unit: '°F' } },
    units: 'trade',
    meant: '"98.1 °F"',
    says: 'The unit of "temperature" is said twice',
  },
  {
    code: 'set_says_nothing',
    set: { systolic: {} },
    meant: '{}',
    says: 'Nothing is said of "systolic" here.',
  },
  { code: 'set_says_nothing', set: { systolic: { unit: 'mm[Hg]' } }, meant: '{', says: 'Nothing is said' },
  {
    code: 'set_no_says_nothing',
    set: { systolic: { unobtainable: false } },
    meant: 'false',
    says: '"unobtainable: no" says nothing of "systolic".',
  },
  {
    code: 'set_no_says_nothing',
    set: { systolic: { declined: ' ' } },
    meant: '" "',
    says: '"declined: no" says nothing',
  },
  {
    code: 'set_parts_clash',
    set: { systolic: { value: 104, unobtainable: 'thick arm' } },
    meant: '"unobtainable"',
    says: '"value" and "unobtainable" cannot both be said of "systolic".',
  },
  {
    code: 'set_parts_clash',
    set: { systolic: { value: 104, above_device: 250 } },
    meant: '"above_device"',
    says: '"value" and "above_device"',
  },
  {
    code: 'set_parts_clash',
    set: { systolic: { low: 104, below_device: 250 } },
    meant: '"below_device"',
    says: '"low" and "below_device"',
  },
  {
    code: 'set_parts_clash',
    set: { systolic: { unobtainable: true, declined: true } },
    meant: '"declined"',
    says: '"unobtainable" and "declined"',
  },
  {
    code: 'set_parts_clash',
    set: { systolic: { declined: true, unit: 'mm[Hg]' } },
    meant: '"unit"',
    says: '"declined" and "unit"',
  },
  {
    code: 'set_range_of_choice',
    set: { consciousness: { value: 'alert', low: 1 } },
    meant: '"low"',
    says: '"consciousness" is not a number, so "low" cannot be said of it.',
  },
  {
    code: 'set_range_of_choice',
    set: { consciousness: { above_device: 1 } },
    meant: '"above_device"',
    says: '"above_device" cannot be said of it',
  },
  {
    code: 'set_low_above_high',
    set: { systolic: { low: 104.1, high: 104 } },
    meant: '{',
    says: 'The low end of "systolic", 104.1, is higher than its high end, 104.',
  },
  {
    code: 'set_value_outside_range',
    set: { systolic: { value: 95, low: 96 } },
    meant: '95',
    says: 'The value of "systolic", 95, is lower than its own low end, 96.',
  },
  {
    code: 'set_value_outside_range',
    set: { systolic: { value: 105, low: 96, high: 104 } },
    meant: '105',
    says: 'The value of "systolic", 105, is higher than its own high end, 104.',
  },
  {
    code: 'set_time_unreadable',
    set: { at: 'noon' },
    meant: '"noon"',
    says: '"noon" cannot be read as a time.',
  },
  {
    code: 'set_time_without_offset',
    set: { sets: [{ at: '2026-03-02T12:00:00' }] },
    meant: '"2026-03-02T12:00:00"',
    says: 'does not say in which time zone',
  },
  {
    code: 'set_time_too_fine',
    set: { at: '2026-03-02T12:00:00.0001Z' },
    meant: '"2026-03-02T12:00:00.0001Z"',
    says: 'finer than a thousandth of a second',
  },
  {
    code: 'set_time_impossible',
    set: { at: '2026-02-30T08:00:00Z' },
    meant: '"2026-02-30T08:00:00Z"',
    says: 'There is no such time as "2026-02-30T08:00:00Z".',
  },
  {
    code: 'set_time_leap_second',
    set: { at: '2016-12-31T23:59:60Z' },
    meant: '"2016-12-31T23:59:60Z"',
    says: 'is a leap second',
  },
  {
    code: 'set_time_unreadable',
    set: stated('oxygen_scale', { until: 'tomorrow' }),
    meant: '"tomorrow"',
    says: '"tomorrow" cannot be read as a time.',
  },
  {
    code: 'set_never_holds',
    set: stated('oxygen_scale', { at: at('12:00'), until: '2026-03-02T13:00:00+01:00' }),
    meant: '"2026-03-02T13:00:00+01:00"',
    says: '"oxygen_scale" would never hold',
  },
  {
    code: 'set_time_needed',
    set: { patient: { standing: { oxygen_scale: { value: 'scale_2', by, until: at('12:00') } } } },
    meant: `"${at('12:00')}"`,
    says: '"oxygen_scale" holds only for a time, but the set does not say when it was taken',
  },
  {
    code: 'set_time_needed',
    set: { patient: { limits: { mean_floor: { value: 70, by, at: at('12:00') } } }, sets: [] },
    meant: `"${at('12:00')}"`,
    says: '"mean_floor" holds only for a time',
  },
  {
    code: 'set_unknown_choice',
    set: { patient: { standing: { oxygen_scale: { value: 'humidified', by } } } },
    meant: '"humidified"',
    says: '"humidified" is not a choice of "oxygen_scale".',
  },
  {
    code: 'set_text_for_number',
    set: { patient: { limits: { mean_floor: { value: '70', by } } } },
    meant: '"70"',
    says: '"70" for "mean_floor" is a text',
  },
  {
    code: 'set_unit_mismatch',
    set: { patient: { limits: { mean_floor: { value: 70, unit: '%', by } } } },
    meant: '"%"',
    says: '"mean_floor" cannot be measured in %.',
  },
  {
    code: 'not_a_quantity',
    set: { systolic: 'high' },
    units: 'trade',
    meant: '"high"',
    says: '"high" is not a number with its unit.',
  },
  {
    code: 'unknown_unit',
    set: { systolic: '104 mmhg' },
    units: 'trade',
    meant: '"104 mmhg"',
    says: '"mmhg" is not a unit',
    near: 'mmHg',
  },
];
