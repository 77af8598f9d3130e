import { expect, test } from 'vitest';
import { judged, one, stated, type Row } from './table.ts';

const needsA = { needs: ['a'] };
const needsAB = { needs: ['a', 'b'] };

const conditions: readonly Row[] = [
  {
    that: 'between has both its ends, the lower',
    ...needsA,
    protocol: one('{ a: { between: [2, 4] } }'),
    set: { a: 2 },
    rules: { one: 'met' },
  },
  {
    that: 'between has both its ends, the higher',
    ...needsA,
    protocol: one('{ a: { between: [2, 4] } }'),
    set: { a: 4 },
    rules: { one: 'met' },
  },
  {
    that: 'beyond between is beyond',
    ...needsA,
    protocol: one('{ a: { between: [2, 4] } }'),
    set: { a: 5 },
    rules: { one: 'not_met' },
  },
  {
    that: 'below and above leave their edges out',
    ...needsAB,
    protocol: one('{ any: [{ a: { below: 3 } }, { b: { above: 1.5 } }] }'),
    set: { a: 3, b: 1.5 },
    rules: { one: 'not_met' },
  },
  {
    that: 'at_most has its edge',
    needs: ['b'],
    protocol: one('{ b: { at_most: 1.5 } }'),
    set: { b: 1.5 },
    rules: { one: 'met' },
  },
  {
    that: 'several keys mean and',
    ...needsAB,
    protocol: one('{ a: { at_least: 2, below: 5 }, b: { above: 1 } }'),
    set: { a: 4, b: 1 },
    rules: { one: 'not_met' },
  },
  {
    that: 'none holds when no part does',
    ...needsAB,
    protocol: one('{ none: [{ a: { at_least: 4 } }, { b: { at_least: 2 } }] }'),
    set: { a: 3, b: 1 },
    rules: { one: 'met' },
  },
  {
    that: 'none of something missing is undecided',
    ...needsAB,
    protocol: one('{ none: [{ a: { at_least: 4 } }, { b: { at_least: 2 } }] }'),
    set: { a: 3 },
    rules: { one: 'undecided' },
  },
  {
    that: 'at_least_of is met by enough that are sure',
    needs: ['a', 'b', 'f'],
    protocol: one(
      '{ at_least_of: { count: 2, of: [{ a: { at_least: 4 } }, { b: { at_least: 2 } }, { f: { is: yes } }] } }',
    ),
    set: { a: 5, b: 2.5 },
    rules: { one: 'met' },
  },
  {
    that: 'at_least_of waits for what could be enough',
    needs: ['a', 'b', 'f'],
    protocol: one(
      '{ at_least_of: { count: 2, of: [{ a: { at_least: 4 } }, { b: { at_least: 2 } }, { f: { is: yes } }] } }',
    ),
    set: { a: 5, b: 1 },
    rules: { one: 'undecided' },
  },
  {
    that: 'at_least_of is not met when too few are left',
    needs: ['a', 'b', 'f'],
    protocol: one(
      '{ at_least_of: { count: 2, of: [{ a: { at_least: 4 } }, { b: { at_least: 2 } }, { f: { is: yes } }] } }',
    ),
    set: { a: 1, b: 1 },
    rules: { one: 'not_met' },
  },
  {
    that: 'one of all choices holds whichever it is',
    needs: ['c'],
    protocol: one('{ c: { one_of: [red, green, blue] } }'),
    set: {},
    rules: { one: 'met' },
  },
  {
    that: 'one of some choices waits',
    needs: ['c'],
    protocol: one('{ c: { one_of: [red, green] } }'),
    set: {},
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'of several, one of them must be in',
    needs: ['s'],
    protocol: one('{ s: { one_of: [x] } }'),
    set: { s: ['x', 'z'] },
    rules: { one: 'met' },
  },
  {
    that: 'none of several is a value',
    needs: ['s'],
    protocol: one('{ s: { one_of: [x, z] } }'),
    set: { s: [] },
    rules: { one: 'not_met' },
  },
  {
    that: 'a missing several may be empty',
    needs: ['s'],
    protocol: one('{ s: { one_of: [x, z] } }'),
    set: {},
    rules: { one: 'undecided' },
  },
  {
    that: 'an observation stands on the right too',
    ...needsAB,
    protocol: one('{ a: { at_least: b } }'),
    set: { a: 3 },
    rules: { one: 'met' },
  },
  {
    that: 'a limit stands on the right',
    ...needsA,
    protocol: `limits: { floor: { value: 4 } }\n${one('{ a: { below: floor } }')}`,
    set: { a: 4 },
    rules: { one: 'not_met' },
  },
  {
    that: 'a limit that was changed for the patient holds',
    ...needsA,
    protocol: `limits: { floor: { value: 4, between: [2, 5] } }\n${one('{ a: { below: floor } }')}`,
    set: { a: 4, patient: { limits: { floor: { value: 5, by: 'Dr Ash' } } } },
    rules: { one: 'met' },
  },
  {
    that: 'what holds either way is met',
    ...needsA,
    protocol: one('{ any: [{ a: { below: 4 } }, { a: { at_least: 4 } }] }'),
    set: {},
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'what cannot hold is not met',
    ...needsA,
    protocol: one('{ all: [{ a: { below: 3 } }, { a: { above: 4 } }] }'),
    set: {},
    rules: { one: 'not_met' },
    level: 'low low settled',
  },
];

test.each(conditions)('conditions: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
