import { small } from './ask.ts';

/** Small protocols in which observations meet in every way that the language has. */
export const smallProtocols = {
  'two numbers in one formula': `
observations: { needs: [systolic, diastolic] }
measures:
  gap: { title: gap, formula: systolic - diastolic, unit: mmHg }
  mean: { title: mean, formula: (systolic + 2 * diastolic) / 3, unit: mmHg }
rules:
  - { rule: wide, title: Wide, when: { gap: { above: 60 } }, level: look_again, says: It suggests open vessels., source: [test] }
  - { rule: low, title: Low, when: { mean: { below: 65 } }, level: call_doctor, says: It suggests too little., source: [test] }
`,
  'a product, a quotient and a comparison of two numbers': `
observations: { needs: [systolic, heart_rate], helps: [usual_systolic] }
measures:
  index: { title: index, formula: heart_rate / systolic }
  work: { title: work, formula: heart_rate * systolic / 100 }
rules:
  - { rule: fast, title: Fast, when: { index: { above: 0.9 } }, level: look_again, says: It suggests loss., source: [test] }
  - { rule: hard, title: Hard, when: { work: { at_least: 150 } }, level: look_again, says: It suggests work., source: [test] }
  - { rule: below, title: Below, when: { systolic: { below: usual_systolic } }, level: call_doctor, says: It suggests a fall., source: [test] }
`,
  'curve, choose, first known and a score of both': `
observations: { needs: [systolic, diastolic, on_oxygen, oxygen_saturation], helps: [mean_pressure] }
standing: { oxygen_scale: { if_not_stated: scale_1 } }
measures:
  expected:
    title: expected
    curve: { of: systolic, points: [[80, 53], [100, 66], [125, 82]], beyond: missing }
    unit: mmHg
  shortfall: { title: shortfall, formula: expected - diastolic, unit: mmHg }
  mean: { title: estimate, formula: (systolic + 2 * diastolic) / 3, unit: mmHg }
  best_mean: { title: best mean, first_known: [mean_pressure, mean], unit: mmHg }
  usual_points: { score: { oxygen_saturation: [{ at_most: 91, points: 3 }, { points: 0 }] } }
  other_points: { score: { oxygen_saturation: [{ below: 88, points: 3 }, { at_most: 92, points: 0 }, { points: 2 }] } }
  points:
    choose:
      - { when: { oxygen_scale: { is: scale_2 }, on_oxygen: { is: yes } }, use: other_points }
      - { use: usual_points }
  total: { score: { best_mean: [{ below: 65, points: 3 }, { points: 0 }], on_oxygen: { yes: 2, no: 0 } } }
rules:
  - { rule: wide, title: Wide, when: { shortfall: { at_least: 14 } }, level: look_again, says: It suggests open vessels., source: [test] }
  - { rule: low, title: Low, when: { best_mean: { below: 65 } }, level: call_doctor, says: It suggests too little., source: [test] }
  - { rule: poor, title: Poor, when: { points: { at_least: 2 } }, level: call_doctor, says: It suggests too little., source: [test] }
  - { rule: much, title: Much, when: { total: { at_least: 3 } }, level: emergency_call, says: It suggests much., source: [test] }
`,
  'exceptions, explanations and rules that name rules': `
observations: { needs: [heart_rate, consciousness, temperature], helps: [paced, rate_slowing_medicine, technique_faults] }
rules:
  - rule: fast
    title: Fast
    when: { heart_rate: { above: 90 } }
    unless: { when: { paced: { is: yes } }, says: A pacemaker sets the rate., accepted: For a test. }
    level: look_again
    says: It suggests more.
    source: [test]
  - rule: hot
    title: Hot
    when: { any: [{ temperature: { above: 38 } }, { temperature: { at_most: 36 } }] }
    explained_by: { when: { technique_faults: { one_of: [cold_room, talking] } }, says: The room can do it., level: look_again }
    level: tell_nurse_in_charge
    says: It suggests infection.
    source: [test]
  - rule: both
    title: Both
    when: { all: [{ rule: fast }, { rule: hot }] }
    level: call_doctor
    says: It suggests more than chance.
    source: [test]
  - rule: neither
    title: Neither
    when: { none: [{ rule: fast }, { consciousness: { is: alert } }] }
    level: look_again
    says: It suggests something else.
    source: [test]
  - rule: two_of_three
    title: Two of three
    when: { at_least_of: { count: 2, of: [{ rule: fast }, { rule: hot }, { consciousness: { one_of: [pain, unresponsive] } }] } }
    not_reliable_when: { rate_slowing_medicine: { is: yes } }
    level: call_doctor
    says: It suggests more.
    source: [test]
`,
  'look backs': `
observations: { needs: [systolic], helps: [lactate, on_oxygen] }
measures:
  fall: { title: fall, change: systolic, over: 4 h, present_set: included, unit: mmHg }
  peak: { title: peak, highest: systolic, over: 4 h, present_set: included, unit: mmHg }
  usual_lactate: { title: usual lactate, average: lactate, over: 4 h, present_set: included, unit: mmol/L }
  on_oxygen_for: { title: time on oxygen, held: { on_oxygen: { is: yes } }, over: 4 h, unit: min }
rules:
  - { rule: falling, title: Falling, when: { fall: { at_most: -20 } }, level: call_doctor, says: It suggests a fall., source: [test] }
  - { rule: high, title: High, when: { peak: { at_least: 180 } }, level: look_again, says: It suggests pain., source: [test] }
  - { rule: sour, title: Sour, when: { usual_lactate: { above: 2 } }, level: look_again, says: It suggests too little oxygen., source: [test] }
  - { rule: long, title: Long, when: { on_oxygen_for: { at_least: 20 } }, level: look_again, says: It suggests a need., source: [test] }
`,
  'an age that changes what is possible': `
applies_when: { age: { at_least: 28 d } }
observations: { needs: [respiratory_rate, age] }
rules:
  - { rule: fast, title: Fast, when: { respiratory_rate: { above: 40 } }, level: call_doctor, says: It suggests more., source: [test] }
  - { rule: old, title: Old, when: { age: { at_least: 70 y }, respiratory_rate: { above: 20 } }, level: look_again, says: It suggests more., source: [test] }
`,
} as const;

export type SmallName = keyof typeof smallProtocols;

const made = new Map<SmallName, ReturnType<typeof small>>();

export function smallNamed(name: SmallName): ReturnType<typeof small> {
  const known = made.get(name) ?? small(smallProtocols[name]);
  made.set(name, known);
  return known;
}
