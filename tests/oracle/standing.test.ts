import { expect, test } from 'vitest';
import { clock, judged, morning, one, stated, type Row } from './table.ts';

const needsA = { needs: ['a'] };
const back = (kind: string, when: string, more = ''): string =>
  `measures: { m: { ${kind}, over: 1 h${more} } }\n${one(when)}`;

const standing: readonly Row[] = [
  {
    that: 'the latest statement holds, in whichever set',
    needs: ['a'],
    protocol: `standing: { c: {} }\n${one('{ c: { is: red }, a: { above: 3 } }')}`,
    set: morning({ '07:00': { c: 'green' }, '08:00': { c: 'red' }, '09:00': { a: 5 } }),
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'whether it was unobtainable is asked of the present set, though an earlier one states it',
    needs: ['a'],
    protocol: `standing: { c: {} }\n${one('{ c: { is: red, unobtainable: yes }, a: { above: 3 } }')}`,
    set: morning({ '08:00': { c: 'red' }, '09:00': { c: { unobtainable: true }, a: 5 } }),
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'and of each set by itself in a look back',
    needs: ['a'],
    protocol: `standing: { c: {} }\nmeasures: { m: { held: { c: { unobtainable: no } }, over: 4 h, unit: min } }\n${one('{ m: { above: 0 }, a: { above: 3 } }')}`,
    set: morning({ '07:00': { c: 'red' }, '08:00': {}, '09:00': { c: { unobtainable: true }, a: 5 } }),
    measures: { m: '0' },
    rules: { one: 'not_met' },
  },
  {
    that: 'a later order for the patient holds instead',
    needs: ['a'],
    protocol: `standing: { c: {} }\n${one('{ c: { is: red }, a: { above: 3 } }')}`,
    set: morning(
      { '08:00': { c: 'red' }, '09:00': { a: 5 } },
      { patient: { standing: { c: { value: 'green', by: 'Dr Ash', at: clock('08:30') } } } },
    ),
    rules: { one: 'not_met' },
  },
  {
    that: 'an order without a time is older than any set',
    needs: ['a'],
    protocol: `standing: { c: {} }\n${one('{ c: { is: red }, a: { above: 3 } }')}`,
    set: morning(
      { '08:00': { c: 'red' }, '09:00': { a: 5 } },
      { patient: { standing: { c: { value: 'green', by: 'Dr Ash' } } } },
    ),
    rules: { one: 'met' },
  },
  {
    that: 'at its end an order no longer holds',
    needs: ['a'],
    protocol: `standing: { c: { if_not_stated: red } }\n${one('{ c: { is: red }, a: { above: 3 } }')}`,
    set: morning(
      { '09:00': { a: 5 } },
      { patient: { standing: { c: { value: 'green', by: 'Dr Ash', until: clock('09:00') } } } },
    ),
    rules: { one: 'met' },
  },
  {
    that: 'until its end it does',
    needs: ['a'],
    protocol: `standing: { c: { if_not_stated: red } }\n${one('{ c: { is: red }, a: { above: 3 } }')}`,
    set: morning(
      { '08:59': { a: 5 } },
      { patient: { standing: { c: { value: 'green', by: 'Dr Ash', until: clock('09:00') } } } },
    ),
    rules: { one: 'not_met' },
  },
  {
    that: 'where reads the fact that held at the time of the set',
    needs: ['a'],
    protocol: `standing: { c: {} }\n${back('count: a', '{ m: { at_least: 2 } }', ', where: { c: { is: red } }')}`,
    set: morning({ '08:15': { a: 4, c: 'green' }, '08:30': { a: 5, c: 'red' }, '09:00': { a: 1 } }),
    rules: { one: 'met' },
    measures: { m: '2' },
  },
  {
    that: 'a changed limit ends',
    needs: ['a'],
    protocol: `limits: { floor: { value: 4, between: [2, 6] } }\n${one('{ a: { below: floor } }')}`,
    set: morning(
      { '09:00': { a: 5 } },
      { patient: { limits: { floor: { value: 6, by: 'Dr Ash', until: clock('09:00') } } } },
    ),
    rules: { one: 'not_met' },
  },
];

const facts: readonly Row[] = [
  {
    that: 'what nobody stated is as assumed, and settles',
    ...needsA,
    protocol: `standing: { c: { if_not_stated: red } }\n${one('{ c: { is: red }, a: { above: 3 } }')}`,
    set: { a: 5 },
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'what is assumed is not known',
    ...needsA,
    protocol: `standing: { c: { if_not_stated: red } }\n${one('{ c: { known: yes }, a: { above: 3 } }')}`,
    set: { a: 5 },
    rules: { one: 'not_met' },
  },
  {
    that: 'what is stated for the patient holds',
    ...needsA,
    protocol: `standing: { c: { if_not_stated: red } }\n${one('{ c: { is: green, known: yes }, a: { above: 3 } }')}`,
    set: { a: 5, patient: { standing: { c: { value: 'green', by: 'Dr Ash' } } } },
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'without an assumption it is missing and only helps',
    ...needsA,
    protocol: `standing: { c: {} }\n${one('{ c: { is: red }, a: { above: 3 } }')}`,
    set: { a: 5 },
    rules: { one: 'undecided' },
    level: 'low low settled',
  },
  {
    that: 'a standing fact that is needed could',
    needs: ['a', 'c'],
    protocol: `standing: { c: {} }\n${one('{ c: { is: red }, a: { above: 3 } }')}`,
    set: { a: 5 },
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
];

test.each(facts)('standing facts: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
test.each(standing)('standing facts in time: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
