import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { limits } from '../../src/document/limits.ts';
import type { TextCode } from '../../src/document/text-faults.ts';
import { textToDocument } from '../../src/document/text-to-document.ts';
import { showProblem } from '../../src/problems/show-problem.ts';
import { textToFile } from '../../src/shape/text-to-file.ts';
import { withinASecond } from './within.ts';

const most = limits.bytes - 100;
const fill = (part: string): string => part.repeat(Math.floor(most / part.length));
const keys = (count: number): string =>
  Array.from({ length: count }, (_, index) => `k${index}: 1\n`).join('');
const jsonKeys = (count: number): string =>
  `{${Array.from({ length: count }, (_, index) => `"k${index}": 1`).join(',')}`;
/** Bytes without any pattern, the same at every run. */
function noise(length: number): string {
  let state = 1;
  return Array.from({ length }, () => {
    state = (state * 48_271) % 2_147_483_647;
    return String.fromCharCode(state % 256);
  }).join('');
}
const bomb = [
  'a0: &a0 [x, x]',
  ...Array.from({ length: 30 }, (_, at) => `a${at + 1}: &a${at + 1} [*a${at}, *a${at}]`),
].join('\n');

type Row = readonly [name: string, form: 'yaml' | 'json', text: string, code: TextCode];

/** Each text is answered within a second, with this problem, and is no document. */
const refused: readonly Row[] = [
  ['one byte over 1 MiB', 'yaml', `a: ${'x'.repeat(limits.bytes - 2)}`, 'text_too_big'],
  ['one byte over 1 MiB in JSON', 'json', `{"a": "${'x'.repeat(limits.bytes - 8)}"}`, 'text_too_big'],
  ['over 1 MiB in bytes, not in characters', 'yaml', `a: ${'体'.repeat(400_000)}`, 'text_too_big'],
  ['100 MiB', 'yaml', 'x'.repeat(100 * 1_048_576), 'text_too_big'],
  ['an alias bomb', 'yaml', bomb, 'alias'],
  ['a merge key', 'yaml', 'a: &a { b: 1 }\nc: { <<: *a }', 'merge_key'],
  ['__proto__ as a key', 'yaml', '__proto__: { rules: [] }', 'key_reserved'],
  ['__proto__ as a key in JSON', 'json', '{"__proto__": {"admin": true}}', 'key_reserved'],
  ['__proto__ written with numbers', 'json', '{"\\u005f_proto__": 1}', 'key_reserved'],
  ['constructor as a key', 'json', '{"constructor": {"prototype": {}}}', 'key_reserved'],
  [
    'depth 65 in lines',
    'yaml',
    Array.from({ length: 66 }, (_, at) => `${' '.repeat(at)}a:`).join('\n'),
    'too_deep',
  ],
  ['depth 65 in brackets', 'yaml', `a: ${'['.repeat(64)}${']'.repeat(64)}`, 'too_deep'],
  ['depth 65 of pairs in lists', 'yaml', `a: ${'[b: '.repeat(32)}c${']'.repeat(32)}`, 'too_deep'],
  ['depth 100,000 in brackets', 'yaml', `a: ${'['.repeat(100_000)}`, 'too_deep'],
  ['depth 100,000 in braces', 'yaml', '{a: '.repeat(100_000), 'too_deep'],
  ['depth 100,000 of dashes', 'yaml', '- '.repeat(100_000), 'too_deep'],
  ['depth 100,000 of question marks', 'yaml', '? '.repeat(100_000), 'too_deep'],
  ['depth 100,000 with closing brackets in texts', 'yaml', `a: ${'["]]]]]]]", '.repeat(80_000)}`, 'too_deep'],
  ['depth 100,000 in JSON', 'json', '{"a":'.repeat(100_000), 'too_deep'],
  ['depth 100,000 in JSON after an open text', 'json', `"a\n${'['.repeat(100_000)}`, 'too_deep'],
  ['depth hidden in a JSON comment', 'json', `/*"*/${'['.repeat(100_000)}`, 'not_json'],
  ['20,000 keys, the last a repetition', 'yaml', `${keys(20_000)}k7: 2`, 'key_twice'],
  ['20,000 times one key', 'yaml', 'k: 1\n'.repeat(20_000), 'more_problems'],
  ['20,000 keys in JSON, the last a repetition', 'json', `${jsonKeys(20_000)}, "k7": 2}`, 'key_twice'],
  ['80,000 keys', 'yaml', keys(80_000), 'too_many_parts'],
  ['1 MiB of list items', 'yaml', fill('- a\n'), 'too_many_parts'],
  ['1 MiB of line ends', 'yaml', fill('\n'), 'too_many_parts'],
  ['1 MiB of empty JSON lines', 'json', fill('\n'), 'text_empty'],
  ['lone surrogates', 'yaml', 'a: \uD83D\nb: \uDE00', 'broken_character'],
  ['lone surrogates in JSON', 'json', '{"a": "\\ud83d"}', 'broken_character'],
  ['NUL', 'yaml', 'protocol: alder\u0000_pressure', 'control_character'],
  ['NUL written with a number', 'yaml', 'protocol: "alder\\0_pressure"', 'control_character'],
  ['signals of the parser itself', 'yaml', 'a: 1\n\u0002\u001F\u0018b: 2', 'control_character'],
  ['a terminal command', 'yaml', 'a: \u001b]0;x\u0007', 'control_character'],
  ['line ends of a third kind', 'yaml', 'a: 1\rb: 2', 'control_character'],
  ['a mark of byte order in the middle', 'yaml', 'a: 1\n\uFEFFb: 2', 'hidden_character'],
  ['the reading direction turned', 'yaml', 'a: \u202Eetelpmoc si ti\u202C', 'hidden_character'],
  ['the reading direction turned in JSON', 'json', '{"a": "\u2067x\u2069"}', 'hidden_character'],
  ['letters without width', 'yaml', 'sys\u200Btolic: 104', 'hidden_character'],
  ['1 MiB of letters without width', 'yaml', '\u200B'.repeat(most / 4), 'hidden_character'],
  ['%YAML 1.1', 'yaml', '%YAML 1.1\n---\non: yes\nat: 12:30\n', 'directive'],
  ['%TAG', 'yaml', '%TAG !e! tag:example.org,2000:\n---\na: !e!b c', 'directive'],
  ['1 MiB of directives', 'yaml', '%A\n'.repeat(149_000), 'directive'],
  ['a tag that makes code', 'yaml', 'a: !!js/function "function () {}"', 'tag'],
  ['1 MiB of tags', 'yaml', `a: ${fill('! ')}`, 'tag'],
  ['1 MiB of anchors', 'yaml', `a: ${fill('&a ')}`, 'anchor'],
  ['several documents', 'yaml', '---\na: 1\n---\nb: 2', 'several_documents'],
  ['70,000 documents', 'yaml', 'a\n---\n'.repeat(70_000), 'several_documents'],
  ['noise', 'yaml', noise(500_000), 'text_not_text'],
  ['a little noise', 'json', noise(200), 'text_not_text'],
  ['a text in another encoding', 'yaml', 'unit: \uFFFDC', 'broken_character'],
  ['prose', 'yaml', 'Dear colleagues,\n\nplease find the protocol below.\n', 'top_not_a_map'],
  ['a page', 'yaml', '<!doctype html>\n<html><body>404</body></html>', 'top_not_a_map'],
  ['nothing', 'yaml', '', 'text_empty'],
  ['mistakes in every line', 'yaml', '- "\n'.repeat(37_000), 'not_yaml'],
  ['149,000 commas', 'yaml', `[${','.repeat(149_000)}`, 'not_yaml'],
  ['149,000 closing brackets', 'yaml', `[${']'.repeat(149_000)}`, 'not_yaml'],
  ['149,000 lines that begin with a tab', 'yaml', `a: |\n x\n${'\t\n'.repeat(149_000)}`, 'not_yaml'],
  ['1 MiB of second colons', 'yaml', fill('a: b: c\n'), 'not_yaml'],
  ['a key of 1 MiB', 'yaml', `${'x'.repeat(most)}: 1`, 'not_yaml'],
  ['an open quotation mark', 'yaml', `a: "${fill('\\')}`, 'not_yaml'],
  ['1 MiB of commas in JSON', 'json', `[${fill(',')}`, 'not_json'],
  ['1 MiB of minus signs in JSON', 'json', fill('-'), 'not_json'],
  ['a repeated key in JSON', 'json', '{"systolic": 104, "diastolic": 48, "systolic": 84}', 'key_twice'],
  ['a repeated key in JSON, written with numbers', 'json', '{"pain": 1, "p\\u0061in": 2}', 'key_twice'],
  ['a number beyond every computer', 'json', `{"a": ${'9'.repeat(100_000)}}`, 'number_too_long'],
  ['a number with an exponent', 'json', '{"a": 1e999}', 'number_not_plain'],
];

test.each(refused)('%s', (_, form, text, code) => {
  const { document, problems } = withinASecond(() => textToDocument(`hostile.${form}`, text));
  expect(problems.map((problem) => problem.code)).toContain(code);
  expect(document).toBeNull();
  expect(problems.length).toBeLessThanOrEqual(limits.problems + 1);
  const shown = withinASecond(() => problems.map(showProblem).join('\n'));
  expect(shown.length).toBeLessThan(200_000);
  expect(shown.replaceAll('\n', '').replaceAll('\t', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
});

/** Unusual, but nothing is wrong with it: read within a second. */
const accepted: readonly (readonly [name: string, form: 'yaml' | 'json', text: string])[] = [
  ['a text of exactly 1 MiB', 'yaml', `a: ${'x'.repeat(limits.bytes - 3)}`],
  ['a quoted text of 1 MiB', 'yaml', `a: "${'x '.repeat(most / 2)}"`],
  ['a text of 1 MiB in JSON', 'json', `{"a": "${'x'.repeat(most)}"}`],
  ['20,000 keys in one map', 'yaml', keys(20_000)],
  ['20,000 keys in one map in JSON', 'json', `${jsonKeys(20_000)}}`],
  ['1 MiB of spaces', 'yaml', `a: ${' '.repeat(most)}b`],
  ['depth 64', 'yaml', `a: ${'['.repeat(63)}${']'.repeat(63)}`],
  ['brackets in a text', 'yaml', `a: "${'['.repeat(1000)}"`],
  ['two characters at every line end', 'yaml', 'a: 1\r\nb:\r\n  - c\r\n'],
  ['a mark of byte order at the start', 'yaml', '\uFEFFa: 1'],
  ['an empty map', 'json', '{}'],
];

test.each(accepted)('%s is read', (_, form, text) => {
  const { document, problems } = withinASecond(() => textToDocument(`unusual.${form}`, text));
  expect(problems).toEqual([]);
  expect(document).not.toBeNull();
});

test('the prototype of everything stays as it was', () => {
  for (const [, form, text] of refused.filter(([name]) => /proto|constructor/.test(name))) {
    textToFile('set', `hostile.${form}`, text);
  }
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect(({} as { admin?: boolean }).admin).toBeUndefined();
});

// Whatever comes: an answer, soon, and never an exception.

const protocol = readFileSync(new URL('../document/design-example.yaml', import.meta.url), 'utf8');
const set =
  '{ "systolic": 104, "diastolic": { "value": 48, "low": 44 }, "sets": [{ "at": "2026-03-02T08:00:00Z", "skin": ["cold"] }] }';

/** Pieces that mean something to a parser. */
const piece = fc.oneof(
  fc.constantFrom(
    '- ',
    ': ',
    '? ',
    ', ',
    '[',
    ']',
    '{',
    '}',
    '"',
    "'",
    '|',
    '>',
    '&a',
    '*a',
    '!!str ',
    '<<',
    '#',
    '%YAML',
    '---\n',
    '...\n',
    '\n',
    '\r\n',
    '\t',
    '  ',
    '\\',
    '0x1',
    '1e9',
    '.inf',
    '~',
    'null',
    'true',
    '\u0000',
    '\u001f',
    '\u0002',
    '\uFEFF',
    '\u202e',
    '\ud800',
    '__proto__',
    '/*',
    '//',
    '@',
    '`',
  ),
  fc.string({ maxLength: 8 }),
);
const anyText = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(''));

/** A text with some of its parts cut out, put in twice, or replaced. */
const mutated = (text: string): fc.Arbitrary<string> =>
  fc
    .array(
      fc.tuple(
        fc.nat(text.length),
        fc.nat(40),
        fc.oneof(
          piece,
          fc.constant(''),
          fc.nat(text.length).map((at) => text.slice(at, at + 30)),
        ),
      ),
      { minLength: 1, maxLength: 5 },
    )
    .map((edits) =>
      edits.reduce((now, [at, length, put]) => now.slice(0, at) + put + now.slice(at + length), text),
    );

test.each([
  ['any text as YAML', anyText, 'protocol', 'any.yaml'],
  ['any text as JSON', anyText, 'set', 'any.json'],
  ['a protocol with mutations', mutated(protocol), 'protocol', 'protocol.yaml'],
  ['a set with mutations', mutated(set), 'set', 'set.json'],
] as const)('%s gets an answer, and never an exception', (_, texts, kind, file) => {
  let answered = 0;
  fc.assert(
    fc.property(texts, (text) => {
      const { value, document, problems } = withinASecond(() => textToFile(kind, file, text));
      expect(value === null).toBe(problems.length > 0);
      if (value !== null) expect(document).not.toBeNull();
      for (const problem of problems) {
        expect(text.includes(problem.source)).toBe(true);
        expect(problem.column).toBeLessThanOrEqual(problem.source.length + 1);
        expect(showProblem(problem)).not.toMatch(/undefined|NaN|\[object/);
      }
      answered += 1;
    }),
    { numRuns: 400 },
  );
  expect(answered).toBe(400);
});
