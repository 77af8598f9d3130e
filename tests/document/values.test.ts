import { expect, test } from 'vitest';
import fc from 'fast-check';
import { stringify } from 'yaml';
import { toPlain } from '../../src/document/document.ts';
import { jsonToDocument } from '../../src/document/json-to-document.ts';
import { textToDocument } from '../../src/document/text-to-document.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';

const read = (text: string): unknown => {
  const { document } = yamlToDocument('a.yaml', text);
  return document && toPlain(document.root);
};

test.each([
  ['yes', 'yes'],
  ['No', 'No'],
  ['on', 'on'],
  ['true', true],
  ['False', false],
  ['12:30', '12:30'],
  ['2027-09-30', '2027-09-30'],
  ['98', 98],
  ['-0', 0],
  ['36.60', 36.6],
  ['"98"', '98'],
  ['16 y', '16 y'],
  ['~', null],
  ['', null],
  ['38,3', '38,3'],
])('%s is read as YAML 1.2 reads it', (written, value) => {
  expect(read(`a: ${written}`)).toEqual(Object.assign(Object.create(null) as object, { a: value }));
});

test('minus zero is zero', () => {
  expect(Object.is((read('a: -0') as { a: number }).a, 0)).toBe(true);
  const { document } = jsonToDocument('a.json', '{"a": -0}');
  expect(document && Object.is((toPlain(document.root) as { a: number }).a, 0)).toBe(true);
});

/** Names, and texts in which everything can be seen. */
const name = fc
  .stringMatching(/^[a-z][a-z0-9_]{0,8}$/)
  .filter((each) => each !== 'constructor' && each !== 'prototype');
const words = fc.stringMatching(/^[ -~äßé°√体😀\n]{0,20}$/u);
const number = fc.integer({ min: -1e6, max: 1e6 }).map((each) => each / 1000 + 0);
const { value: anything } = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    words,
    number,
    fc.boolean(),
    fc.constant(null),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(name, tie('value'), { maxKeys: 4 }),
  ),
}));
const file = fc.dictionary(name, anything, { minKeys: 1, maxKeys: 4 });

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value)) as unknown;

test('whatever is written as JSON is read back', () => {
  fc.assert(
    fc.property(file, fc.constantFrom(0, 1, 2), (value, indent) => {
      const { document } = jsonToDocument('a.json', JSON.stringify(value, null, indent));
      expect(document && plain(toPlain(document.root))).toEqual(plain(value));
    }),
    { numRuns: 300 },
  );
});

test('whatever the library writes as YAML is read back', () => {
  fc.assert(
    fc.property(file, fc.boolean(), (value, flow) => {
      const text = stringify(
        value,
        flow ? { collectionStyle: 'flow', aliasDuplicateObjects: false } : { aliasDuplicateObjects: false },
      );
      const { document, problems } = yamlToDocument('a.yaml', text);
      expect(problems.map(({ says, source }) => `${says} ${source}`)).toEqual([]);
      expect(document && plain(toPlain(document.root))).toEqual(plain(value));
    }),
    { numRuns: 300 },
  );
});

test('a text is read by the ending of its name', () => {
  expect(textToDocument('a.JSON', '{"a": 01}').problems[0]?.code).toBe('not_json');
  expect(textToDocument('a.yaml', '{"a": 01}').problems[0]?.code).toBe('number_not_plain');
});

test('nothing is a document while anything is wrong; a draft is there to look for more', () => {
  const twice = yamlToDocument('a.yaml', 'a: 1\na: 2\nb: 3');
  expect(twice.document).toBeNull();
  expect(twice.draft && plain(toPlain(twice.draft.root))).toEqual({ a: 1, b: 3 });
  expect(yamlToDocument('a.yaml', 'a: &x 1').draft).toBeNull();
  expect(yamlToDocument('a.yaml', 'a: [').draft).toBeNull();
});
