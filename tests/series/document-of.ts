import { parseTree, type Node as JsonNode } from 'jsonc-parser';
import type { Document, Node } from '../../src/document/document.ts';

/** The document of a plain value, as its JSON text would be read. */
export function documentOf(value: unknown): Document {
  const text = JSON.stringify(value, null, 2);
  const tree = parseTree(text);
  if (!tree) throw new TypeError('there is no value');
  return { file: 'set.json', text, root: nodeOf(tree) };
}

function nodeOf(json: JsonNode): Node {
  const span = { start: json.offset, end: json.offset + json.length };
  const children = json.children ?? [];
  if (json.type === 'array') return { kind: 'list', span, items: children.map(nodeOf) };
  if (json.type !== 'object') {
    return { kind: 'scalar', span, value: json.value as string | number | boolean | null };
  }
  const entries = children.map((property) => {
    const [key, value] = property.children as [JsonNode, JsonNode];
    const keySpan = { start: key.offset, end: key.offset + key.length };
    return { key: String(key.value), keySpan, value: nodeOf(value) };
  });
  return { kind: 'map', span, entries };
}
