import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearMiss, type Candidate } from '../../src/vocabulary/near-miss.ts';
import { readVitalSigns } from './vital-signs.ts';

const named = (names: string): Candidate[] => names.split(' ').map((name) => ({ name }));

const observations: readonly Candidate[] = [...readVitalSigns().dictionary.observations.values()];
const rules = named(
  'wide_for_this_systolic wide_and_working_hard mean_too_low low_and_narrow rate_does_not_answer fall_from_usual',
);
const measures = named(
  'pulse_pressure pulse_share mean_estimate expected_diastolic diastolic_shortfall shock_index score_total',
);
const keys = named(
  'protocol edition title about ladder applies_when otherwise review_by owners sources observations standing limits measures rules exactly_one_of needs helps declares',
);
const ruleKeys = named(
  'rule title when unless explained_by not_reliable_when level says because ask do source',
);
const comparisons = named('below above at_most at_least between is one_of known unobtainable accepted');
const consciousness = named('alert new_confusion voice pain unresponsive');

/** What was written, and what was meant. Everything of one kind is offered, as at the place where it was written. */
const recorded: readonly (readonly [readonly Candidate[], string])[] = [
  [
    observations,
    `hr heart_rate, pulse heart_rate, HR heart_rate, heartrate heart_rate, heart-rate heart_rate, heartRate heart_rate,
    haert_rate heart_rate, hart_rate heart_rate, rate_heart heart_rate, pulse_rate heart_rate, bpm heart_rate,
    sbp systolic, sys systolic, systollic systolic, sistolic systolic, systolic_bp systolic, SystolicBP systolic,
    systolic_blood_presure systolic, bp_systolic systolic, systolc systolic, syst systolic, bp systolic,
    dbp diastolic, diastolc diastolic, dystolic diastolic, dyastolic diastolic, diast diastolic, diastolic-pressure diastolic,
    map mean_pressure, MAP mean_pressure, mean mean_pressure, mean_presure mean_pressure, pressure_mean mean_pressure,
    mean_arterial_pressure mean_pressure, mean_bp mean_pressure,
    art_systolic line_systolic, line_sistolic line_systolic, invasive_diastolic line_diastolic, line_diastolc line_diastolic,
    line_map line_mean, mean_line line_mean,
    rr respiratory_rate, resps respiratory_rate, resp_rate respiratory_rate, respratory_rate respiratory_rate,
    respiration respiratory_rate, respiratory_rates respiratory_rate, breathing_rate respiratory_rate,
    resperatory_rate respiratory_rate, breaths respiratory_rate,
    sats oxygen_saturation, spo2 oxygen_saturation, SpO2 oxygen_saturation, oxgen_saturation oxygen_saturation,
    o2_sats oxygen_saturation, oxygen_sat oxygen_saturation, saturation oxygen_saturation, oxygen_saturaton oxygen_saturation,
    oxygen on_oxygen, on_o2 on_oxygen, onoxygen on_oxygen, on_oxigen on_oxygen,
    flow oxygen_flow, oxygen_flow_rate oxygen_flow, o2_flow oxygen_flow, spo2_scale oxygen_scale, oxygen_scal oxygen_scale,
    temp temperature, temprature temperature, temperture temperature, tempature temperature, body_temp temperature,
    avpu consciousness, acvpu consciousness, conciousness consciousness, consciousnes consciousness, loc consciousness,
    gcs glasgow_coma_total, GCS glasgow_coma_total, glascow_coma_total glasgow_coma_total, glasgow_coma glasgow_coma_total,
    urine urine_output, urin_output urine_output, uop urine_output, output_urine urine_output,
    crt capillary_refill, cap_refill capillary_refill, capilary_refill capillary_refill, capillary_refil capillary_refill,
    lac lactate, lacate lactate, wcc white_cells, wbc white_cells, leukocytes white_cells, leucocyte white_cells,
    white_cell white_cells, skin_color skin, skin_colour skin, pain_score pain, paine pain,
    nurse_concern staff_concern, staff_worry staff_concern, parent_concern family_concern, famly_concern family_concern,
    ages age, patient_age age, wt weight, wieght weight, weigth weight, pregnent pregnancy, pregnant pregnancy,
    suspected_infection infection_suspected, infecton_suspected infection_suspected, sepsis infection_suspected,
    headinjury head_injury, head_trauma head_injury, head_injuries head_injury,
    rythm rhythm, rhythmn rhythm, pacemaker paced, pased paced,
    vasodilator vasodilator_last_6_h, vasodilator_last_6h vasodilator_last_6_h, vasodilater_last_6_h vasodilator_last_6_h,
    beta_blocker rate_slowing_medicine, rate_slowing_medicines rate_slowing_medicine, betablocker rate_slowing_medicine,
    baseline_systolic usual_systolic, usual_sys usual_systolic, systolic_usual usual_systolic,
    escalation escalation_plan, escalaton_plan escalation_plan, ceiling_of_care escalation_plan,
    method measurement_method, mesurement_method measurement_method, arm limb, posture body_position, position body_position,
    muac arm_circumference, arm_circumfrence arm_circumference, cuff_size cuff, cuf cuff,
    technique_fault technique_faults, faults technique_faults, tecnique_faults technique_faults`,
  ],
  [
    rules,
    `wide_for_systolic wide_for_this_systolic, wide_for_that_systolic wide_for_this_systolic, mean_to_low mean_too_low,
    low_mean mean_too_low, narrow_and_low low_and_narrow, wide_and_working wide_and_working_hard,
    fall_from_usuall fall_from_usual, rate_doesnt_answer rate_does_not_answer`,
  ],
  [
    measures,
    `pulse_presure pulse_pressure, pressure_pulse pulse_pressure, puls_pressure pulse_pressure, shock_idx shock_index,
    shockindex shock_index, estimated_mean mean_estimate, mean_estimated mean_estimate, expected_diastolc expected_diastolic,
    diastolic_short_fall diastolic_shortfall, total_score score_total, score score_total`,
  ],
  [
    keys,
    `aplies_when applies_when, applieswhen applies_when, applies-when applies_when, apply_when applies_when,
    observation observations, obsevations observations, measure measures, rulez rules, source sources, owner owners,
    reviewby review_by, exactly_one exactly_one_of, otherwize otherwise, protocoll protocol, limit limits`,
  ],
  [
    ruleKeys,
    `becuase because, becasue because, explained explained_by, explanedby explained_by, unles unless, levl level,
    lable null, not_reliable not_reliable_when, sources source, say says`,
  ],
  [
    comparisons,
    `atleast at_least, at-least at_least, at_lest at_least, atmost at_most, betwen between, bellow below, abov above,
    unobtainible unobtainable, unobtanable unobtainable, oneof one_of, knwon known, acepted accepted`,
  ],
  [
    consciousness,
    `confusion new_confusion, confused new_confusion, newconfusion new_confusion, unresponsiv unresponsive, Alert alert`,
  ],
];

const misspellings = recorded.flatMap(([offered, lines]) =>
  lines.split(',').map((line) => {
    const [written = '', meant = ''] = line.trim().split(' ');
    return { written, meant: meant === 'null' ? null : meant, offered };
  }),
);

test('the table holds more than a hundred of them, over every observation', () => {
  expect(misspellings.length).toBeGreaterThan(100);
  const meant = new Set(misspellings.map((each) => each.meant));
  expect(observations.map(({ name }) => name).filter((name) => !meant.has(name))).toEqual([]);
});

test.each(misspellings)('$written was meant for $meant', ({ written, meant, offered }) => {
  expect(nearMiss(written, offered)).toBe(meant);
  expect(nearMiss(written, offered.toReversed())).toBe(meant);
});

const everything = [...observations, ...rules, ...measures, ...keys, ...ruleKeys, ...comparisons];

test.each(
  'banana xyz q foo hello glucose potassium sodium creatinine haemoglobin platelets bilirubin height number value sugar blood patient nurse doctor ward zzz co2 ph gender diagnosis allergies 12345 ___ abcdefghijk'.split(
    ' ',
  ),
)('nothing is near %s', (written) => {
  expect(nearMiss(written, everything)).toBeNull();
});

test.each(['', ' ', '°', '_', 'heart_rate'.repeat(7)])('%j is no name, so it is near nothing', (written) => {
  expect(nearMiss(written, everything)).toBeNull();
});

test('where nothing is offered nothing is near', () => {
  expect(nearMiss('heart_rate', [])).toBeNull();
});

test.each(observations)(
  '$name is nearest to itself, also in capitals, with hyphens, spaces and in the plural',
  ({ name }) => {
    const ways = [name, name.toUpperCase(), name.replaceAll('_', '-'), name.replaceAll('_', ' '), `${name}s`];
    expect(ways.map((way) => nearMiss(way, observations))).toEqual(ways.map(() => name));
  },
);

test.each(observations)('every other name of $name leads to it', ({ name, alsoCalled = [] }) => {
  expect(alsoCalled.map((each) => nearMiss(each, observations))).toEqual(alsoCalled.map(() => name));
});

test('what is not offered is never the answer', () => {
  const wrong = misspellings.filter(({ written, meant, offered }) => {
    const others = offered.filter(({ name }) => name !== meant);
    const answer = nearMiss(written, others);
    return answer !== null && !others.some(({ name }) => name === answer);
  });
  expect(wrong).toEqual([]);
});

test('British and American spelling are one', () => {
  expect(nearMiss('color_of_edema', named('colour_of_oedema other'))).toBe('colour_of_oedema');
  expect(nearMiss('pediatric_hemorrhages', named('paediatric_haemorrhage other'))).toBe(
    'paediatric_haemorrhage',
  );
  expect(nearMiss('stabilized', named('stabilised other'))).toBe('stabilised');
});

test('equally near names: the one with fewer other letters, then the first in the alphabet', () => {
  expect(nearMiss('rate', named('respiratory_rate heart_rate'))).toBe('heart_rate');
  expect(nearMiss('rate', named('slow_rate fast_rate'))).toBe('fast_rate');
  expect(nearMiss('rate', named('fast_rate slow_rate'))).toBe('fast_rate');
});

test('fuzz: the order of the candidates means nothing, and the answer is one of them or null', () => {
  const word = fc.stringMatching(/^[a-z]{1,6}(?:_[a-z0-9]{1,5}){0,2}$/);
  const written = fc.oneof(
    word,
    fc.string({ maxLength: 20 }),
    fc.constantFrom(...misspellings.map((each) => each.written)),
  );
  fc.assert(
    fc.property(written, fc.shuffledSubarray([...everything]), (text, shuffled) => {
      const answer = nearMiss(text, shuffled);
      expect(
        nearMiss(
          text,
          shuffled.toSorted((one, other) => (one.name < other.name ? -1 : 1)),
        ),
      ).toBe(answer);
      expect(answer === null || shuffled.some(({ name }) => name === answer)).toBe(true);
    }),
    { numRuns: 300 },
  );
});
