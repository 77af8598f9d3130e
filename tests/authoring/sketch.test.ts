import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Node } from '../../src/document/document.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import type { Part } from '../../src/authoring/sketch/sketch.ts';
import { textToSketch } from '../../src/authoring/sketch/text-to-sketch.ts';

const folder = new URL('../../protocols/', import.meta.url);
const files = readdirSync(folder, { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.yaml'))
  .sort();

const isWritten = (node: Node): boolean => node.span.end > node.span.start;

/** A document as a sketch sees it: every value as its text, without the places. */
function seen(node: Node): unknown {
  if (node.kind === 'map') return node.entries.map(({ key, value }) => [key, seen(value)]);
  if (node.kind === 'list') return node.items.map(seen);
  if (node.value === null) return isWritten(node) ? 'null' : '';
  return typeof node.value === 'number' ? node.value : String(node.value).trim();
}

function sketched(part: Part, node: Node | undefined): unknown {
  if (part.kind === 'map')
    return part.entries.map(({ key, value }, index) => [
      key.text,
      sketched(value, node?.kind === 'map' ? node.entries[index]?.value : undefined),
    ]);
  if (part.kind === 'list')
    return part.items.map((item, index) =>
      sketched(item, node?.kind === 'list' ? node.items[index] : undefined),
    );
  return node?.kind === 'scalar' && typeof node.value === 'number' ? Number(part.text) : part.text;
}

test.each(files)('the sketch of %s holds what its document holds', (file) => {
  const text = readFileSync(new URL(file, folder), 'utf8');
  const { document } = yamlToDocument(file, text);
  expect(document).not.toBeNull();
  if (document) expect(sketched(textToSketch(text), document.root)).toEqual(seen(document.root));
});

test.each(files)('in the sketch of %s each part stands where it stands in the document', (file) => {
  const text = readFileSync(new URL(file, folder), 'utf8');
  const { document } = yamlToDocument(file, text);
  const sketch = textToSketch(text);
  expect(document && placesInSketch(sketch)).toEqual(document && placesInDocument(document.root));
});

const placesInSketch = (part: Part): unknown => {
  if (part.kind === 'map')
    return part.entries.map(({ key, value }) => [key.from, key.to, placesInSketch(value)]);
  if (part.kind === 'list') return part.items.map(placesInSketch);
  return part.style === 'none' ? null : [part.from, part.to];
};

const placesInDocument = (node: Node): unknown => {
  if (node.kind === 'map')
    return node.entries.map(({ keySpan, value }) => [keySpan.start, keySpan.end, placesInDocument(value)]);
  if (node.kind === 'list') return node.items.map(placesInDocument);
  return isWritten(node) ? [node.span.start, node.span.end] : null;
};

test.each(files)('the sketch of %s is the same with other line ends', (file) => {
  const text = readFileSync(new URL(file, folder), 'utf8').replaceAll('\n', '\r\n');
  const { document } = yamlToDocument(file, text);
  expect(document && sketched(textToSketch(text), document.root)).toEqual(document && seen(document.root));
});
