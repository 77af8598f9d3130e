import { expect, test } from 'vitest';
import { protocolReader } from '../../src/index.ts';
import { askable, bundledNames, lessonNames } from '../bundled.ts';

test('what is needed comes in the order in which it is taken: the patient, breathing, rate, pressure, temperature', () => {
  const { form } = protocolReader(askable('pressure_reading'));
  expect(form.needs.map(({ heading, fields }) => [heading, fields.map(({ name }) => name)])).toEqual([
    ['Look and listen', ['consciousness']],
    ['Breathing', ['respiratory_rate']],
    ['Rate', ['heart_rate']],
    ['Pressure', ['systolic', 'diastolic']],
    ['Temperature', ['temperature']],
  ]);
  expect(form.patient.slice(0, 2).map(({ name }) => name)).toEqual(['age', 'pregnancy']);
  expect(form.limits.map(({ name, between }) => [name, between])).toEqual([
    ['systolic_floor', '80 mmHg to 100 mmHg'],
    ['mean_floor', '55 mmHg to 85 mmHg'],
  ]);
});

test.each([...bundledNames, ...lessonNames])(
  '%s: everything that it reads can be entered, and once',
  (name) => {
    const compiled = askable(name);
    const { form } = protocolReader(compiled);
    const groups = [...form.needs, ...form.helps].flatMap(({ fields }) => fields);
    const fields = [...groups, ...form.patient].map((field) => field.name);
    expect(fields.toSorted()).toEqual([...compiled.protocol.observations.keys()].toSorted());
  },
);
