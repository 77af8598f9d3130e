import type { Path, Span } from '../problems/place.ts';

export interface MapEntry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: Node;
}

/** What every part of a document has. */
interface Part {
  /** Where it stands. */
  readonly span: Span;
  /** Of a part that was written in another text: `span` is then the place in this text that brought it in. */
  readonly inherited?: true;
}

export interface MapNode extends Part {
  readonly kind: 'map';
  readonly entries: readonly MapEntry[];
}

export interface ListNode extends Part {
  readonly kind: 'list';
  readonly items: readonly Node[];
}

export interface ScalarNode extends Part {
  readonly kind: 'scalar';
  /** The value; a number has at most 15 significant digits, so its shortest decimal text is what was written. */
  readonly value: string | number | boolean | null;
}

export type Node = MapNode | ListNode | ScalarNode;

/**
 * A document: what a YAML or JSON text holds, each part with its place in the text.
 *
 * Places are offsets into `text`; lines and columns are worked out only when a problem is shown.
 */
export interface Document {
  /** The name under which problems cite the text. */
  readonly file: string;
  readonly text: string;
  readonly root: Node;
}

/**
 * The part of a document at a path, and the span of the key that names it.
 *
 * When the path leads nowhere, the nearest part above it is returned, so that a problem always has a place.
 */
export function partAt(document: Document, path: Path): { node: Node; keySpan: Span | null } {
  let node = document.root;
  let keySpan: Span | null = null;
  for (const step of path) {
    if (node.kind === 'map') {
      const entry = entryAt(node, String(step));
      if (!entry) break;
      ({ value: node, keySpan } = entry);
    } else if (node.kind === 'list') {
      const item = node.items[Number(step)];
      if (!item) break;
      node = item;
      keySpan = null;
    } else break;
  }
  return { node, keySpan };
}

const indexes = new WeakMap<MapNode, ReadonlyMap<string, MapEntry>>();

/** The entry of a key. A long map is searched once for all of its keys, so that many problems in it take no longer each. */
function entryAt(map: MapNode, key: string): MapEntry | undefined {
  if (map.entries.length < 32) return map.entries.find((entry) => entry.key === key);
  let index = indexes.get(map);
  if (!index) {
    index = new Map(map.entries.map((entry) => [entry.key, entry]));
    indexes.set(map, index);
  }
  return index.get(key);
}

/** What stands under a key of a map; null when nothing does. */
export function valueIn(node: Node | null, key: string): Node | null {
  return (node?.kind === 'map' && node.entries.find((entry) => entry.key === key)?.value) || null;
}

/** The plain value of a node: records without a prototype, arrays, text, numbers, true, false, null. */
export function toPlain(node: Node): unknown {
  switch (node.kind) {
    case 'scalar':
      return node.value;
    case 'list':
      return node.items.map(toPlain);
    case 'map': {
      const plain = Object.create(null) as Record<string, unknown>;
      for (const entry of node.entries) plain[entry.key] = toPlain(entry.value);
      return plain;
    }
  }
}
