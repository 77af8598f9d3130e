import { limits } from './limits.ts';
import type { TextCode } from './text-faults.ts';

/** Texts that have a problem, and texts that are well, for one problem. They are tests and pages at once. */
export interface TextExamples {
  readonly code: TextCode;
  readonly form: 'yaml' | 'json';
  /** Each has the problem. */
  readonly reject: readonly string[];
  /** Each has no problem at all. */
  readonly accept: readonly string[];
}

const nested = (depth: number): string => '['.repeat(depth) + ']'.repeat(depth);
const dashes = (depth: number): string => `a:\n ${'- '.repeat(depth)}b`;

export const textExamples: readonly TextExamples[] = [
  {
    code: 'text_too_big',
    form: 'yaml',
    reject: [`says: ${'x'.repeat(limits.bytes)}`, `says: ${'é'.repeat(limits.bytes / 2)}`],
    accept: [`says: ${'x'.repeat(limits.bytes - 6)}`],
  },
  { code: 'text_empty', form: 'yaml', reject: ['', '\n\n', '# nothing yet', '---\n'], accept: ['rate: 98'] },
  { code: 'text_empty', form: 'json', reject: ['', ' \n'], accept: ['{}'] },
  {
    code: 'text_not_text',
    form: 'yaml',
    reject: ['\u0000\u0001\u0002\u0003PNG\u0004\u0005\u0006\u0007\u0008\u000e', '\uFFFD'.repeat(20)],
    accept: ['says: Fièvre > 38 °C, SpO₂ 92 %, 体温'],
  },
  { code: 'top_not_a_map', form: 'yaml', reject: ['- rate', 'Dear colleagues', '98'], accept: ['rate: []'] },
  { code: 'top_not_a_map', form: 'json', reject: ['[1, 2]', '"rate"', 'true'], accept: ['{ "rate": [] }'] },
  {
    code: 'too_deep',
    form: 'yaml',
    reject: [`a: ${nested(limits.depth)}`, dashes(limits.depth), `a: ${'['.repeat(100_000)}`],
    accept: [`a: ${nested(limits.depth - 1)}`, dashes(limits.depth - 1)],
  },
  {
    code: 'too_deep',
    form: 'json',
    reject: [`{"a": ${nested(limits.depth)}}`, `{"a":`.repeat(100_000)],
    accept: [`{"a": ${nested(limits.depth - 1)}}`, `{"a": "${'['.repeat(1000)}"}`],
  },
  {
    code: 'too_many_parts',
    form: 'yaml',
    reject: ['- a\n'.repeat(limits.parts / 3), `a:${'\n'.repeat(limits.parts + 1)} b`],
    accept: ['a:\n'.concat(' - b\n'.repeat(1000))],
  },
  {
    code: 'more_problems',
    form: 'yaml',
    reject: ['rate: 1\n'.repeat(limits.problems + 2)],
    accept: ['rate: 1'],
  },
  {
    code: 'control_character',
    form: 'yaml',
    reject: [
      'a: b\u0000c',
      'a: \u001b[31mred',
      'a: b\rc',
      'a: b\u0085c',
      'a: b\u2028c',
      'a: "\\x07"',
      '"a\\0": 1',
    ],
    accept: ['a: b\tc', 'a: b\r\nc: d\r\n', 'a: "\\t"'],
  },
  {
    code: 'control_character',
    form: 'json',
    reject: ['{"a": "\\u0000"}', '{"a\\u001b": 1}', '{"a": "b\\r\\nc"}'],
    accept: ['{"a": "\\n"}'],
  },
  {
    code: 'hidden_character',
    form: 'yaml',
    reject: [
      'a: b\u202Ec',
      'a: b\u2066c',
      'a\u200B: b',
      'a: b\uFEFFc',
      'a: b\u00ADc',
      'a: "\\u202E"',
      'a: b\u{E0041}c',
      'a: \u3164',
    ],
    accept: ['\uFEFFa: b', 'a: é ü 体 ق', 'a: "\\u00e9"'],
  },
  {
    code: 'hidden_character',
    form: 'json',
    reject: ['{"a": "\\u200b"}', '{"\\u202ea": 1}'],
    accept: ['\uFEFF{"a": "\\u00b0C"}'],
  },
  {
    code: 'broken_character',
    form: 'yaml',
    reject: ['a: \uD800', 'a: 38 \uFFFDC', 'a: \uFFFE', 'a: "\\uD800"'],
    accept: ['a: 38 °C', 'a: 😀'],
  },
  {
    code: 'broken_character',
    form: 'json',
    reject: ['{"a": "\\ud800"}'],
    accept: ['{"a": "\\ud83d\\ude00"}'],
  },
  {
    code: 'not_yaml',
    form: 'yaml',
    reject: [
      'a: "b',
      'a: [b',
      'a: b\n  c: d',
      'a: note: this',
      'a:\n\t- b',
      'a: @b',
      'a: "\\q"',
      'a: {b: 1 c: 2}',
      'a: 1\nb\nc: 2',
      'says: >90 is fast',
      'a: 1\n b: 2\n',
      '{ unit: mm[Hg] }',
    ],
    accept: ['a: "b"', 'a: [b]', 'a: "note: this"', 'a:\n  - b', 'says: ">90 is fast"', '{ unit: "mm[Hg]" }'],
  },
  {
    code: 'not_json',
    form: 'json',
    reject: [
      '{"a": 1,}',
      '{a: 1}',
      '{"a": 01}',
      '{"a": .5}',
      '// x\n{}',
      '{"a": /* x */ 1}',
      '{"a": NaN}',
      '{} {}',
      '{"a": "b',
      "{'a': 1}",
    ],
    accept: ['{"a": 1}', '{"a": "// x"}'],
  },
  {
    code: 'directive',
    form: 'yaml',
    reject: ['%YAML 1.1\n---\na: yes', '%TAG ! x\n---\na: 1'],
    accept: ['---\na: yes', 'a: "%YAML"'],
  },
  {
    code: 'several_documents',
    form: 'yaml',
    reject: ['a: 1\n---\nb: 2', 'a: 1\n...\nb: 2', '---\n---\na: 1'],
    accept: ['---\na: 1\n...\n'],
  },
  {
    code: 'anchor',
    form: 'yaml',
    reject: ['a: &x 1', '&x a: 1', 'a: [&x b]'],
    accept: ['a: "&x"', 'a: b & c', "a: 'Q&A'"],
  },
  {
    code: 'alias',
    form: 'yaml',
    reject: ['a: *x', 'a: [*x]', 'a: &x [1]\nb: *x'],
    accept: ['a: "*x"', 'a: 2 * 3'],
  },
  {
    code: 'tag',
    form: 'yaml',
    reject: ['a: !!int "1"', 'a: !x b', '!!map\na: 1', 'a: !<tag:x> b'],
    accept: ['a: "!b"', 'a: now!'],
  },
  { code: 'merge_key', form: 'yaml', reject: ['<<: { a: 1 }', 'a: { <<: 1 }'], accept: ['a: <<', '"<<": 1'] },
  {
    code: 'key_twice',
    form: 'yaml',
    reject: ['a: 1\na: 2', 'a: 1\n"a": 2', '{ a: 1, b: 2, a: 3 }'],
    accept: ['a: 1\nA: 2', 'a: { a: 1 }'],
  },
  {
    code: 'key_twice',
    form: 'json',
    reject: ['{"a": 1, "a": 1}', '{"a": 1, "\\u0061": 2}'],
    accept: ['{"a": {"a": 1}}'],
  },
  {
    code: 'key_not_text',
    form: 'yaml',
    reject: ['1: a', 'true: a', 'null: a', ': a', '[a]: b', '? { a: 1 }\n: b'],
    accept: ['"1": a', 'yes: a', 'no: a'],
  },
  {
    code: 'key_reserved',
    form: 'yaml',
    reject: ['__proto__: 1', 'a: { constructor: 1 }', 'prototype: 1', '"__pro\\u0074o__": 1'],
    accept: ['proto: 1', 'a: constructor'],
  },
  {
    code: 'key_reserved',
    form: 'json',
    reject: ['{"__proto__": {}}', '{"a": {"constructor": 1}}'],
    accept: ['{"a": "__proto__"}'],
  },
  {
    code: 'number_not_plain',
    form: 'yaml',
    reject: [
      'a: 0x1F',
      'a: 0o17',
      'a: 1e3',
      'a: 1.5E2',
      'a: .inf',
      'a: -.INF',
      'a: .nan',
      'a: .5',
      'a: 5.',
      'a: 007',
      'a: +5',
      'a: 1e400',
    ],
    accept: ['a: 0', 'a: -1', 'a: 0.5', 'a: 36.60', 'a: "0x1F"', 'a: 1_000', 'a: 12:30', 'a: 2027-09-30'],
  },
  {
    code: 'number_not_plain',
    form: 'json',
    reject: ['{"a": 1e3}', '{"a": 1.5E-2}'],
    accept: ['{"a": -0.5}', '{"a": 100}'],
  },
  {
    code: 'number_too_long',
    form: 'yaml',
    reject: ['a: 1234567890123456', 'a: 0.1234567890123456', 'a: 1.000000000000000', 'a: 0.0000001'],
    accept: ['a: 123456789012345', 'a: 0.123456789012345', 'a: 0.000001'],
  },
  {
    code: 'number_too_long',
    form: 'json',
    reject: ['{"a": 1234567890123456}'],
    accept: ['{"a": 123456789012345}'],
  },
];
