import { expect, test } from 'vitest';
import { outcome, ruleOf, small, type Given } from './ask.ts';

const rules: Readonly<Record<string, string>> = {
  wide: '{ shortfall: { at_least: 14 } }',
  long_since: '{ since_oxygen: { above: 60 } }',
  hours: '{ hours_since: { above: 1 } }',
  low_for_long: '{ low_for: { at_least: 20 } }',
  below_average: '{ systolic: { below: usual } }',
  peaked: '{ peak: { above: 200 } }',
  taken_often: '{ many: { at_least: 2 } }',
  low: '{ systolic: { at_most: floor } }',
  quiet:
    '{ none: [{ heart_rate: { above: 90 } }, { consciousness: { one_of: [pain, unresponsive] } }, { technique_faults: { one_of: [talking, moving] } }] }',
  two: '{ at_least_of: { count: 2, of: [{ heart_rate: { above: 90 } }, { temperature: { above: 38 } }, { systolic: { below: 90 } }] } }',
  not_two:
    '{ none: [{ at_least_of: { count: 2, of: [{ heart_rate: { above: 90 } }, { temperature: { above: 38 } }] } }] }',
  gone: '{ systolic: { unobtainable: yes } }',
  no_lactate: '{ lactate: { known: no } }',
  poor: '{ points: { at_least: 2 } }',
  ordered: '{ diastolic: { below: systolic } }',
  less: '{ five_less: { below: systolic } }',
  faults: '{ technique_faults: { one_of: [talking, moving] } }',
  between: '{ oxygen_saturation: { between: [88, 92] } }',
  pressed: '{ any: [{ systolic: { above: 90 } }, { heart_rate: { above: 130 } }] }',
};

const compiled = small(`
observations:
  needs: [systolic, diastolic, heart_rate, consciousness, temperature, oxygen_saturation]
  helps: [on_oxygen, technique_faults, lactate, limb]
standing: { oxygen_scale: { if_not_stated: scale_1 } }
limits: { floor: { title: lowest accepted systolic, value: 90, unit: mmHg, between: [70, 120] } }
measures:
  expected: { title: expected diastolic, curve: { of: systolic, points: [[80, 53], [100, 66], [125, 82]], beyond: missing }, unit: mmHg }
  shortfall: { title: shortfall, formula: expected - diastolic, unit: mmHg }
  five_less: { title: five less, formula: systolic - diastolic + 35, unit: mmHg }
  since_oxygen: { title: time since oxygen, minutes_since: on_oxygen, over: 4 h, unit: min }
  hours_since: { title: hours since oxygen, formula: since_oxygen, unit: h }
  low_for: { title: time with a low systolic, held: { systolic: { below: 100 } }, over: 4 h, unit: min }
  usual: { title: average systolic, average: systolic, over: 4 h, present_set: left_out, unit: mmHg }
  peak: { title: peak, highest: systolic, over: 4 h, where: { limb: { is: left_arm } }, unit: mmHg }
  many: { title: number of sets, count: systolic, over: 4 h }
  points_1: { title: points on scale 1, score: { oxygen_saturation: [{ at_most: 91, points: 3 }, { points: 0 }] } }
  points_2: { title: points on scale 2, score: { oxygen_saturation: [{ at_most: 83, points: 3 }, { points: 0 }], on_oxygen: { yes: 2, no: 0 } } }
  points: { title: points, choose: [{ when: { oxygen_scale: { is: scale_2 } }, use: points_2 }, { use: points_1 }] }
rules:
${Object.entries(rules)
  .map(
    ([name, when]) =>
      `  - { rule: ${name}, title: ${name}, when: ${when}, says: It suggests more., source: [test] }`,
  )
  .join('\n')}
`);

const ranges: Given = {
  systolic: { value: 104, low: 96, high: 104 },
  diastolic: 40,
  heart_rate: 95,
  consciousness: 'alert',
  temperature: 37,
  oxygen_saturation: { above_device: 95 },
  technique_faults: ['talking', 'full_bladder'],
};

const series: Given = {
  patient: {
    limits: { floor: { value: 110, by: 'Dr Ash' } },
    standing: { oxygen_scale: { value: 'scale_2', by: 'Dr Ash' } },
  },
  sets: [
    { at: '2026-03-02T11:00:00Z', systolic: 98, on_oxygen: true, limb: 'left_arm' },
    { at: '2026-03-02T11:30:00Z', systolic: 97, on_oxygen: false, limb: 'left_arm' },
    {
      at: '2026-03-02T12:00:00Z',
      systolic: 60,
      diastolic: 40,
      heart_rate: 80,
      consciousness: 'alert',
      temperature: 38,
      oxygen_saturation: 82,
      technique_faults: [],
      lactate: 1,
      limb: 'left_arm',
      on_oxygen: false,
    },
  ],
};

test.each<[string, Given, string, string | readonly string[]]>([
  [
    'a range that is above throughout',
    ranges,
    'wide',
    'shortfall 23.4 to 28.56 mmHg (expected diastolic 63.4 to 68.56 − diastolic 40) is above 14 throughout; the rule asks for 14 or more',
  ],
  [
    'a range beside a limit',
    ranges,
    'low',
    'systolic pressure 96 to 104 mmHg is above the limit of 90 (lowest accepted systolic) throughout; the rule asks for 90 or less',
  ],
  [
    'a number beside a range',
    ranges,
    'ordered',
    'diastolic pressure 40 mmHg is below the systolic pressure, 96 to 104; the rule asks for less than that',
  ],
  [
    'two ranges that share what is not known',
    ranges,
    'less',
    'five less 91 to 99 mmHg (systolic 96 to 104 − diastolic 40 + 35) is always below the systolic pressure, 96 to 104, whatever the values are inside their ranges; the rule asks for less than that',
  ],
  [
    'a bound of a device',
    ranges,
    'between',
    'oxygen saturation 96 to 100 % is above 92 throughout; the rule asks for 92 or less',
  ],
  [
    'only the part of any that holds',
    ranges,
    'pressed',
    'systolic pressure 96 to 104 mmHg is above 90 throughout; the rule asks for more than 90',
  ],
  [
    'never',
    ranges,
    'long_since',
    'time since oxygen never (looked for over the last 4 h: on oxygen) is above every number; the rule asks for more than 60',
  ],
  [
    'never, worked on',
    ranges,
    'hours',
    'hours since oxygen never (time since oxygen never) is above every number; the rule asks for more than 1',
  ],
  [
    'minutes in another unit',
    series,
    'hours',
    'hours since oxygen 1 h (time since oxygen 60) is exactly 1; the rule asks for more than 1',
  ],
  [
    'a run that held',
    series,
    'low_for_long',
    'time with a low systolic 60 min (without a break, looked for over the last 4 h) is 40 above 20; the rule asks for 20 or more',
  ],
  [
    'an average on the right side',
    series,
    'below_average',
    'systolic pressure 60 mmHg is 37.5 below the average systolic, 97.5; the rule asks for less than 97.5',
  ],
  [
    'the highest of a window',
    series,
    'peaked',
    'peak 98 mmHg (the highest systolic pressure of the last 4 h) is 102 below 200; the rule asks for more than 200',
  ],
  [
    'a count',
    series,
    'taken_often',
    'number of sets 3 (counted over the last 4 h: systolic pressure) is 1 above 2; the rule asks for 2 or more',
  ],
  [
    'a limit that was changed',
    series,
    'low',
    'systolic pressure 60 mmHg is 50 below the limit of 110 (lowest accepted systolic, changed for this patient); the rule asks for 110 or less',
  ],
  [
    'the entry that was chosen',
    series,
    'poor',
    'points 3 (here: points on scale 2: 3) is 1 above 2; the rule asks for 2 or more',
  ],
  [
    'what none of them is',
    series,
    'quiet',
    [
      'heart rate 80 /min is 10 below 90; the rule asks for 90 or less',
      'consciousness: alert; the rule asks for anything but responds to pain only or unresponsive',
      'faults of technique: none; the rule asks for none of talking / moving or shivering',
    ],
  ],
  [
    'what one of them is',
    ranges,
    'quiet',
    [
      'heart rate 95 /min is 5 above 90; the rule asks for 90 or less',
      'faults of technique: talking and full bladder; the rule asks for none of talking / moving or shivering',
    ],
  ],
  [
    'too few of several',
    ranges,
    'two',
    [
      'at most 1 of 3 criteria can hold; the rule asks for 2 or more',
      'temperature 37 °C is 1 below 38; the rule asks for more than 38',
      'systolic pressure 96 to 104 mmHg is above 90 throughout; the rule asks for less than 90',
    ],
  ],
  [
    'too few of several, as is asked for',
    ranges,
    'not_two',
    [
      'at most 1 of 2 criteria can hold; the rule asks for fewer than 2',
      'temperature 37 °C is 1 below 38; the rule asks for 38 or less',
    ],
  ],
  [
    'choices among others',
    ranges,
    'faults',
    'faults of technique: talking and full bladder; the rule asks for at least one of talking / moving or shivering',
  ],
  ['what is not known', ranges, 'no_lactate', 'lactate is not known'],
  ['what is known', series, 'no_lactate', 'lactate is known'],
  ['what could be obtained', series, 'gone', 'nobody reported that systolic pressure could not be obtained'],
  [
    'what could not be obtained',
    { systolic: { unobtainable: 'cold hands' } },
    'gone',
    'systolic pressure was tried and could not be obtained (cold hands)',
  ],
  [
    'what could not be obtained, without a reason',
    { systolic: { unobtainable: true } },
    'gone',
    'systolic pressure was tried and could not be obtained',
  ],
])('%s', (_, set, rule, says) => {
  expect(ruleOf(outcome(compiled, set), rule).decided_by).toEqual([says].flat());
});

test.each<[string, Given, string, string]>([
  [
    'a curve beyond its points',
    series,
    'wide',
    'expected diastolic has no value for a systolic pressure of 60 (the curve runs from 80 to 125)',
  ],
  [
    'a window without earlier sets',
    ranges,
    'below_average',
    'average systolic has no value: it needs an earlier value of systolic pressure from the last 4 h',
  ],
  [
    'a window whose condition nobody answered',
    ranges,
    'peaked',
    'peak has no value: it needs a value of systolic pressure from the last 4 h, taken as its condition asks',
  ],
])('%s has no value, and the rule is undecided', (_, set, rule, says) => {
  expect(ruleOf(outcome(compiled, set), rule)).toMatchObject({ state: 'undecided', no_value: [says] });
});

test('measures tell a value, a range, that they have none, or never', () => {
  expect(outcome(compiled, series).measures).toMatchObject({
    expected: { missing: true },
    usual: { value: 97.5, unit: 'mm[Hg]' },
    low_for: { value: 60, unit: 'min' },
  });
  const { measures } = outcome(compiled, ranges);
  expect(measures['since_oxygen']).toEqual({ never: true });
  expect(measures['shortfall']).toEqual({ low: 23.4, high: 28.56, unit: 'mm[Hg]' });
  expect(measures['points_2']).toEqual({ low: 0, high: 2, waits_for: ['on_oxygen'] });
  expect(outcome(compiled, { systolic: { low: 70, high: 90 } }).measures['expected']).toEqual({
    low: 53,
    high: 59.5,
    unit: 'mm[Hg]',
    may_be_missing: true,
  });
});

test('a time that may be never says from when', () => {
  const sets = [{ at: '2026-03-02T12:00:00Z', on_oxygen: { unobtainable: true } }];
  const maybe = small(`
observations: { needs: [on_oxygen] }
measures: { since: { title: time since oxygen, minutes_since: on_oxygen, over: 1 h, unit: min } }
rules:
  - { rule: long, title: Long, when: { since: { above: 60 } }, says: It suggests more., source: [test] }
`);
  expect(outcome(maybe, { sets }).measures['since']).toEqual({
    low: 0,
    unit: 'min',
    never: true,
  });
});
