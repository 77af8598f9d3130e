import { expect, test } from 'vitest';
import { limits } from '../../src/document/limits.ts';
import { jsonToDocument } from '../../src/document/json-to-document.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';

const places = (text: string): string[] =>
  yamlToDocument('a.yaml', text).problems.map(
    ({ code, line, column, length }) => `${code} ${line}:${column}+${length}`,
  );

test('all problems come at once, in the order of the text', () => {
  const text = 'a: 0x1F\nb: { c: 1, c: 2 }\nd\u200B: 1\n__proto__: 1\n2: 3\ne: 1e3';
  expect(places(text)).toEqual([
    'number_not_plain 1:4+4',
    'key_twice 2:12+1',
    'hidden_character 3:2+1',
    'key_reserved 4:1+9',
    'key_not_text 5:1+1',
    'number_not_plain 6:4+3',
  ]);
});

test('marks are all found, and what the parser makes of them is not told a second time', () => {
  expect(places('%YAML 1.1\n---\na: !!int &x "1"\nb: *x\nc: *y\n')).toEqual([
    'directive 1:1+9',
    'tag 3:4+5',
    'anchor 3:10+2',
    'alias 4:4+2',
    'alias 5:4+2',
  ]);
});

test('a sign that begins a text by mistake is not taken for a mark', () => {
  expect(places('a: %x')).toEqual(['not_yaml 1:4+1']);
  expect(places('a: >-\n  *bold*\nb: |\n  &c !d\n  %e\n')).toEqual([]);
});

test('mistakes of YAML are told once for a line', () => {
  expect(places('a: [,,,]\nb: 1\nc: [,,]\n')).toEqual(['not_yaml 1:6+1', 'not_yaml 3:6+1']);
});

test('the place of a problem is right after line ends of two characters', () => {
  expect(places('a: 1\r\nb: 0x1F\r\n')).toEqual(['number_not_plain 2:4+4']);
  expect(yamlToDocument('a.yaml', 'a: 1\r\nb: 0x1F\r\n').problems[0]?.source).toBe('b: 0x1F');
});

test('a mark at the start of the text is not counted in the column', () => {
  expect(places('\uFEFFa: 0x1F')).toEqual(['number_not_plain 1:4+4']);
});

test('the second of two equal keys is marked and named', () => {
  const [problem] = yamlToDocument('a.yaml', 'rate: 1\nrate: 2').problems;
  expect(problem).toMatchObject({
    line: 2,
    column: 1,
    says: '"rate" stands here twice; only one of them could count.',
  });
  const [inJson] = jsonToDocument('a.json', '{"rate": 1,\n "rate": 2}').problems;
  expect(inJson).toMatchObject({ code: 'key_twice', line: 2, column: 2, length: 6 });
});

test('a key that stands three times has two problems', () => {
  expect(places('a: 1\na: 2\na: 3')).toEqual(['key_twice 2:1+1', 'key_twice 3:1+1']);
});

test('at most a hundred are told, and then that there are more', () => {
  const { problems } = yamlToDocument('a.yaml', 'a: 1\n'.repeat(limits.problems + 1));
  expect(problems.map(({ code }) => code)).toEqual(Array<string>(limits.problems).fill('key_twice'));
  const more = yamlToDocument('a.yaml', 'a: 1\n'.repeat(limits.problems + 5)).problems;
  expect(more).toHaveLength(limits.problems + 1);
  expect(more.at(-1)).toMatchObject({ code: 'more_problems', line: limits.problems + 2 });
});

test('a second colon on a line is told as what it is, however many lines have one', () => {
  const { problems } = yamlToDocument('a.yaml', 'says: note: this\n'.repeat(80));
  expect(problems.length).toBeGreaterThan(30);
  for (const { says } of problems)
    expect(says).toContain(
      'a text with a colon and a space in it stands in quotation marks'.replace(/^a/, 'A'),
    );
});

test('no sentence holds what cannot be seen', () => {
  const { problems } = yamlToDocument('a.yaml', '"\\x1b[31m\\u202e": 1\n"\\x1b[31m\\u202e": 2');
  expect(problems.map(({ code }) => code)).toEqual(['control_character', 'control_character', 'key_twice']);
  for (const { says } of problems) expect(says).not.toMatch(/[\p{Cc}\p{Cf}]/u);
});
