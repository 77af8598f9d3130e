import { expect, test } from 'vitest';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { problemAt, type Problem } from '../../src/problems/problem.ts';
import { showProblem } from '../../src/problems/show-problem.ts';
import { quoted, visible } from '../../src/problems/visible.ts';

const of = (text: string, file = 'ward/protocol.yaml'): Problem => {
  const [problem] = yamlToDocument(file, text).problems;
  if (!problem) throw new Error('There is no problem to show');
  return problem;
};

test('a problem is shown with its place, its line, a caret, and what was expected', () => {
  expect(showProblem(of('a: 1\n  \nrate: 0x1F # beats'))).toBe(
    [
      'ward/protocol.yaml:3:7: error: "0x1F" is not a number in plain digits.',
      '  rate: 0x1F # beats',
      '        ^^^^',
      'expected: digits with at most one point between them, for example 38.3 or 0.5; a text stands in quotation marks',
    ].join('\n'),
  );
});

test('what was probably meant comes last', () => {
  const problem = problemAt(
    'a.yaml',
    'levle: x',
    { start: 0, end: 5 },
    'key_missing',
    { key: 'level', place: 'rule "x"', expected: 'a name' },
    'level',
  );
  expect(showProblem(problem).split('\n').at(-1)).toBe('Did you mean "level"?');
});

test('a line that is empty is not shown', () => {
  expect(showProblem(of(''))).toBe(
    'ward/protocol.yaml:1:1: error: Nothing is written here.\nexpected: names and their values',
  );
});

test('tabs stay tabs, so that the caret stands right at every width', () => {
  const [, line, caret] = showProblem(of('a: [1,\t\t0x1F]')).split('\n');
  expect(line).toBe('  a: [1,\t\t0x1F]');
  expect(caret).toBe('        \t\t^^^^');
});

test('a character of two units takes one place', () => {
  const [, line, caret] = showProblem(of('a: [😀😀, 0x1F]')).split('\n');
  expect(line).toBe('  a: [😀😀, 0x1F]');
  expect(caret).toBe('          ^^^^');
});

test('a long line is cut around the place', () => {
  const [, line = '', caret = ''] = showProblem(
    of(`a: [${'word, '.repeat(100)}0x1F${', word'.repeat(100)}]`),
  ).split('\n');
  expect(line.length).toBeLessThan(110);
  expect(line.startsWith('  …')).toBe(true);
  expect(line.endsWith('…')).toBe(true);
  expect(line.slice(caret.indexOf('^'), caret.lastIndexOf('^') + 1)).toBe('0x1F');
});

test('a mark longer than the shown part of the line ends with it', () => {
  const shown = showProblem(of(`a: ${'1'.repeat(1000)}`)).split('\n');
  expect(shown[1]?.length).toBeLessThan(110);
  expect(shown[2]?.length).toBeLessThan(110);
});

test('nothing that a terminal would obey is left, wherever it stands', () => {
  const hostile = 'x\u001b[2J\u0007\u202E\u200B\u009b\uD800';
  const shown = showProblem({
    ...of('a: 0x1F'),
    file: hostile,
    says: hostile,
    source: hostile,
    expected: hostile,
    near_miss: hostile,
    column: 2,
    length: 5,
  });
  expect(shown.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
  expect(shown.split('\n')[1]).toBe('  x␛[2J␇<U+202E><U+200B><U+009B><U+D800>');
  expect(shown.split('\n')[2]).toBe('   ^^^^^');
});

test('a line end in a sentence is shown as a picture', () => {
  expect(visible('a\nb\r\tc\u007f')).toBe('a␊b␍␉c␡');
});

test("the author's words are shortened", () => {
  expect(quoted('x'.repeat(60))).toBe(`"${'x'.repeat(60)}"`);
  expect(quoted('😀'.repeat(61))).toBe(`"${'😀'.repeat(60)}…"`);
  expect(quoted('x'.repeat(1_000_000))).toHaveLength(63);
});
