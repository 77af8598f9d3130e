import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { reservedWords } from '../../src/protocol/gather-names.ts';
import { ageScale } from '../../src/vocabulary/age.ts';
import type { ObservationEntry } from '../../src/vocabulary/observation.ts';
import { toSteps } from '../../src/vocabulary/quantity.ts';
import { wordsOf } from '../../src/vocabulary/words.ts';
import { readVitalSigns, vitalSignsFile } from './vital-signs.ts';

const { dictionary, findings } = readVitalSigns();
const entries = [...dictionary.observations.values()];
const files = Object.entries(vitalSignsFile.observations);
const numbers = entries.filter(({ kind }) => kind === 'number');

/** What must be there, with its kind; `*` marks what stands until it is changed. */
const wanted = `
  systolic number, diastolic number, mean_pressure number, line_systolic number, line_diastolic number,
  line_mean number, heart_rate number, respiratory_rate number,
  oxygen_saturation number, on_oxygen yes_no, oxygen_flow number, oxygen_scale choice *, temperature number,
  consciousness choice, glasgow_coma_total number, urine_output number, capillary_refill number, lactate number,
  white_cells number, skin choice, pain number, staff_concern yes_no, family_concern yes_no, age number *, weight number *,
  pregnancy choice *, infection_suspected yes_no, head_injury yes_no, rhythm choice, paced yes_no,
  vasodilator_last_6_h yes_no, rate_slowing_medicine yes_no, usual_systolic number *, escalation_plan choice *,
  measurement_method choice, limb choice, body_position choice, arm_circumference number, cuff choice,
  technique_faults several`
  .split(',')
  .map((line) => line.trim().split(/\s+/) as [string, string, string?]);

/** What describes how one pressure was taken: it never stands in for another set. */
const ofOnePressure = ['measurement_method', 'limb', 'body_position', 'cuff', 'technique_faults'];

function entry(name: string): ObservationEntry {
  const found = dictionary.observations.get(name);
  if (!found) throw new Error(`no ${name}`);
  return found;
}

const inSteps = (name: string, value: number): number =>
  toSteps(new Fraction(String(value)), null, entry(name)).steps;

/** Whether an adult's value lies inside a range. */
function adult(name: string, value: number): { possible: boolean; plausible: boolean } {
  const steps = inSteps(name, value);
  const inside = (key: 'possible' | 'plausible'): boolean => {
    const band = entry(name)[key].at(-1);
    return band !== undefined && band.low <= steps && steps <= band.high;
  };
  return { possible: inside('possible'), plausible: inside('plausible') };
}

test('the file has the shape of its schema', () => {
  const schema = JSON.parse(
    readFileSync(new URL('../../schema/dictionary.schema.json', import.meta.url), 'utf8'),
  ) as object;
  const validate = new Ajv2020({ allErrors: true, strict: false }).compile(schema);
  validate(vitalSignsFile);
  expect(validate.errors ?? []).toEqual([]);
  expect(validate({ ...vitalSignsFile, observations: { systolic: { title: 'systolic' } } })).toBe(false);
});

test('its reader finds nothing wrong', () => {
  expect(findings).toEqual([]);
  expect(dictionary.name).toBe('vital_signs');
  expect(dictionary.observations.size).toBe(files.length);
});

test.each(wanted)('%s is there as a %s', (name, kind, standing) => {
  expect(entry(name)).toMatchObject({ name, kind, standing: standing === '*' });
});

test('nothing else is there', () => {
  expect([...dictionary.observations.keys()].toSorted()).toEqual(wanted.map(([name]) => name).toSorted());
});

test.each(files)('%s names its sources, and they are declared', (_, { source }) => {
  expect(source?.length).toBeGreaterThan(0);
  expect(Object.keys(vitalSignsFile.sources ?? {})).toEqual(expect.arrayContaining([...(source ?? [])]));
});

test('every source is used and has a place to look it up, or says that it was not looked up', () => {
  const used = new Set(files.flatMap(([, { source }]) => source ?? []));
  expect([...used].toSorted()).toEqual(Object.keys(vitalSignsFile.sources ?? {}).toSorted());
  const unnamed = Object.entries(vitalSignsFile.sources ?? {}).filter(
    ([name, { cite, link, from_memory: memory }]) =>
      name !== 'common_practice' &&
      link === undefined &&
      memory !== 'yes' &&
      !/\b(?:19|20)[0-9]{2};/.test(cite),
  );
  expect(unnamed).toEqual([]);
});

test.each(numbers)('the number $name says all that a number says', (number) => {
  expect(number.possible.length).toBeGreaterThan(0);
  expect(number.plausible.length).toBeGreaterThan(0);
  expect(typeof number.ordinary).toBe('number');
  expect(number.stepsPerUnit.compare(0)).toBe(1);
});

test.each(entries)(
  '$name is good for a while, stands, or belongs to its own set alone',
  ({ name, goodFor, standing }) => {
    expect(goodFor !== null).toBe(!standing && !ofOnePressure.includes(name));
  },
);

test.each(entries)(
  '$name has a title, what is ordinary, and other names',
  ({ title, short, ordinary, alsoCalled }) => {
    expect([title, short].every((words) => words.length > 0)).toBe(true);
    expect(ordinary).not.toBeNull();
    expect(alsoCalled.length).toBeGreaterThan(2);
  },
);

test('the ordinary adult is at rest and well', () => {
  const shown = Object.fromEntries(files.map(([name, { ordinary }]) => [name, ordinary]));
  expect(shown).toMatchObject({
    systolic: 120,
    diastolic: 80,
    mean_pressure: 93,
    heart_rate: 72,
    respiratory_rate: 16,
  });
  expect(shown).toMatchObject({
    oxygen_saturation: 97,
    on_oxygen: 'no',
    temperature: 36.8,
    consciousness: 'alert',
  });
  expect(shown).toMatchObject({
    glasgow_coma_total: 15,
    pain: 0,
    pregnancy: 'not_pregnant',
    technique_faults: [],
  });
  const ofYesAndNo = entries.filter(({ kind }) => kind === 'yes_no').map(({ ordinary }) => ordinary);
  expect(ofYesAndNo).toEqual(ofYesAndNo.map(() => ['no']));
});

test.each([
  ['systolic', 42, { possible: true, plausible: false }],
  ['systolic', 90, { possible: true, plausible: true }],
  ['systolic', 0, { possible: false, plausible: false }],
  ['systolic', 1040, { possible: false, plausible: false }],
  ['diastolic', 0, { possible: true, plausible: false }],
  ['diastolic', 48, { possible: true, plausible: true }],
  ['heart_rate', 0, { possible: true, plausible: false }],
  ['heart_rate', 98, { possible: true, plausible: true }],
  ['heart_rate', 400, { possible: false, plausible: false }],
  ['respiratory_rate', 0, { possible: true, plausible: false }],
  ['respiratory_rate', 24, { possible: true, plausible: true }],
  ['temperature', 36, { possible: true, plausible: true }],
  ['temperature', 35, { possible: true, plausible: true }],
  ['temperature', 98.1, { possible: false, plausible: false }],
  ['temperature', 46.5, { possible: true, plausible: false }],
  ['oxygen_saturation', 101, { possible: false, plausible: false }],
  ['oxygen_saturation', 60, { possible: true, plausible: false }],
  ['glasgow_coma_total', 2, { possible: false, plausible: false }],
  ['glasgow_coma_total', 3, { possible: true, plausible: true }],
])('%s %d in an adult', (name, value, ranges) => {
  expect(adult(name, value)).toEqual(ranges);
});

test.each(['systolic', 'diastolic', 'heart_rate', 'respiratory_rate'])('%s has bands of ages', (name) => {
  const { plausible } = entry(name);
  expect(plausible.length).toBeGreaterThan(2);
  expect(plausible.at(-1)?.ageBelow).toBeNull();
});

test('a newborn with a rate of 150 and 45 breaths is not questioned; an adult with 60 breaths is', () => {
  const newborn = (name: string, value: number): boolean => {
    const band = entry(name).plausible[0];
    return band !== undefined && band.low <= inSteps(name, value) && inSteps(name, value) <= band.high;
  };
  expect([newborn('heart_rate', 150), newborn('respiratory_rate', 45), newborn('systolic', 65)]).toEqual([
    true,
    true,
    true,
  ]);
  expect(adult('respiratory_rate', 60).plausible).toBe(false);
});

test('years, months, weeks and days all fall on the step of age', () => {
  const age = entry('age');
  expect(age.unit).toBe(ageScale.unit);
  expect(age.stepsPerUnit.equals(5844)).toBe(true);
  const days = { y: '365.25', mo: '30.4375', wk: '7', d: '1' };
  for (const each of Object.values(days)) {
    expect(new Fraction(each).div('365.25').mul(age.stepsPerUnit).d).toBe(1n);
  }
});

test('the pressures of the cuff come from one set, those of a line too, and nothing else does', () => {
  const grouped = entries.filter(({ takenWith }) => takenWith !== null);
  expect(grouped.map(({ name, takenWith }) => [name, takenWith])).toEqual([
    ['systolic', 'pressure'],
    ['diastolic', 'pressure'],
    ['mean_pressure', 'pressure'],
    ['line_systolic', 'line_pressure'],
    ['line_diastolic', 'line_pressure'],
    ['line_mean', 'line_pressure'],
  ]);
  expect(new Set(grouped.map(({ goodFor }) => goodFor)).size).toBe(1);
});

test('contradictions: diastolic below systolic, the mean between them', () => {
  expect(dictionary.contradictions).toMatchObject([
    { lower: 'diastolic', higher: 'systolic', mayBeEqual: false },
    { lower: 'diastolic', higher: 'mean_pressure', mayBeEqual: true },
    { lower: 'mean_pressure', higher: 'systolic', mayBeEqual: true },
    { lower: 'line_diastolic', higher: 'line_systolic', mayBeEqual: false },
    { lower: 'line_diastolic', higher: 'line_mean', mayBeEqual: true },
    { lower: 'line_mean', higher: 'line_systolic', mayBeEqual: true },
  ]);
});

test('what is not stated: scale 1 and full treatment; nothing else is assumed', () => {
  const assumed = entries.flatMap(({ name, ifNotStated }) =>
    ifNotStated === null ? [] : [[name, ifNotStated]],
  );
  expect(assumed).toEqual([
    ['oxygen_scale', 'scale_1'],
    ['escalation_plan', 'full_escalation'],
  ]);
});

test('the choices that scores and protocols rely on', () => {
  const choices = (name: string): string[] => entry(name).choices.map(({ choice }) => choice);
  expect(choices('consciousness')).toEqual(['alert', 'new_confusion', 'voice', 'pain', 'unresponsive']);
  expect(choices('pregnancy')).toEqual(['not_pregnant', 'pregnant', 'within_6_weeks_of_birth']);
  expect(choices('oxygen_scale')).toEqual(['scale_1', 'scale_2']);
  expect(entry('consciousness').choices[1]?.meaning).toContain(
    'If it is not known to be old, confusion is new.',
  );
});

test('no observation has a name that the language keeps for itself', () => {
  expect(entries.map(({ name }) => name).filter((name) => reservedWords.has(name))).toEqual([]);
});

test('no other name belongs to two observations', () => {
  const owners = new Map<string, string>();
  const twice = entries.flatMap(({ name, alsoCalled }) =>
    [name, ...alsoCalled].flatMap((each) => {
      const form = wordsOf(each).join('');
      const owner = owners.get(form);
      owners.set(form, name);
      return owner === undefined || owner === name ? [] : [`${each}: ${owner} and ${name}`];
    }),
  );
  expect(twice).toEqual([]);
});

/** LOINC codes and what they mean, as copies of LOINC and of the FHIR R4 vital signs profiles print them. */
const codes: Readonly<Record<string, string>> = {
  '2524-7': 'Lactate [Moles/volume] in Serum or Plasma',
  '29463-7': 'Body weight',
  '30525-0': 'Age',
  '3151-8': 'Inhaled oxygen flow rate',
  '41904-4': 'Blood pressure measurement site',
  '44963-7': 'Capillary refill [Time] of Nail bed',
  '59408-5': 'Oxygen saturation in Arterial blood by Pulse oximetry',
  '6690-2': 'Leukocytes [#/volume] in Blood by Automated count',
  '72514-3': 'Pain severity - 0-10 verbal numeric rating [Score] - Reported',
  '76213-8': 'Invasive Diastolic blood pressure',
  '76214-6': 'Invasive Mean blood pressure',
  '76215-3': 'Invasive Systolic blood pressure',
  '80288-4': 'Level of consciousness AVPU score',
  '82810-3': 'Pregnancy status',
  '8310-5': 'Body temperature',
  '8357-6': 'Blood pressure method',
  '8358-4': 'Blood pressure device Cuff size',
  '8361-8': 'Body position with respect to gravity',
  '8462-4': 'Diastolic blood pressure',
  '8478-0': 'Mean blood pressure',
  '8480-6': 'Systolic blood pressure',
  '8867-4': 'Heart rate',
  '8884-9': 'Heart rate rhythm',
  '9187-6': 'Urine output',
  '9269-2': 'Glasgow coma score total',
  '9279-1': 'Respiratory rate',
};

/** The check digit of a LOINC code, Mod 10: every second digit from the right doubled, digits summed, up to the next ten. */
function checkDigit(digits: string): number {
  const sum = digits
    .split('')
    .toReversed()
    .reduce((total, digit, index) => {
      const value = index % 2 === 0 ? 2 * Number(digit) : Number(digit);
      return total + (value > 9 ? value - 9 : value);
    }, 0);
  return (10 - (sum % 10)) % 10;
}

test('the check digit is the published one', () => {
  expect(checkDigit('12345')).toBe(5);
});

const coded = entries.flatMap(({ name, loinc }) => (loinc === null ? [] : [{ name, loinc }]));

test.each(coded)('$name: $loinc is a LOINC code with its check digit', ({ loinc }) => {
  const [digits = '', check] = loinc.split('-');
  expect(String(checkDigit(digits))).toBe(check);
});

test('every LOINC code is one of those that were looked up, and stands once', () => {
  expect(coded.map(({ loinc }) => loinc).toSorted()).toEqual(Object.keys(codes).toSorted());
});
