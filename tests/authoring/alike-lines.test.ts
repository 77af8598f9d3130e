import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alikeLines, withOwnLineEnds } from '../../src/authoring/alike-lines.ts';
import { spliced } from '../../src/authoring/splice.ts';

/** As a field holds a text: all line ends alike. */
const inField = (text: string, end: string): string => text.replaceAll(/\r\n|\r|\n/g, end);

const end = fc.constantFrom('\r\n', '\n', '\r');
const fieldEnd = fc.constantFrom('\r\n', '\n');
/** Lines that are all different, so that it is known which one is which. */
const mixed = fc
  .array(end, { maxLength: 30 })
  .chain((ends) =>
    fc
      .constantFrom('', 'last')
      .map((last) => ends.map((each, index) => `line ${index}${each}`).join('') + last),
  );

test('a text that nobody touched comes back to the byte', () => {
  fc.assert(
    fc.property(mixed, fieldEnd, (text, ends) => {
      expect(withOwnLineEnds(inField(text, ends), text)).toBe(text);
    }),
  );
});

test('an edit in the field is the same edit of the text: every other byte stays, also between two edits', () => {
  const edit = fc.record({
    line: fc.nat(29),
    put: fc.array(fc.constantFrom('new', ''), { maxLength: 2 }),
    takes: fc.nat(2),
  });
  fc.assert(
    fc.property(mixed, fieldEnd, fc.array(edit, { maxLength: 3 }), (text, ends, edits) => {
      const lines = text.split(/(?<=\r\n|\r(?!\n)|\n)/);
      const shown = lines.map((line) => inField(line, ends));
      const free = edits.filter(
        ({ line, takes }, index) =>
          line + takes < lines.length &&
          edits
            .slice(0, index)
            .every((other) => line > other.line + other.takes || other.line > line + takes),
      );
      const editsOf = (all: readonly string[]): string => {
        const at = (line: number): number => all.slice(0, line).join('').length;
        return spliced(
          all.join(''),
          free.map(({ line, takes, put }) => ({
            from: at(line),
            to: at(line + takes),
            text: put.map((each) => `${each}${ends}`).join(''),
          })),
        );
      };
      expect(withOwnLineEnds(editsOf(shown), text)).toBe(editsOf(lines));
    }),
    { numRuns: 500 },
  );
});

test('a line that was changed ends as the field ends it; one that is now the last has no end', () => {
  expect(withOwnLineEnds('a\nc\n', 'a\r\nb\n')).toBe('a\r\nc\n');
  expect(withOwnLineEnds('a', 'a\r\nb\n')).toBe('a');
  expect(withOwnLineEnds('a\r\nb\r\nc', 'a\nb\r\n')).toBe('a\nb\r\nc');
});

test('lines that stand in both texts are found in their order', () => {
  expect(alikeLines(['a', 'b', 'c'], ['a', 'c'])).toEqual([
    [0, 0],
    [2, 1],
  ]);
  expect(alikeLines(['x', 'a', 'y', 'b'], ['a', 'z', 'b', 'w'])).toEqual([
    [1, 0],
    [3, 2],
  ]);
  expect(alikeLines([], ['a'])).toEqual([]);
});
