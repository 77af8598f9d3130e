import { expect, test } from 'vitest';
import { clock, judged, morning, one, stated, type Row } from './table.ts';

const kept = one('{ kept: { at_least: 4 }, f: { is: yes } }');
const needs = { needs: ['kept', 'f'] };
const pair = one('{ pair: { at_least: 4 }, f: { is: yes } }');

const earlier: readonly Row[] = [
  {
    that: 'an earlier value stands in while it is good, but settles nothing',
    ...needs,
    protocol: kept,
    set: morning({ '08:00': { kept: 5 }, '09:00': { f: true } }),
    rules: { one: 'met' },
    level: 'mid mid open',
  },
  {
    that: 'a minute later it is missing',
    ...needs,
    protocol: kept,
    set: morning({ '08:00': { kept: 5 }, '09:01': { f: true } }),
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'an earlier value never settles a lower level',
    ...needs,
    protocol: kept,
    set: morning({ '08:00': { kept: 1 }, '09:00': { f: true } }),
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'the latest earlier value stands in',
    ...needs,
    protocol: kept,
    set: morning({ '08:00': { kept: 5 }, '08:30': { kept: 1 }, '09:00': { f: true } }),
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'an earlier value that only helps raises too',
    needs: ['f'],
    helps: ['kept'],
    protocol: kept,
    set: morning({ '08:00': { kept: 5 }, '09:00': { f: true } }),
    rules: { one: 'met' },
    level: 'mid mid open',
  },
  {
    that: 'an earlier value that stands in is known',
    ...needs,
    protocol: one('{ kept: { known: yes }, f: { is: yes } }'),
    set: morning({ '08:00': { kept: 5 }, '09:00': { f: true } }),
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'one may be unobtainable now and known from earlier',
    ...needs,
    protocol: one('{ kept: { known: yes, unobtainable: yes, above: 3 }, f: { is: yes } }'),
    set: morning({ '08:00': { kept: 5 }, '09:00': { f: true, kept: { unobtainable: true } } }),
    rules: { one: 'met' },
    level: 'mid mid open',
  },
  {
    that: 'without good_for nothing stands in',
    needs: ['a', 'f'],
    protocol: one('{ a: { above: 3 }, f: { is: yes } }'),
    set: morning({ '08:00': { a: 5 }, '09:00': { f: true } }),
    rules: { one: 'undecided' },
  },
  {
    that: 'an earlier exception counts, and settles nothing',
    needs: ['a', 'g'],
    protocol: one('{ a: { above: 3 } }', ', unless: { when: { g: { is: yes } } }'),
    set: morning({ '08:00': { g: true }, '09:00': { a: 5 } }),
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'an earlier explanation lowers what is raised, not what could be',
    needs: ['a', 'g'],
    protocol:
      'rules: [{ rule: one, when: { a: { above: 3 } }, explained_by: { when: { g: { is: yes } }, says: So., level: mid }, level: high }]',
    set: morning({ '08:00': { g: true }, '09:00': { a: 5 } }),
    rules: { one: 'met explained' },
    level: 'mid high open',
  },
  {
    that: 'a present value counts while it is good',
    ...needs,
    protocol: one('{ kept: { above: 3 } }'),
    set: morning({ '08:00': { kept: 5 } }, { at: clock('09:00') }),
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'afterwards it is missing',
    ...needs,
    protocol: one('{ kept: { above: 3 } }'),
    set: morning({ '08:00': { kept: 5 } }, { at: clock('09:01') }),
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'without good_for a present value is good for its moment',
    needs: ['a'],
    protocol: one('{ a: { above: 3 } }'),
    set: morning({ '08:00': { a: 5 } }, { at: clock('08:01') }),
    rules: { one: 'undecided' },
  },
  {
    that: 'what comes after the evaluation time is not read',
    needs: ['kept'],
    protocol: one('{ kept: { above: 3 } }'),
    set: morning({ '08:00': { kept: 1 }, '09:00': { kept: 5 } }, { at: clock('08:30') }),
    rules: { one: 'not_met' },
    level: 'low low settled',
  },
  {
    that: 'times of two offsets are one instant',
    needs: ['a', 'f'],
    protocol: one('{ a: { above: 3 }, f: { is: yes } }'),
    set: {
      sets: [
        { at: '2026-03-02T13:45:00+05:45', a: 5 },
        { at: '2026-03-02T08:00:00Z', f: true },
      ],
    },
    rules: { one: 'met' },
  },
  {
    that: 'the order of the sets means nothing',
    needs: ['a'],
    protocol: one('{ a: { above: 3 } }'),
    set: morning({ '09:00': { a: 5 }, '08:00': { a: 1 } }),
    rules: { one: 'met' },
  },
  {
    that: 'a group comes from the set that speaks of it: together',
    needs: ['pair', 'other', 'f'],
    protocol: pair,
    set: morning({ '08:00': { pair: 5, other: 2 }, '09:00': { f: true } }),
    rules: { one: 'met' },
    level: 'mid mid open',
  },
  {
    that: 'a group comes from the set that speaks of it: not one from each',
    needs: ['pair', 'other', 'f'],
    protocol: `measures: { m: { formula: pair - other } }\n${pair}`,
    set: morning({ '08:00': { pair: 5, other: 2 }, '09:00': { other: 3, f: true } }),
    rules: { one: 'undecided' },
    measures: { m: '-3 3' },
  },
  {
    that: 'a group comes from the latest earlier set that speaks of it',
    needs: ['pair', 'other', 'f'],
    protocol: `measures: { m: { formula: pair - other } }\n${pair}`,
    set: morning({ '08:00': { pair: 5, other: 2 }, '08:30': { other: 3 }, '09:00': { f: true } }),
    rules: { one: 'undecided' },
    measures: { m: '-3 3' },
  },
  {
    that: 'a group comes from the present set when that says anything of it, even unobtainable',
    needs: ['pair', 'other', 'f'],
    protocol: `measures: { m: { formula: pair - other } }\n${pair}`,
    set: morning({ '08:00': { pair: 5, other: 2 }, '09:00': { other: { unobtainable: true }, f: true } }),
    rules: { one: 'undecided' },
    measures: { m: '-6 6' },
  },
];

test.each(earlier)('earlier values: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
