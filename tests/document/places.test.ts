import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isDeepStrictEqual } from 'node:util';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { partAt, toPlain, type Document, type Node } from '../../src/document/document.ts';
import { jsonToDocument } from '../../src/document/json-to-document.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import type { Path, Span } from '../../src/problems/place.ts';

// The YAML library reads each part again, alone, and must find there what the document says stands there.

const root = fileURLToPath(new URL('../..', import.meta.url));
const designed = readFileSync(new URL('design-example.yaml', import.meta.url), 'utf8');
const bundled = ['protocols', 'schema']
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((file) => join(folder, file)),
  )
  .filter((file) => file.endsWith('.yaml') && !file.startsWith(join('schema', 'problems')))
  .map((file) => ({ file, text: readFileSync(join(root, file), 'utf8') }));

const options = { version: '1.2', schema: 'core', merge: false } as const;

function read(text: string): Document {
  const { document, problems } = yamlToDocument('a.yaml', text);
  if (!document) throw new Error(problems.map(({ says }) => says).join('\n'));
  return document;
}

/** Every part of a document with its path, the key before the part. */
function* parts(
  node: Node,
  path: Path = [],
): Generator<{ path: Path; span: Span; value: unknown; kind: Node['kind'] }> {
  yield { path, span: node.span, value: toPlain(node), kind: node.kind };
  if (node.kind === 'list')
    for (const [index, item] of node.items.entries()) yield* parts(item, [...path, index]);
  if (node.kind !== 'map') return;
  for (const { key, keySpan, value } of node.entries) {
    yield { path: [...path, key], span: keySpan, value: key, kind: 'scalar' };
    yield* parts(value, [...path, key]);
  }
}

/** The text of a part, moved to the column in which it stands, so that its later lines are below its first. */
function own({ text }: Document, { start, end }: Span): string {
  const column = start - (text.lastIndexOf('\n', start - 1) + 1);
  return ' '.repeat(column) + text.slice(start, end);
}

function expectPlaces(document: Document, only: 'everything' | 'scalars' = 'everything'): void {
  const wrong: string[] = [];
  for (const { path, span, value, kind } of parts(document.root)) {
    if (only === 'scalars' && kind !== 'scalar') continue;
    const text = own(document, span);
    const isWell = isDeepStrictEqual(parse(text, options), plain(value)) && !/\s$/.test(text);
    if (!isWell || (kind === 'scalar' && value !== null && text.trim() === ''))
      wrong.push(`${path.join('/')}: ${text}`);
  }
  expect(wrong).toEqual([]);
}

/** With the prototype that the judge gives its maps. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value)) as unknown;

test('every part of the example of the design is where the document says', () => {
  expectPlaces(read(designed));
});

test('so it is with the line ends of another system, and with a mark at the start', () => {
  expectPlaces(read(designed.replaceAll('\n', '\r\n')));
  expectPlaces(read(`\uFEFF${designed}`));
});

test.each(bundled)(
  'every value of $file is where the document says, and is what the library reads',
  ({ text }) => {
    const document = read(text);
    expectPlaces(document, 'scalars');
    expect(plain(toPlain(document.root))).toEqual(parse(text, options));
  },
);

test.each([
  ['a block of lines', 'a: |\n  one\n   two\n\nb: 1'],
  ['folded lines', 'a: >-\n  one\n  two\nb: 1'],
  ['a text over two lines', 'a: one\n  two\nb: 1'],
  ['a quoted text over two lines', 'a: "one\n  two"\nb: 1'],
  ['quotation marks of both kinds', `a: 'it''s'\nb: "say \\"x\\""`],
  ['a pair inside a list', 'a: [b: c, d]'],
  ['keys that are quoted', '"a b": 1\n\'c\': 2'],
  ['a list at the column of its key', 'a:\n- b\n- c: d\n  e: f'],
  ['lists in lists', 'a:\n  - - b\n    - c\n  - - d'],
  ['an explicit key', '? a\n: b'],
  ['comments everywhere', '# x\na: # y\n  # z\n  b: 1 # w\n# v\nc: 2 # u'],
  ['brackets over lines', 'a: {\n  b: [1,\n  2], # x\n  c: 3 }\nd: 4'],
  ['characters of two units', 'a: 😀 x\nb: [😀, c]'],
  ['spaces at line ends', 'a: b  \nc: [d]  \n'],
])('%s', (_, text) => {
  expectPlaces(read(text));
});

test('a value that is not written stands right after its key', () => {
  const { root: map } = read('a:\nb: 1');
  expect(map).toMatchObject({
    entries: [{ key: 'a', value: { kind: 'scalar', value: null, span: { end: 2 } } }, { key: 'b' }],
  });
  expect(read('{ a }').root).toMatchObject({
    entries: [{ key: 'a', value: { value: null, span: { start: 3, end: 3 } } }],
  });
});

test('every part of a JSON text is where the document says', () => {
  const text = '{ "a": [1, "x\\n", true, null, { "b": -0.5 }],\n\t"c\\u0064": {} }';
  const { document } = jsonToDocument('a.json', text);
  const found = [...parts(document?.root as Node)].map(({ span, value }) => [
    JSON.parse(text.slice(span.start, span.end)) as unknown,
    plain(value),
  ]);
  expect(found.length).toBe(12);
  for (const [judged, value] of found) expect(judged).toEqual(value);
});

test('a path that leads nowhere ends at the nearest part above it', () => {
  const document = read('a: { b: [c] }');
  expect(partAt(document, ['a', 'b', 0]).node).toMatchObject({ value: 'c' });
  expect(partAt(document, ['a', 'b', 7, 'x']).node).toMatchObject({ kind: 'list' });
  expect(partAt(document, ['a', 'x']).keySpan).toEqual({ start: 0, end: 1 });
  const many = read(Array.from({ length: 100 }, (_, index) => `k${index}: ${index}`).join('\n'));
  expect(partAt(many, ['k99']).node).toMatchObject({ value: 99 });
  expect(partAt(many, ['k100']).node).toBe(many.root);
});
