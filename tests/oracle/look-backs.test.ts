import { expect, test } from 'vitest';
import { clock, judged, morning, one, stated, type Row } from './table.ts';

const back = (kind: string, when: string, more = ''): string =>
  `measures: { m: { ${kind}, over: 1 h${more} } }\n${one(when)}`;
const three = morning({ '08:00': { a: 6 }, '08:30': { a: 3 }, '09:00': { a: 2 } });
const never = '{ a: { above: 5 } }';
const kind = (name: string, more = ''): Pick<Row, 'needs' | 'protocol' | 'set'> => ({
  needs: ['a'],
  protocol: back(`${name}: a`, `{ m: { at_least: -9 } }`, more),
  set: three,
});

const windows: readonly Row[] = [
  { that: 'highest leaves out the set that is exactly as old', ...kind('highest'), measures: { m: '3' } },
  {
    that: 'a moment longer takes it in',
    ...kind('highest'),
    protocol: `measures: { m: { highest: a, over: 61 min } }\n${one(never)}`,
    measures: { m: '6' },
  },
  { that: 'lowest', ...kind('lowest'), measures: { m: '2' } },
  { that: 'average is a fraction', ...kind('average'), measures: { m: '5/2' } },
  { that: 'earliest', ...kind('earliest'), measures: { m: '3' } },
  { that: 'latest', ...kind('latest'), measures: { m: '2' } },
  { that: 'change is the latest less the earliest', ...kind('change'), measures: { m: '-1' } },
  { that: 'count', ...kind('count'), measures: { m: '2' } },
  { that: 'the present set is left out', ...kind('latest', ', present_set: left_out'), measures: { m: '3' } },
  {
    that: 'change needs two values',
    ...kind('change', ', present_set: left_out'),
    rules: { one: 'undecided' },
    measures: { m: 'none' },
    level: 'low low settled',
  },
  {
    that: 'count of none is 0',
    ...kind('count', ', present_set: left_out'),
    set: morning({ '09:00': { a: 2 } }),
    rules: { one: 'met' },
    measures: { m: '0' },
  },
  {
    that: 'a single set without a time is a series of one',
    ...kind('average'),
    set: { a: 4 },
    measures: { m: '4' },
  },
  {
    that: 'minutes since the last yes',
    needs: ['f'],
    protocol: `measures: { m: { minutes_since: f, over: 2 h } }\n${one('{ m: { at_least: 60 } }')}`,
    set: morning({ '08:00': { f: true }, '08:30': { f: false }, '09:00': { f: false } }),
    rules: { one: 'met' },
    measures: { m: '60' },
    level: 'mid mid settled',
  },
  {
    that: 'to the evaluation time',
    needs: ['f'],
    protocol: `measures: { m: { minutes_since: f, over: 2 h } }\n${one('{ m: { at_least: 60 } }')}`,
    set: { at: '2026-03-02T08:00:00.001Z', sets: [{ at: clock('08:00'), f: true }] },
    measures: { m: '1/60000' },
  },
  {
    that: 'never is above every number',
    needs: ['f'],
    protocol: `measures: { m: { minutes_since: f, over: 1 h } }\n${one('{ m: { above: 1000000 } }')}`,
    set: morning({ '08:00': { f: true }, '09:00': { f: false } }),
    rules: { one: 'met' },
    measures: { m: 'never' },
  },
  {
    that: 'never is in the last band of a score',
    needs: ['f'],
    protocol: `measures: { m: { minutes_since: f, over: 1 h }, n: { score: { m: [{ at_most: 30, points: 0 }, { points: 3 }] } } }\n${one('{ n: { at_least: 3 } }')}`,
    set: morning({ '09:00': { f: false } }),
    rules: { one: 'met' },
    measures: { m: 'never', n: '3' },
  },
  {
    that: 'a count of yes',
    needs: ['f'],
    protocol: back('count: f', '{ m: { at_least: 2 } }'),
    set: morning({ '08:15': { f: true }, '08:30': { f: false }, '09:00': { f: true } }),
    rules: { one: 'met' },
    measures: { m: '2' },
  },
  {
    that: 'an earlier range stays a range',
    ...kind('highest'),
    set: morning({ '08:30': { a: { low: 3, high: 5 } }, '09:00': { a: 4 } }),
    measures: { m: '4 5' },
  },
  {
    that: 'what is read now and looked back at is one value',
    needs: ['a'],
    protocol: `measures: { m: { latest: a, over: 1 h }, n: { formula: a - m } }\n${one('{ n: { at_least: 0 } }')}`,
    set: morning({ '09:00': { a: { low: 3, high: 5 } } }),
    rules: { one: 'met' },
    measures: { m: '3 5', n: '0' },
  },
  {
    that: 'a need that the present set lacks is a member: anything',
    ...kind('highest'),
    set: morning({ '08:30': { a: 3 }, '09:00': {} }),
    measures: { m: '3 6' },
  },
  {
    that: 'a help that the present set lacks is not',
    ...kind('highest'),
    needs: [],
    helps: ['a'],
    set: morning({ '08:30': { a: 3 }, '09:00': {} }),
    measures: { m: '3' },
  },
  {
    that: 'it is a member with what stands in for it',
    needs: ['kept'],
    protocol: back('average: kept', '{ m: { at_most: 3 } }'),
    set: morning({ '08:30': { kept: 3 }, '09:00': {} }),
    rules: { one: 'met' },
    measures: { m: '3' },
    level: 'mid mid open',
  },
  {
    that: 'it counts',
    ...kind('count'),
    set: morning({ '08:30': { a: 3 }, '09:00': {} }),
    measures: { m: '2' },
  },
  {
    that: 'an earlier set that lacks it is no member',
    ...kind('count'),
    set: morning({ '08:15': { a: 3 }, '08:30': {}, '09:00': { a: 4 } }),
    measures: { m: '2' },
  },
  {
    that: 'minutes since the last of two',
    needs: ['f'],
    protocol: `measures: { m: { minutes_since: f, over: 2 h } }\n${one('{ m: { at_least: 60 } }')}`,
    set: morning({ '08:00': { f: true }, '08:45': { f: true }, '09:00': { f: false } }),
    rules: { one: 'not_met' },
    measures: { m: '15' },
  },
];

test.each(windows)('windows: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
