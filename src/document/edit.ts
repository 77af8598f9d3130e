import type { Path } from '../problems/place.ts';
import type { Document, Node } from './document.ts';

/** The same document with one value changed. The text, and so every place, stays as it was. */
export function withValue(document: Document, path: Path, value: string | number): Document {
  return {
    ...document,
    root: edited(document.root, path, (node) => ({ kind: 'scalar', span: node.span, value })),
  };
}

/** The same document with one entry of a map in place of another: `below: 90` where `at_most: 90` stood. */
export function withEntry(document: Document, path: Path, key: string, value: Node): Document {
  const parent = path.slice(0, -1);
  const renamed = (node: Node): Node => {
    if (node.kind !== 'map') return node;
    const entries = node.entries.map((entry) =>
      entry.key === String(path.at(-1)) ? { ...entry, key, value } : entry,
    );
    return { ...node, entries };
  };
  return {
    ...document,
    root: parent.length === 0 ? renamed(document.root) : edited(document.root, parent, renamed),
  };
}

/** The same document without the entry or item at a path. */
export function withoutPart(document: Document, path: Path): Document {
  return { ...document, root: edited(document.root, path, () => null) };
}

function edited(node: Node, path: Path, change: (node: Node) => Node | null): Node {
  const [step, ...rest] = path;
  const inside = (part: Node): Node | null => (rest.length === 0 ? change(part) : edited(part, rest, change));
  if (node.kind === 'map') {
    const entries = node.entries.flatMap((entry) => {
      if (entry.key !== String(step)) return [entry];
      const value = inside(entry.value);
      return value ? [{ ...entry, value }] : [];
    });
    return { ...node, entries };
  }
  if (node.kind === 'list') {
    const items = node.items.flatMap((item, index) =>
      index === Number(step) ? (inside(item) ?? []) : [item],
    );
    return { ...node, items };
  }
  return node;
}
