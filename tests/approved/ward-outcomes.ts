import type { Approved } from './outcomes.ts';

const patient = {
  standing: {
    age: { value: 74, unit: 'a', by: 'Admission office' },
    pregnancy: { value: 'not_pregnant', by: 'Admission office' },
  },
};
const quiet = {
  systolic: 118,
  diastolic: 70,
  heart_rate: 74,
  respiratory_rate: 15,
  temperature: 36.8,
  consciousness: 'alert',
  oxygen_saturation: 97,
  on_oxygen: false,
  infection_suspected: false,
  after_surgery_or_injury: false,
};
const nearlyGone = { ...quiet, systolic: 76, diastolic: 44, heart_rate: 118, respiratory_rate: 24 };

/** Outcomes of Alder Wing that people have read and approved. All patients are invented. */
export const wardOutcomes: readonly Omit<Approved, 'protocol'>[] = [
  { name: 'ward_quiet_adult', set: { patient, sets: [{ at: '2026-03-02T22:05:00Z', ...quiet }] } },
  {
    name: 'ward_septic_badly_cuffed',
    set: {
      patient,
      sets: [
        {
          at: '2026-03-02T22:05:00Z',
          ...quiet,
          systolic: 104,
          diastolic: 48,
          heart_rate: 98,
          respiratory_rate: 24,
          temperature: 36.2,
          consciousness: 'new_confusion',
          oxygen_saturation: 95,
          infection_suspected: true,
          vasodilator_last_6_h: true,
          technique_faults: ['arm_below_heart'],
          cuff: 'adult',
          arm_circumference: 38,
        },
      ],
    },
  },
  {
    name: 'ward_one_better_set',
    set: {
      patient,
      sets: [
        { at: '2026-03-02T20:00:00Z', ...nearlyGone },
        { at: '2026-03-02T21:00:00Z', ...quiet },
      ],
    },
  },
  {
    name: 'ward_comfort_care',
    set: {
      patient: {
        standing: { ...patient.standing, escalation_plan: { value: 'comfort_care', by: 'Dr Ash' } },
      },
      sets: [{ at: '2026-03-02T22:05:00Z', ...nearlyGone }],
    },
  },
  { name: 'ward_nothing_given', set: {} },
];
