import { expect, test } from 'vitest';
import { judged, one, stated, type Row } from './table.ts';

const four = one('{ a: { at_least: 4 } }');
const needsA = { needs: ['a'] };

const values: readonly Row[] = [
  {
    that: 'a value on the edge of at_least meets it',
    ...needsA,
    protocol: four,
    set: { a: 4 },
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'a value one step below does not',
    ...needsA,
    protocol: four,
    set: { a: 3 },
    rules: { one: 'not_met' },
    level: 'low low settled',
  },
  {
    that: 'missing is never normal',
    ...needsA,
    protocol: four,
    set: {},
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'a range across the edge decides nothing',
    ...needsA,
    protocol: four,
    set: { a: { low: 3, high: 5 } },
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'a range above the edge decides',
    ...needsA,
    protocol: four,
    set: { a: { low: 4, high: 6 } },
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'with low alone the value is the high end',
    ...needsA,
    protocol: four,
    set: { a: { value: 5, low: 3 } },
    rules: { one: 'undecided' },
  },
  {
    that: 'with high alone the value is the low end',
    ...needsA,
    protocol: four,
    set: { a: { value: 5, high: 6 } },
    rules: { one: 'met' },
  },
  {
    that: 'low without a value reaches to the top',
    ...needsA,
    protocol: four,
    set: { a: { low: 4 } },
    rules: { one: 'met' },
  },
  {
    that: 'high without a value reaches to the bottom',
    ...needsA,
    protocol: four,
    set: { a: { high: 4 } },
    rules: { one: 'undecided' },
  },
  {
    that: 'above the device is one step more, and known',
    ...needsA,
    protocol: four,
    set: { a: { above_device: 3 } },
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'above the device reaches to the top',
    ...needsA,
    protocol: four,
    set: { a: { above_device: 2 } },
    rules: { one: 'undecided' },
  },
  {
    that: 'below the device is one step less',
    ...needsA,
    protocol: four,
    set: { a: { below_device: 4 } },
    rules: { one: 'not_met' },
    level: 'low low settled',
  },
  {
    that: 'what is impossible counts as missing',
    ...needsA,
    protocol: four,
    set: { a: 7 },
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'halves round away from zero, upwards',
    ...needsA,
    protocol: four,
    set: { a: 3.5 },
    rules: { one: 'met' },
  },
  {
    that: 'halves round away from zero, downwards',
    needs: ['d'],
    protocol: one('{ d: { at_most: -3 } }'),
    set: { d: -2.5 },
    rules: { one: 'met' },
  },
  {
    that: 'less than a half rounds back',
    ...needsA,
    protocol: four,
    set: { a: 3.4 },
    rules: { one: 'not_met' },
  },
  {
    that: 'true and false are yes and no',
    needs: ['f', 'g'],
    protocol: one('{ f: { is: yes }, g: { is: no } }'),
    set: { f: true, g: false },
    rules: { one: 'met' },
  },
];

const nothings: readonly Row[] = [
  {
    that: 'unobtainable can be asked, and is missing',
    ...needsA,
    protocol:
      'rules: [{ rule: one, when: { a: { unobtainable: yes } }, level: high }, { rule: two, when: { a: { at_least: 4 } }, level: mid }]',
    set: { a: { unobtainable: 'cold' } },
    rules: { one: 'met', two: 'undecided' },
    level: 'high high settled',
  },
  {
    that: 'declined is missing and is not unobtainable',
    ...needsA,
    protocol:
      'rules: [{ rule: one, when: { a: { unobtainable: yes } }, level: high }, { rule: two, when: { a: { at_least: 4 } }, level: mid }]',
    set: { a: { declined: true } },
    rules: { one: 'not_met', two: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'a range is known',
    ...needsA,
    protocol: one('{ a: { known: yes } }'),
    set: { a: { low: 1, high: 2 } },
    rules: { one: 'met' },
  },
  {
    that: 'what was declined is not known',
    ...needsA,
    protocol: one('{ a: { known: no } }'),
    set: { a: { declined: true } },
    rules: { one: 'met' },
  },
  {
    that: 'known is a fact: no completion changes it',
    ...needsA,
    protocol: one('{ a: { known: yes } }'),
    set: {},
    rules: { one: 'not_met' },
    level: 'low low settled',
  },
];

test.each(values)('values: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
test.each(nothings)('nothing: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
