/** One outcome that people have read and approved, under its name in this folder. All patients are invented. */
export interface Approved {
  readonly name: string;
  /** By its place below protocols/. */
  readonly protocol: string;
  /** A set or a series, as in JSON. */
  readonly set: Readonly<Record<string, unknown>>;
  /** Columns; 80 unless told otherwise. */
  readonly width?: number;
}

const adult = { age: { value: 58, unit: 'a' }, pregnancy: 'not_pregnant' };
const signs = {
  systolic: 118,
  diastolic: 66,
  heart_rate: 72,
  respiratory_rate: 16,
  temperature: 36.8,
  consciousness: 'alert',
};
const quiet = { ...adult, ...signs };
const nearlyFine = {
  ...adult,
  systolic: 108,
  diastolic: 54,
  heart_rate: 98,
  respiratory_rate: 24,
  temperature: 36,
  consciousness: 'new_confusion',
};
const scored = { ...quiet, oxygen_saturation: 97, on_oxygen: false };
const stated = {
  age: { value: 71, unit: 'a', by: 'Admission office' },
  pregnancy: { value: 'not_pregnant', by: 'Admission office' },
};

const pressure: readonly Omit<Approved, 'protocol'>[] = [
  { name: 'quiet_adult', set: quiet },
  { name: 'fit_young_adult', set: { ...quiet, age: { value: 24, unit: 'a' }, systolic: 105, diastolic: 65, heart_rate: 56 } },
  { name: 'nothing_given', set: {} },
  { name: 'pressure_alone', set: { systolic: 104, diastolic: 48, temperature: { value: 98.1, unit: '[degF]' } } },
  { name: 'each_number_nearly_fine', set: nearlyFine },
  { name: 'systolic_of_42', set: { ...adult, systolic: 42, diastolic: 30 } },
  { name: 'systolic_of_940', set: { ...adult, systolic: 940, heart_rate: 88, consciousness: 'alert' } },
  { name: 'pair_that_cannot_be', set: { ...quiet, systolic: 80, diastolic: 90 } },
  { name: 'no_pressure_found', set: { ...quiet, systolic: { unobtainable: 'cold hands' }, diastolic: { unobtainable: true }, heart_rate: 128 } },
  { name: 'no_saturation_found', set: { ...quiet, oxygen_saturation: { unobtainable: 'cold fingers' } } },
  { name: 'child', set: { age: { value: 12, unit: 'a' }, systolic: 90, diastolic: 50 } },
  { name: 'pregnant', set: { ...quiet, pregnancy: 'pregnant' } },
  { name: 'pregnancy_not_known', set: { ...quiet, pregnancy: undefined } },
  { name: 'usual_pressure_not_known', set: { ...quiet, systolic: 98, diastolic: 62 } },
  { name: 'usual_pressure_stated', set: { ...quiet, systolic: 98, diastolic: 62, usual_systolic: 102 } },
  { name: 'medicine_explains', set: { ...quiet, systolic: 112, diastolic: 54, heart_rate: 96, vasodilator_last_6_h: true } },
  { name: 'medicine_not_known', set: { ...quiet, systolic: 112, diastolic: 54, heart_rate: 96 } },
  { name: 'rate_held_back', set: { ...quiet, systolic: 86, diastolic: 50, heart_rate: 58, rate_slowing_medicine: true } },
  { name: 'cuff_too_small', set: { ...quiet, systolic: 96, diastolic: 60, technique_faults: ['cuff_too_small', 'talking'] } },
  { name: 'arm_that_hung_down', set: { ...quiet, systolic: { value: 104, low: 96, high: 104 }, diastolic: 64 } },
  { name: 'hard_to_rouse', set: { ...quiet, consciousness: 'unresponsive' } },
  { name: 'pressure_high_on_a_narrow_screen', set: { ...quiet, systolic: 192, diastolic: 112 }, width: 40 },
  {
    name: 'floor_changed_for_this_patient',
    set: {
      patient: {
        standing: stated,
        limits: {
          mean_floor: {
            value: 80,
            unit: 'mm[Hg]',
            by: 'Dr Ash',
            reason: 'long-standing high pressure',
            until: '2026-03-03T08:00:00Z',
          },
        },
      },
      sets: [{ at: '2026-03-02T22:40:00Z', ...signs, systolic: 116, diastolic: 60 }],
    },
  },
  {
    name: 'head_injury_over_two_sets',
    set: {
      patient: { standing: stated },
      sets: [
        { at: '2026-03-02T01:10:00Z', ...signs, systolic: 128, diastolic: 80, heart_rate: 74, head_injury: true },
        { at: '2026-03-02T03:40:00Z', ...signs, systolic: 156, diastolic: 78, heart_rate: 54, head_injury: true },
      ],
    },
  },
  {
    name: 'earlier_values_stand_in',
    set: {
      patient: { standing: stated },
      sets: [
        { at: '2026-03-02T02:00:00Z', ...signs, heart_rate: 104 },
        { at: '2026-03-02T04:30:00Z', systolic: 112, diastolic: 58 },
      ],
    },
  },
];

const score: readonly Omit<Approved, 'protocol'>[] = [
  { name: 'total_of_0', set: scored },
  { name: 'saturation_not_taken', set: nearlyFine },
  { name: 'breathing_alone', set: { ...adult, respiratory_rate: 26 } },
  { name: 'too_much_oxygen', set: { ...scored, oxygen_scale: 'scale_2', on_oxygen: true } },
  { name: 'temperature_declined', set: { ...scored, heart_rate: 112, respiratory_rate: 22, temperature: { declined: 'asked not to be woken' } } },
  { name: 'no_pulse_found', set: { ...scored, heart_rate: { unobtainable: 'no pulse at the wrist' } } },
];

const technique: readonly Omit<Approved, 'protocol'>[] = [
  { name: 'technique_not_said', set: { ...adult, systolic: 128, diastolic: 74 } },
  { name: 'tight_cuff_on_a_hanging_arm', set: { ...adult, systolic: 118, diastolic: 74, technique_faults: ['arm_below_heart'], cuff: 'adult', arm_circumference: 36.5 } },
  { name: 'low_in_a_large_cuff', set: { ...adult, systolic: 88, diastolic: 58, technique_faults: ['cuff_too_large'] } },
  { name: 'room_under_a_hanging_arm', set: { ...adult, systolic: 148, diastolic: 88, technique_faults: ['arm_below_heart'] } },
  { name: 'line_worse_than_the_cuff', set: { ...adult, systolic: 118, diastolic: 72, line_systolic: 84, line_diastolic: 52, line_mean: 63, technique_faults: ['line_damped'] } },
];

/** Every outcome whose printed text people have read. */
export const outcomes: readonly Approved[] = [
  ...pressure.map((each) => ({ ...each, protocol: 'pressure_reading' })),
  ...score.map((each) => ({ ...each, protocol: 'early_warning_score' })),
  ...technique.map((each) => ({ ...each, protocol: 'reading_technique' })),
  { name: 'curve_of_a_lesson', protocol: 'lessons/a_curve', set: { systolic: 108, diastolic: 54 } },
  { name: 'first_set_of_a_look_back', protocol: 'lessons/a_look_back', set: { systolic: 108 } },
];
