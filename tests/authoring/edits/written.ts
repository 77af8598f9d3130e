import fc from 'fast-check';
import { readdirSync, readFileSync } from 'node:fs';
import type { Document, Node } from '../../../src/document/document.ts';
import { yamlToDocument } from '../../../src/document/yaml-to-document.ts';
import type { Path } from '../../../src/problems/place.ts';
import type { Plain } from '../../../src/authoring/yaml-text.ts';

const folder = new URL('../../../protocols/', import.meta.url);
/** What people write; a sealed edition is never edited. */
const bundled = readdirSync(folder, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.yaml') && !name.includes('/editions/'))
  .map((name) => readFileSync(new URL(name, folder), 'utf8'));

const key = fc
  .stringMatching(/^[a-z][a-z_]{0,6}$/)
  .filter((each) => !['null', 'true', 'false'].includes(each));

/** Texts that are written in different ways. */
const word = fc.constantFrom(
  'plain',
  'two words',
  "with 'one' mark",
  'with "two"',
  'a: colon',
  '# hash',
  'yes',
  '7 x',
  '°C',
  'x',
);

export const scalars: fc.Arbitrary<string | number | boolean> = fc.oneof(
  fc.integer({ min: -400, max: 400 }),
  fc.constantFrom(0.5, 37.2, 1000),
  fc.boolean(),
  word,
  fc.constantFrom(
    '16 y',
    '90 mmHg',
    '5 %',
    '3 10^9/L',
    '12:30',
    '',
    '-',
    'null',
    '[x]',
    '&a',
    'Null',
    '1e3',
    'over\ntwo',
    'is #not',
  ),
);

export const values: fc.Arbitrary<Plain> = fc.oneof(
  { weight: 3, arbitrary: scalars },
  fc.array(scalars, { maxLength: 3 }),
  fc.dictionary(key, scalars, { maxKeys: 2, noNullPrototype: true }),
);

/** A text of the language's subset of YAML in mixed manners: brackets and lines, quotation marks, comments, empty lines, line ends. */
const generated: fc.Arbitrary<string> = fc.gen().map((gen) => {
  const one = <T>(of: readonly T[]): T => gen(() => fc.constantFrom(...of));
  const comment = (): string => one(['', '', '', ' # a: note, [x] - y', '   ']);
  const blank = (): string => one(['', '', '', '\n', '# between\n', '    # deeper\n']);
  const text = (): string =>
    one([
      'plain',
      '"in \\"two\\""',
      "'in ''one'''",
      '12',
      '16 y',
      'two words',
      '0.5',
      'true',
      '"a: b"',
      'café',
    ]);
  const keys = (): string[] => gen(() => fc.uniqueArray(key, { minLength: 1, maxLength: 3 }));
  const flow = (depth: number): string => {
    const sort = depth > 2 ? 't' : one(['t', 'm', 'l', 't']);
    if (sort === 't') return text();
    const gap = one(['', ' ']);
    if (sort === 'l') {
      const items = Array.from({ length: one([0, 1, 3]) }, () => flow(depth + 1));
      return `[${gap}${items.join(one([', ', ',  ']))}${items.length > 0 ? one(['', ',']) : ''}${gap}]`;
    }
    return `{${gap}${keys()
      .map((each) => `${each}: ${flow(depth + 1)}`)
      .join(', ')}${one(['', ' '])}${gap}}`;
  };
  const lines = (indent: number, depth: number): string => {
    const space = ' '.repeat(indent);
    if (one(['map', 'map', 'list']) === 'list' && depth > 0)
      return Array.from({ length: one([1, 2, 3]) }, () => {
        const inside = depth < 3 && one([true, false]) ? lines(indent + 2, depth + 1) : null;
        return inside === null
          ? `${space}- ${flow(1)}${comment()}\n${blank()}`
          : one([`${space}- ${inside.trimStart()}`, `${space}-${comment()}\n${inside}`]);
      }).join('');
    return keys()
      .map((each) => {
        const sort = depth < 3 ? one(['t', 't', 'b', 'f', 'e']) : 't';
        if (sort === 'b') return `${space}${each}:${comment()}\n${lines(indent + one([1, 2, 4]), depth + 1)}`;
        if (sort === 'f') return `${space}${each}: >-\n${space}   folded\n${space}   text\n${blank()}`;
        if (sort === 'e') return `${space}${each}:${comment()}\n`;
        return `${space}${each}: ${flow(1)}${comment()}\n${blank()}`;
      })
      .join('');
  };
  return blank() + lines(0, 0);
});

/** A file of the kit or a made one, with one sort of line ends, with or without an end to its last line; only what can be read. */
export const documents: fc.Arbitrary<Document> = fc
  .tuple(
    fc.oneof({ weight: 1, arbitrary: fc.constantFrom(...bundled) }, { weight: 9, arbitrary: generated }),
    fc.boolean(),
    fc.boolean(),
  )
  .map(([text, windows, open]) => {
    const ended = open ? text.trimEnd() : text;
    return yamlToDocument('', windows ? ended.replaceAll('\n', '\r\n') : ended).document;
  })
  .filter((document) => document !== null);

/** Every path of a document. */
export function pathsOf(node: Node, path: Path = []): Path[] {
  if (node.kind === 'map')
    return [path, ...node.entries.flatMap(({ key: step, value }) => pathsOf(value, [...path, step]))];
  if (node.kind === 'list')
    return [path, ...node.items.flatMap((item, index) => pathsOf(item, [...path, index]))];
  return [path];
}
