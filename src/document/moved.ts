import type { Span } from '../problems/place.ts';
import type { Node } from './document.ts';

/** The same part of a document at another place: every span that many characters further on. */
export function moved<Part extends Node>(node: Part, by: number): Part {
  return by === 0 ? node : (movedNode(node, by) as Part);
}

const further = ({ start, end }: Span, by: number): Span => ({ start: start + by, end: end + by });

function movedNode(node: Node, by: number): Node {
  const span = further(node.span, by);
  switch (node.kind) {
    case 'scalar':
      return { ...node, span };
    case 'list':
      return { ...node, span, items: node.items.map((item) => movedNode(item, by)) };
    case 'map':
      return {
        ...node,
        span,
        entries: node.entries.map(({ key, keySpan, value }) => ({
          key,
          keySpan: further(keySpan, by),
          value: movedNode(value, by),
        })),
      };
  }
}
