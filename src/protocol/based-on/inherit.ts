import type { MapEntry, Node } from '../../document/document.ts';
import type { Span } from '../../problems/place.ts';

/** Where parts of a parent stand in the text of the protocol that is based on it. */
export interface Places {
  /** Where the parent is named. */
  readonly parent: Span;
  /** Names for which the text has a nearer place: limits with another value, and rules that are withdrawn. */
  readonly nearer: ReadonlyMap<string, Span>;
}

/** A part of the parent, with its place where the text names the parent; a part that names what the text changes stands at that change. */
function inherit(node: Node, places: Places): Node {
  switch (node.kind) {
    case 'scalar':
      return { ...node, span: placeOf(node.value, places), inherited: true };
    case 'list':
      return {
        ...node,
        items: node.items.map((each) => inherit(each, places)),
        span: places.parent,
        inherited: true,
      };
    case 'map':
      return {
        ...node,
        entries: node.entries.map((each) => inheritEntry(each, places)),
        span: places.parent,
        inherited: true,
      };
  }
}

export const inheritEntry = ({ key, value }: MapEntry, places: Places): MapEntry => ({
  key,
  keySpan: places.parent,
  value: inherit(value, places),
});

function placeOf(value: unknown, { parent, nearer }: Places): Span {
  if (typeof value !== 'string' || nearer.size === 0) return parent;
  const words = value.match(/[a-z][a-z0-9_]*/g) ?? [];
  const changed = words.find((word) => nearer.has(word));
  return (changed === undefined ? undefined : nearer.get(changed)) ?? parent;
}
