import { expect, test } from 'vitest';
import { jsonToDocument } from '../../src/document/json-to-document.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import type { Problem } from '../../src/problems/problem.ts';
import { checkShape } from '../../src/shape/check-shape.ts';
import type { Kind } from '../../src/shape/files.ts';
import { schemaAt } from '../../src/shape/schema-at.ts';
import { textToFile } from '../../src/shape/text-to-file.ts';
import { withinASecond } from '../attacks/within.ts';

const protocol = (rules: string): string =>
  `protocol: example\nedition: 1\ntitle: An example\nladder: alder_ladder\nobservations: {}\nrules: ${rules}\n`;

function problemsOf(kind: Kind, text: string): readonly Problem[] {
  const { document } = yamlToDocument('a.yaml', text);
  if (!document) throw new Error('The text has problems of its own');
  return checkShape(kind, document).problems;
}

const only = (kind: Kind, text: string): Problem => {
  const problems = problemsOf(kind, text);
  expect(problems.map(({ says }) => says)).toHaveLength(1);
  return problems[0] as Problem;
};

test('a file of the right shape comes back as plain data', () => {
  const { document } = yamlToDocument(
    'a.yaml',
    'ladder: x\nedition: 2\nlevels: [{ level: a }, { level: b }]',
  );
  const { value, problems } = checkShape('ladder', document as NonNullable<typeof document>);
  expect(problems).toEqual([]);
  expect(value?.levels.map(({ level }) => level)).toEqual(['a', 'b']);
});

test.each<[string, string, string | null]>([
  ['a misspelt key', '[{ rule: a, when: { rule: b }, levle: c }]', 'level'],
  ['a key in capitals', '[{ rule: a, when: { rule: b }, Level: c }]', 'level'],
  ['a key of a comparison', '[{ rule: a, when: { systolic: { at_lest: 1, below: 9 } } }]', 'at_least'],
  ['a key where any name can stand', '[{ rule: a, when: { anny: [{ rule: b }] } }]', 'any'],
  [
    'a key of the second level',
    '[{ rule: a, when: { at_least_of: { cuont: 1, count: 1, of: [{ rule: b }] } } }]',
    null,
  ],
  ['nothing near', '[{ rule: a, when: { rule: b }, banana: c }]', null],
  ['a list where any name can stand, nothing near', '[{ rule: a, when: { systolic: [1] } }]', null],
])('the near miss of %s', (_, rules, meant) => {
  expect(only('protocol', protocol(rules)).near_miss).toBe(meant);
});

test('a key that stands there already is not what was meant', () => {
  expect(
    only('protocol', protocol('[{ rule: a, when: { rule: b }, level: c, levle: d }]')).near_miss,
  ).toBeNull();
});

test('the near miss of a word is one of the words for its place', () => {
  const measure = (word: string): string =>
    `${protocol('[]')}measures: { m: { highest: x, over: 4 h, present_set: ${word} } }`;
  expect(only('protocol', measure('leftout')).near_miss).toBe('left_out');
  expect(only('protocol', measure('banana')).near_miss).toBeNull();
});

test('a rule, a level, a case is called by its own name', () => {
  expect(only('protocol', protocol('[{ rule: low, when: { rule: b }, levle: c }]')).says).toBe(
    '"levle" cannot stand in rule "low".',
  );
  expect(only('protocol', protocol('[{ rule: a, when: { rule: b }, do: [{ text: x }] }]')).says).toBe(
    '"id" is missing from item 1 of "do".',
  );
  expect(only('cases', 'protocol: x\ncases: [{ case: Quiet, expect: {}}]').says).toBe(
    '"expect" has 0 entries; it needs 1.',
  );
  expect(
    only('ladder', 'ladder: x\nedition: 1\nlevels: [{ level: a }, { level: b, respond: soon }]').says,
  ).toBe('"respond" is "soon", which is not the way it is written.');
});

test('what is expected comes with an example in the form of the file', () => {
  expect(only('protocol', protocol('[{ rule: a, when: { systolic: 90 } }]')).expected).toBe(
    'a group of names with values, for example { at_least: 22 }',
  );
  expect(only('set', '{ "patient": 3 }').expected).toBe('a group of names with values');
  expect(only('set', '{ "a": { "value": {} } }').expected).toBe(
    'a number, a text, true or false or a list, for example 104',
  );
  expect(only('set', '{ "patient": { "limits": { "x": { "by": "A", "value": {} } } } }').expected).toBe(
    'a number, a text, true or false or a list, for example "scale_2"',
  );
  expect(only('protocol', `${protocol('[]')}review_by: soon`).expected).toBe('written like 2027-09-30');
});

test('a list is expected with an example of a list', () => {
  expect(only('protocol', protocol('[{ rule: a, when: { rule: b }, ask: Why }]')).expected).toBe(
    'a list, for example [Is there a source of infection?]',
  );
});

test('of several faults of one text, the one that says most is told', () => {
  expect(only('protocol', protocol(`[{ rule: ${'B'.repeat(61)}, when: { rule: b } }]`)).code).toBe(
    'name_not_formed',
  );
  expect(only('protocol', protocol('[{ rule: a, when: { b: { known: 3 } } }]')).code).toBe('wrong_type');
});

test('what is missing is marked where it is missing from', () => {
  const text =
    'ladder: x\nedition: 1\nlevels:\n  - level: a\n  - level: b\n    if_no_answer:\n      tell: Registrar\n';
  expect(only('ladder', text)).toMatchObject({
    line: 6,
    column: 5,
    length: 12,
    says: '"after" is missing from "if_no_answer".',
  });
});

test('a file of a wholly other kind says what is wrong once for each key', () => {
  const problems = problemsOf('ladder', 'protocol: x\nedition: 1\n');
  expect(problems.map(({ code, says }) => `${code}: ${says}`)).toEqual([
    'key_missing: "ladder" is missing from this ladder.',
    'key_missing: "levels" is missing from this ladder.',
    'key_unknown: "protocol" cannot stand in this ladder.',
  ]);
});

test('the problems of text and of shape come together, one for each place, and there is no value', () => {
  const { value, document, problems } = textToFile(
    'ladder',
    'ladder.yaml',
    'ladder: x\nedition: .inf\nladder: y\nlevels: []\ntitel: z\n',
  );
  expect(problems.map(({ code, line }) => `${code} ${line}`)).toEqual([
    'number_not_plain 2',
    'key_twice 3',
    'too_few 4',
    'key_unknown 5',
  ]);
  expect([value, document]).toEqual([null, null]);
});

test('a text fault alone leaves no value, though the shape is right', () => {
  const { value, document } = textToFile('set', 'set.json', '{"systolic": 104, "systolic": 84}');
  expect([value, document]).toEqual([null, null]);
});

test('thousands of unknown keys are told as the first hundred, and that there are more', () => {
  const keys = Array.from({ length: 20_000 }, (_, index) => `levle_${index}: 1`).join('\n');
  const problems = problemsOf(
    'ward',
    `ward: x\nedition: 1\ntitle: x\nladder: x\nreads_with: [{ protocol: x }]\n${keys}`,
  );
  expect(problems).toHaveLength(101);
  expect(problems[0]).toMatchObject({ line: 6 });
  expect(problems.at(-1)).toMatchObject({ code: 'more_problems', line: 106 });
});

test.each([
  ['half a million wrong items', 'set', `{"sets": [${'1,'.repeat(500_000)}1]}`],
  [
    'seventy thousand values that are missing',
    'set',
    `{${Array.from({ length: 70_000 }, (_, at) => `"k${at}": null`).join(',')}}`,
  ],
  [
    'wrong items, deep down',
    'protocol',
    `{"rules": [{"when": ${'{"all": ['.repeat(29)}${'{},'.repeat(300_000)}{}${']}'.repeat(29)}}]}`,
  ],
] as const)('%s are told within a second', (_, kind, text) => {
  const { draft } = jsonToDocument('a.json', text);
  if (!draft) throw new Error('The text has problems of its own');
  const { value, problems } = withinASecond(() => checkShape(kind, draft));
  expect(value).toBeNull();
  expect(problems).toHaveLength(101);
  expect(problems.at(-1)?.code).toBe('more_problems');
});

test('names of things that every object has are unknown keys like any other', () => {
  for (const key of ['toString', 'hasOwnProperty', 'valueOf']) {
    expect(only('protocol', `${protocol('[]')}${key}: 1`).code).toBe('key_unknown');
  }
});

test('what is stated about a place is found along its path', () => {
  expect(schemaAt('protocol', ['rules', 0, 'level'])?.definition).toBe('name');
  expect(schemaAt('protocol', ['rules', 3, 'when', 'all', 0, 'systolic', 'below'])?.definition).toBe(
    'quantity',
  );
  expect(schemaAt('cases', ['cases', 0, 'given', 'systolic', 'low'])?.own.description).toBe(
    'The lowest that it can truly be.',
  );
  expect(schemaAt('protocol', ['toString'])).toBeNull();
  expect(schemaAt('protocol', ['title', 'x'])).toBeNull();
});
