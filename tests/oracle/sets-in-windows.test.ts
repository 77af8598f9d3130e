import { expect, test } from 'vitest';
import { clock, judged, morning, one, stated, type Row } from './table.ts';

const back = (kind: string, when: string, more = ''): string =>
  `measures: { m: { ${kind}, over: 1 h${more} } }\n${one(when)}`;

const conditions: readonly Row[] = [
  {
    that: 'only sets for which where holds are members',
    needs: ['a', 'c'],
    protocol: back('highest: a', '{ m: { at_least: 5 } }', ', where: { c: { is: red } }'),
    set: morning({ '08:15': { a: 4, c: 'red' }, '08:30': { a: 5, c: 'green' }, '09:00': { a: 1, c: 'red' } }),
    rules: { one: 'not_met' },
    measures: { m: '4' },
  },
  {
    that: 'where it may hold the set is perhaps a member',
    needs: ['a', 'c'],
    protocol: back('highest: a', '{ m: { at_least: 5 } }', ', where: { c: { is: red } }'),
    set: morning({ '08:15': { a: 4, c: 'red' }, '08:30': { a: 5 }, '09:00': { a: 1, c: 'red' } }),
    rules: { one: 'undecided' },
    measures: { m: '4 5' },
  },
  {
    that: 'what an earlier set lacks no measurement tells now',
    needs: ['a', 'c'],
    protocol: back('highest: a', '{ m: { at_least: 5 } }', ', where: { c: { is: red } }'),
    set: morning({ '08:15': { a: 4, c: 'red' }, '08:30': { a: 5 }, '09:00': { a: 1, c: 'red' } }),
    level: 'low low settled',
  },
  {
    that: 'what the present set lacks and needs could tell',
    needs: ['a', 'c'],
    protocol: back('highest: a', '{ m: { at_least: 5 } }', ', where: { c: { is: red } }'),
    set: morning({ '08:30': { a: 4, c: 'red' }, '09:00': { a: 5 } }),
    rules: { one: 'undecided' },
    measures: { m: '4 5' },
    level: 'null mid open',
  },
  {
    that: 'no member for sure: perhaps no value',
    needs: ['a', 'c'],
    protocol: back('highest: a', '{ m: { at_least: 5 } }', ', where: { c: { is: red } }'),
    set: morning({ '08:30': { a: 5 }, '09:00': { a: 6, c: 'green' } }),
    rules: { one: 'undecided' },
    measures: { m: '5' },
    level: 'low low settled',
  },
  {
    that: 'where reads the set itself: an earlier value does not stand in',
    needs: ['a', 'kept'],
    protocol: back('highest: a', '{ m: { at_least: 5 } }', ', where: { kept: { above: 3 } }'),
    set: morning({ '08:30': { a: 4, kept: 5 }, '09:00': { a: 6 } }),
    rules: { one: 'undecided' },
    measures: { m: '4 6' },
  },
  {
    that: 'where knows what the set knows',
    needs: ['a', 'kept'],
    protocol: back('count: a', '{ m: { at_least: 2 } }', ', where: { kept: { known: yes } }'),
    set: morning({ '08:30': { a: 4, kept: 5 }, '09:00': { a: 6 } }),
    rules: { one: 'not_met' },
    measures: { m: '1' },
  },
  {
    that: 'a condition has held since its first set',
    needs: ['a'],
    protocol: `measures: { m: { held: { a: { at_least: 4 } }, over: 2 h } }\n${one('{ m: { at_least: 60 } }')}`,
    set: morning({ '08:00': { a: 5 }, '08:30': { a: 4 }, '09:00': { a: 6 } }),
    rules: { one: 'met' },
    measures: { m: '60' },
  },
  {
    that: 'a set in between breaks it',
    needs: ['a'],
    protocol: `measures: { m: { held: { a: { at_least: 4 } }, over: 2 h } }\n${one('{ m: { above: 0 } }')}`,
    set: morning({ '08:00': { a: 5 }, '08:30': { a: 3 }, '09:00': { a: 6 } }),
    rules: { one: 'not_met' },
    measures: { m: '0' },
  },
  {
    that: 'a gap breaks it, unless it is just as long',
    needs: ['a'],
    protocol: `measures: { m: { held: { a: { at_least: 4 } }, over: 2 h, longest_gap: 30 min }, n: { held: { a: { at_least: 4 } }, over: 2 h, longest_gap: 29 min } }\n${one('{ m: { above: 0 }, n: { above: 0 } }')}`,
    set: morning({ '07:45': { a: 5 }, '08:30': { a: 5 }, '09:00': { a: 6 } }),
    rules: { one: 'not_met' },
    measures: { m: '30', n: '0' },
  },
  {
    that: 'what does not hold now has not held',
    needs: ['a'],
    protocol: `measures: { m: { held: { a: { at_least: 4 } }, over: 2 h } }\n${one('{ m: { above: 0 } }')}`,
    set: morning({ '08:00': { a: 5 }, '09:00': { a: 3 } }),
    rules: { one: 'not_met' },
    measures: { m: '0' },
  },
  {
    that: 'a run does not reach beyond its window',
    needs: ['a'],
    protocol: `measures: { m: { held: { a: { at_least: 4 } }, over: 1 h } }\n${one('{ m: { above: 0 } }')}`,
    set: morning({ '08:00': { a: 5 }, '08:30': { a: 5 }, '09:00': { a: 5 } }),
    measures: { m: '30' },
  },
  {
    that: 'to the present set, not to the evaluation time',
    needs: ['a'],
    protocol: `measures: { m: { held: { a: { at_least: 4 } }, over: 2 h } }\n${one('{ m: { above: 0 } }')}`,
    set: morning({ '08:00': { a: 5 }, '08:30': { a: 5 } }, { at: clock('09:00') }),
    measures: { m: '30' },
  },
  {
    that: 'a middle set that lacks it leaves both open',
    needs: ['a', 'f'],
    protocol: `measures: { m: { held: { a: { at_least: 4 } }, over: 2 h } }\n${one('{ m: { above: 0 }, f: { is: yes } }')}`,
    set: morning({ '08:00': { a: 5 }, '08:30': { f: true }, '09:00': { a: 6, f: true } }),
    rules: { one: 'undecided' },
    measures: { m: '0 60' },
  },
  {
    that: 'a present set that needs it could',
    needs: ['a', 'f'],
    protocol: `measures: { m: { held: { a: { at_least: 4 } }, over: 2 h } }\n${one('{ m: { above: 0 }, f: { is: yes } }')}`,
    set: morning({ '08:00': { a: 5 }, '09:00': { f: true } }),
    rules: { one: 'undecided' },
    measures: { m: '0 60' },
    level: 'null mid open',
  },
];

test.each(conditions)('conditions on sets: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
