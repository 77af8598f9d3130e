import type { MapNode, Node } from '../../document/document.ts';

// What is given in an example is made as a part of a case file, so that it is read exactly as it will be once it is pasted.

const span = { start: 0, end: 0 };

export const scalar = (value: string | number | boolean): Node => ({ kind: 'scalar', span, value });

export const list = (items: readonly Node[]): Node => ({ kind: 'list', span, items });

export const map = (entries: Iterable<readonly [string, Node]>): MapNode => ({
  kind: 'map',
  span,
  entries: [...entries].map(([key, value]) => ({ key, keySpan: span, value })),
});

/** The same map with one entry changed or added; without it where the value is null. */
export function withKey(node: MapNode, key: string, value: Node | null): MapNode {
  const others = node.entries.filter((entry) => entry.key !== key);
  return { ...node, entries: value ? [...others, { key, keySpan: span, value }] : others };
}
