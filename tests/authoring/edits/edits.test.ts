import fc from 'fast-check';
import { expect, test } from 'vitest';
import { partAt, toPlain, type Document, type Node } from '../../../src/document/document.ts';
import { withoutPart, withValue } from '../../../src/document/edit.ts';
import { yamlToDocument } from '../../../src/document/yaml-to-document.ts';
import type { Path } from '../../../src/problems/place.ts';
import { addEntry, addItem } from '../../../src/authoring/edits/add-part.ts';
import { removePart } from '../../../src/authoring/edits/remove-part.ts';
import { setValue } from '../../../src/authoring/edits/set-value.ts';
import { spliced, type Splice } from '../../../src/authoring/splice.ts';
import { documents, pathsOf, scalars, values } from './written.ts';

/** The text after an edit, read again; every character outside the splices is where it was. */
function after(document: Document, splices: readonly Splice[]): Document {
  const { text } = document;
  const made = spliced(text, splices);
  let [at, put] = [0, 0];
  for (const splice of splices) {
    expect(made.slice(put, put + splice.from - at)).toBe(text.slice(at, splice.from));
    put += splice.from - at + splice.text.length;
    at = splice.to;
  }
  expect(made.slice(put)).toBe(text.slice(at));
  const read = yamlToDocument('', made);
  expect(read.problems, made).toEqual([]);
  if (!read.document) throw new Error(made);
  return read.document;
}

const plain = (node: Node): unknown => JSON.parse(JSON.stringify(toPlain(node)));
const pick = (paths: readonly Path[], at: number): Path => paths[at % paths.length] as Path;

/** The plain value of a document with a part of it put otherwise. */
function changed(document: Document, path: Path, change: (part: unknown) => unknown): unknown {
  const inside = (part: unknown, [step, ...rest]: Path): unknown => {
    if (step === undefined) return change(part);
    if (Array.isArray(part))
      return (part as unknown[]).map((each, index) => (index === step ? inside(each, rest) : each));
    const map = part as Record<string, unknown>;
    return { ...map, [step]: inside(map[step], rest) };
  };
  return inside(plain(document.root), path);
}

/** A text that is found is told as it is, with its seed: to make it smaller can take all memory. */
const runs = { numRuns: 200, endOnFailure: true };

test('a value is set, and nothing else changes', () => {
  let made = 0;
  fc.assert(
    fc.property(documents, fc.nat(), scalars, (document, at, value) => {
      const paths = pathsOf(document.root).filter((path) => partAt(document, path).node.kind === 'scalar');
      if (paths.length === 0) return;
      const path = pick(paths, at);
      const splices = setValue(document, path, value);
      if (!splices) return expect(partAt(document, path).node).toMatchObject({ value: null });
      made += 1;
      const expected =
        typeof value === 'boolean'
          ? changed(document, path, () => value)
          : plain(withValue(document, path, value).root);
      expect(plain(after(document, splices).root)).toEqual(expected);
    }),
    runs,
  );
  expect(made).toBeGreaterThan(150);
});

test('a list or a map takes the place of what stands there', () => {
  fc.assert(
    fc.property(documents, fc.nat(), values, (document, at, value) => {
      const path = pick(pathsOf(document.root).slice(1), at);
      if (path === undefined) return;
      const splices = setValue(document, path, value);
      if (!splices) return;
      expect(plain(after(document, splices).root)).toEqual(changed(document, path, () => value));
    }),
    runs,
  );
});

test('an entry is added to a map', () => {
  let made = 0;
  fc.assert(
    fc.property(documents, fc.nat(), values, (document, at, value) => {
      const paths = pathsOf(document.root).filter((path) => partAt(document, path).node.kind === 'map');
      const path = pick(paths, at);
      const splices = addEntry(document, path, 'added_here', value);
      expect(splices).not.toBeNull();
      made += 1;
      const expected = changed(document, path, (part) => ({ ...(part as object), added_here: value }));
      expect(plain(after(document, splices ?? []).root)).toEqual(expected);
    }),
    runs,
  );
  expect(made).toBeGreaterThan(150);
});

test('an item is added to a list', () => {
  let made = 0;
  fc.assert(
    fc.property(documents, fc.nat(), values, (document, at, value) => {
      const paths = pathsOf(document.root).filter((path) => partAt(document, path).node.kind === 'list');
      if (paths.length === 0) return;
      const path = pick(paths, at);
      const splices = addItem(document, path, value);
      expect(splices).not.toBeNull();
      made += 1;
      const expected = changed(document, path, (part) => [...(part as unknown[]), value]);
      expect(plain(after(document, splices ?? []).root)).toEqual(expected);
    }),
    { ...runs, numRuns: 300 },
  );
  expect(made).toBeGreaterThan(80);
});

test('a part is taken away', () => {
  let made = 0;
  fc.assert(
    fc.property(documents, fc.nat(), (document, at) => {
      const paths = pathsOf(document.root).slice(1);
      if (paths.length === 0) return;
      const path = pick(paths, at);
      const splices = removePart(document, path);
      expect(splices).not.toBeNull();
      made += 1;
      const gone = withoutPart(document, path);
      const expected = plain(gone.root);
      expect(plain(after(document, splices ?? []).root)).toEqual(expected);
    }),
    runs,
  );
  expect(made).toBeGreaterThan(150);
});

test('a comment that stands deeper than a part goes with it, and never becomes part of the text before', () => {
  const text = 'a: >-\n    folded\nb:\n  c: 1\n  # of c\n\n  # still of b\n# of d\nd: 2\n';
  const { document } = yamlToDocument('', text);
  if (!document) throw new Error('it can be read');
  expect(spliced(text, removePart(document, ['b']) ?? [])).toBe('a: >-\n    folded\n# of d\nd: 2\n');
});

test('what is not there is neither set, added to nor taken away', () => {
  const { document } = yamlToDocument('', 'limits: { floor: 65 }\nlist: [1]\n');
  if (!document) throw new Error('it can be read');
  expect(setValue(document, ['limits', 'roof'], 90)).toBeNull();
  expect(addEntry(document, ['rules'], 'a', 1)).toBeNull();
  expect(addEntry(document, ['limits'], 'floor', 1)).toBeNull();
  expect(addItem(document, ['limits'], 1)).toBeNull();
  expect(removePart(document, ['list', 1])).toBeNull();
  expect(removePart(document, [])).toBeNull();
});

test('splices that overlap, or reach beyond the text, are refused', () => {
  const one = { from: 0, to: 2, text: '' };
  expect(() => spliced('abc', [one, { from: 1, to: 3, text: '' }])).toThrow('does not fit');
  expect(() => spliced('abc', [{ from: 2, to: 4, text: '' }])).toThrow('does not fit');
  expect(spliced('abc', [{ from: 2, to: 3, text: 'z' }, one])).toBe('z');
});
