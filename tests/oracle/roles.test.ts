import { expect, test } from 'vitest';
import { judged, one, stated, type Row } from './table.ts';

const four = one('{ a: { at_least: 4 } }');
const needsA = { needs: ['a'] };
const needsAB = { needs: ['a', 'b'] };
const exceptFor = (name: string): string =>
  one('{ a: { at_least: 4 } }', `, unless: { when: { ${name}: { is: yes } } }`);
const explained = (level: string): string =>
  `rules: [{ rule: one, when: { a: { at_least: 4 } }, explained_by: { when: { f: { is: yes } }, says: So.${level} }, level: high }]`;

const roles: readonly Row[] = [
  {
    that: 'what only helps does not raise could_be',
    helps: ['a'],
    protocol: four,
    set: {},
    rules: { one: 'undecided' },
    level: 'low low settled',
  },
  {
    that: 'a need and a missing help together could not',
    needs: ['a'],
    helps: ['f'],
    protocol: one('{ a: { at_least: 4 }, f: { is: yes } }'),
    set: {},
    rules: { one: 'undecided' },
    level: 'low low settled',
  },
  {
    that: 'a need or a missing help could',
    needs: ['a'],
    helps: ['f'],
    protocol: one('{ any: [{ a: { at_least: 4 } }, { f: { is: yes } }] }'),
    set: {},
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'a help that is roughly known is not missing',
    helps: ['a'],
    protocol: four,
    set: { a: { low: 3, high: 5 } },
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'a help that is there decides',
    helps: ['a'],
    protocol: four,
    set: { a: 5 },
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'two rules of one level that exclude each other are both undecided',
    ...needsA,
    protocol:
      'rules: [{ rule: one, when: { a: { below: 3 } }, level: mid }, { rule: two, when: { a: { at_least: 3 } }, level: mid }]',
    set: {},
    rules: { one: 'undecided', two: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'a lower undecided rule does not unsettle',
    ...needsAB,
    protocol:
      'rules: [{ rule: one, when: { a: { above: 3 } }, level: high }, { rule: two, when: { b: { above: 1 } }, level: mid }]',
    set: { a: 4 },
    rules: { one: 'met', two: 'undecided' },
    level: 'high high settled',
  },
  {
    that: 'a higher undecided rule does',
    ...needsAB,
    protocol:
      'rules: [{ rule: one, when: { a: { above: 3 } }, level: mid }, { rule: two, when: { b: { above: 1 } }, level: high }]',
    set: { a: 4 },
    level: 'mid high open',
  },
  {
    that: 'a rule without a level takes no part',
    ...needsA,
    protocol: 'rules: [{ rule: one, when: { a: { at_least: 4 } }, says: So. }]',
    set: { a: 4 },
    rules: { one: 'met' },
    level: 'low low settled',
  },
  {
    that: 'a rule of the lowest level raises nothing',
    ...needsAB,
    protocol:
      'rules: [{ rule: one, when: { a: { at_least: 4 } }, level: low }, { rule: two, when: { b: { above: 1 } }, level: mid }]',
    set: { a: 4 },
    level: 'null mid open',
  },
  {
    that: 'outside its scope there is no level',
    ...needsA,
    protocol: `applies_when: { g: { is: yes } }\n${four}`,
    set: { a: 5, g: 'no' },
    applies: 'no',
    rules: { one: 'met' },
    level: 'none',
  },
  {
    that: 'an unsure scope settles nothing',
    ...needsA,
    protocol: `applies_when: { g: { is: yes } }\n${four}`,
    set: { a: 5 },
    applies: 'unsure',
    level: 'mid mid open',
  },
  {
    that: 'an unsure scope never answers with the lowest level',
    ...needsA,
    protocol: `applies_when: { g: { is: yes } }\n${four}`,
    set: { a: 1 },
    applies: 'unsure',
    level: 'null low open',
  },
  {
    that: 'inside its scope it settles',
    ...needsA,
    protocol: `applies_when: { g: { is: yes } }\n${four}`,
    set: { a: 1, g: true },
    level: 'low low settled',
  },
  {
    that: 'a help that the scope reads too still only helps',
    needs: ['a'],
    helps: ['g'],
    protocol: `applies_when: { g: { is: yes } }\n${one('{ g: { is: yes }, a: { at_least: 4 } }')}`,
    set: { a: 5 },
    applies: 'unsure',
    rules: { one: 'undecided' },
    level: 'null low open',
  },
];

const exceptions: readonly Row[] = [
  {
    that: 'an unanswered exception holds nothing back',
    needs: ['a', 'f'],
    protocol: exceptFor('f'),
    set: { a: 5 },
    rules: { one: 'undecided counts' },
    level: 'mid mid open',
  },
  {
    that: 'an unanswered exception that only helps is asked all the same',
    needs: ['a'],
    helps: ['f'],
    protocol: exceptFor('f'),
    set: { a: 5 },
    rules: { one: 'undecided counts' },
    level: 'mid mid open',
  },
  {
    that: 'an exception that is known takes the rule back',
    needs: ['a', 'f'],
    protocol: exceptFor('f'),
    set: { a: 5, f: true },
    rules: { one: 'not_met' },
    level: 'low low settled',
  },
  {
    that: 'an exception that does not hold leaves the rule',
    needs: ['a', 'f'],
    protocol: exceptFor('f'),
    set: { a: 5, f: false },
    rules: { one: 'met' },
    level: 'mid mid settled',
  },
  {
    that: 'a missing need could, whatever the exception',
    needs: ['a', 'f'],
    protocol: exceptFor('f'),
    set: {},
    rules: { one: 'undecided' },
    level: 'null mid open',
  },
  {
    that: 'a known exception takes back what could be',
    needs: ['a', 'f'],
    protocol: exceptFor('f'),
    set: { f: true },
    rules: { one: 'not_met' },
    level: 'low low settled',
  },
  {
    that: 'a named rule lends its unanswered exception',
    needs: ['a'],
    helps: ['f'],
    protocol:
      'rules: [{ rule: one, when: { a: { at_least: 4 } }, unless: { when: { f: { is: yes } } }, level: mid }, { rule: two, when: { rule: one }, level: high }]',
    set: { a: 5 },
    rules: { one: 'undecided counts', two: 'undecided counts' },
    level: 'high high open',
  },
  {
    that: 'not a named rule waits for its exception: a need could tell',
    needs: ['a', 'f'],
    protocol:
      'rules: [{ rule: one, when: { a: { at_least: 4 } }, unless: { when: { f: { is: yes } } }, level: mid }, { rule: two, when: { none: [{ rule: one }] }, level: high }]',
    set: { a: 5 },
    rules: { one: 'undecided counts', two: 'undecided' },
    level: 'mid high open',
  },
  {
    that: 'not a named rule waits for its exception: a help alone could not',
    needs: ['a'],
    helps: ['f'],
    protocol:
      'rules: [{ rule: one, when: { a: { at_least: 4 } }, unless: { when: { f: { is: yes } } }, level: mid }, { rule: two, when: { none: [{ rule: one }] }, level: high }]',
    set: { a: 5 },
    rules: { one: 'undecided counts', two: 'undecided' },
    level: 'mid mid open',
  },
  {
    that: 'an explanation keeps the rule and lowers its level',
    needs: ['a', 'f'],
    protocol: explained(', level: mid'),
    set: { a: 5, f: true },
    rules: { one: 'met explained' },
    level: 'mid mid settled',
  },
  {
    that: 'an unanswered explanation lowers nothing and settles nothing',
    needs: ['a'],
    helps: ['f'],
    protocol: explained(', level: mid'),
    set: { a: 5 },
    rules: { one: 'met' },
    level: 'high high open',
  },
  {
    that: 'an explanation that does not hold leaves the level',
    needs: ['a', 'f'],
    protocol: explained(', level: mid'),
    set: { a: 5, f: false },
    rules: { one: 'met' },
    level: 'high high settled',
  },
  {
    that: 'an explanation without a level leaves the level',
    needs: ['a', 'f'],
    protocol: explained(''),
    set: { a: 5, f: true },
    rules: { one: 'met explained' },
    level: 'high high settled',
  },
  {
    that: 'an unanswered explanation without a level unsettles nothing',
    needs: ['a', 'f'],
    protocol: explained(''),
    set: { a: 5 },
    rules: { one: 'met' },
    level: 'high high settled',
  },
  {
    that: 'a known explanation lowers what could be',
    needs: ['a', 'f'],
    protocol: explained(', level: mid'),
    set: { f: true },
    rules: { one: 'undecided explained' },
    level: 'null mid open',
  },
];

test.each(roles)('roles: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
test.each(exceptions)('exceptions: $that', (row) => {
  expect(judged(row)).toEqual(stated(row));
});
