import { expect, test } from 'vitest';
import { schemaChecker } from '../../src/generate/validators-output.ts';
import { isOtherName } from '../../src/generate/schema-files.ts';
import { typeName } from '../../src/generate/types.ts';
import { keywords } from '../../src/shape/failure-to-finding.ts';
import type { Schema } from '../../src/shape/schema.ts';
import { files, parts, placeOf, type Part } from './schemas.ts';

// The subset of JSON Schema that the language is stated in. What is not listed here is not used: an author then never meets
// a place where one of several forms could have been meant.

const words = ['$schema', '$id', '$ref', '$defs', 'title', 'description', 'examples'];
const asserting = [
  'type',
  'enum',
  'const',
  'pattern',
  'minLength',
  'maxLength',
  'minimum',
  'maximum',
  'required',
  'propertyNames',
  'additionalProperties',
  'minProperties',
  'maxProperties',
  'minItems',
  'maxItems',
];
const applying = ['properties', 'items'];

const isDefinition = ({ pointer }: Part): boolean => /^\/\$defs\/\w+$/.test(pointer);
const isProperty = ({ pointer }: Part): boolean => /\/properties\/\w+$/.test(pointer);
const isRoot = ({ pointer }: Part): boolean => pointer === '';
const wrong = (found: readonly Part[]): string[] => found.map(placeOf);

test('the folder of the schemas holds every form of file', () => {
  const names = files.map(({ name }) => name);
  expect(names).toEqual(expect.arrayContaining(['cases', 'dictionary', 'ladder', 'protocol', 'set', 'ward']));
});

test('only the listed subset of JSON Schema is used', () => {
  const listed = new Set([...words, ...asserting, ...applying]);
  const others = parts.flatMap((part) =>
    Object.keys(part.schema)
      .filter((key) => !listed.has(key))
      .map((key) => `${placeOf(part)} ${key}`),
  );
  expect(others).toEqual([]);
});

test('every keyword that can fail becomes a problem of ours', () => {
  expect([...keywords].sort()).toEqual([...asserting].sort());
});

test('every file, every definition and every key has a description and examples', () => {
  const described = parts.filter(
    (part) => isRoot(part) || isProperty(part) || (isDefinition(part) && !isOtherName(part.schema)),
  );
  expect(described.length).toBeGreaterThan(250);
  expect(wrong(described.filter(({ schema }) => !schema.description?.trim()))).toEqual([]);
  expect(wrong(described.filter(({ schema }) => !schema.examples?.length))).toEqual([]);
});

test('a description is a sentence, or sentences', () => {
  const without = parts.filter(
    ({ schema }) => schema.description !== undefined && !/[.?!]$/.test(schema.description),
  );
  expect(wrong(without)).toEqual([]);
});

/** Leaves out the words of a schema; a key that is named like one of them has a schema, and stays. */
const withoutWords = (key: string, part: unknown): unknown =>
  key === 'examples' || (['title', 'description'].includes(key) && typeof part === 'string')
    ? undefined
    : part;

const checker = schemaChecker({ schemas: files });

test.each(files)('every example in $file has the shape that it is an example of', ({ file }) => {
  const failed = parts
    .filter((part) => part.file === file)
    .flatMap((part) => (part.schema.examples ?? []).map((example) => ({ part, example })))
    .filter(({ part, example }) => !checker.validate({ $ref: placeOf(part) }, example))
    .map(({ part, example }) => `${placeOf(part)} ${JSON.stringify(example)}`);
  expect(failed).toEqual([]);
});

test('every type of value is stated', () => {
  const unstated = parts.filter(({ schema }) => schema.$ref === undefined && schema.type === undefined);
  expect(wrong(unstated)).toEqual([]);
});

test('a group of keys is a definition of its own, and says what happens to any other key', () => {
  const groups = parts.filter(({ schema }) => schema.properties);
  expect(wrong(groups.filter((part) => !isRoot(part) && !isDefinition(part)))).toEqual([]);
  expect(wrong(groups.filter(({ schema }) => schema.additionalProperties === undefined))).toEqual([]);
});

test('what is required is stated', () => {
  const missing = parts.filter(({ schema }) => schema.required?.some((key) => !schema.properties?.[key]));
  expect(wrong(missing)).toEqual([]);
});

test('there is one definition for each kind of thing: no two make one type, and no two state the same', () => {
  const definitions = parts.filter(
    (part) => (isRoot(part) || isDefinition(part)) && !isOtherName(part.schema),
  );
  const names = definitions.map(({ pointer, schema }) => typeName(pointer.split('/').at(-1) ?? '', schema));
  expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  const groups = definitions.filter(({ schema }) => schema.properties);
  const statements = groups.map(({ schema }) => JSON.stringify(schema, withoutWords));
  expect(wrong(groups.filter((_, index) => statements.indexOf(statements[index] ?? '') !== index))).toEqual(
    [],
  );
});

test('every definition is used, and every $ref leads to one', () => {
  const absolute = (part: Part, ref: string): string => (ref.startsWith('#') ? `${part.file}${ref}` : ref);
  const used = new Set(
    parts.flatMap((part) => (part.schema.$ref === undefined ? [] : [absolute(part, part.schema.$ref)])),
  );
  const defined = new Set(
    parts
      .filter((part) => isRoot(part) || isDefinition(part))
      .map((part) => (isRoot(part) ? part.file : placeOf(part))),
  );
  expect([...used].filter((ref) => !defined.has(ref))).toEqual([]);
  expect(parts.filter((part) => isDefinition(part) && !used.has(placeOf(part))).map(placeOf)).toEqual([]);
});

test('a text is only ever asked for at least one character', () => {
  const lengths = parts
    .map(({ schema }: { schema: Schema }) => schema.minLength)
    .filter((length) => length !== undefined);
  expect(new Set(lengths)).toEqual(new Set([1]));
});

test('no pattern can be made to take long: none repeats a repetition', () => {
  const patterns = parts.flatMap(({ schema }) => schema.pattern ?? []);
  expect(patterns.length).toBeGreaterThan(0);
  for (const pattern of patterns) expect(pattern).not.toMatch(/[+*]\)[+*{]/);
});
