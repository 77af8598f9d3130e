import type { Node } from '../../document/document.ts';
import { caretMark } from '../sketch/reading.ts';
import type { Part, TextPart } from '../sketch/sketch.ts';

/** A part of a sketch as a part of a document; what holds the caret's mark is left out. */
export function partToNode(part: Part): Node {
  const span = { start: part.from, end: part.to };
  if (part.kind === 'list')
    return { kind: 'list', span, items: part.items.filter((item) => !isAtCaret(item)).map(partToNode) };
  if (part.kind === 'map') {
    const entries = part.entries.flatMap(({ key, value }) =>
      isAtCaret(key) || isAtCaret(value)
        ? []
        : [{ key: key.text, keySpan: { start: key.from, end: key.to }, value: partToNode(value) }],
    );
    return { kind: 'map', span, entries };
  }
  return { kind: 'scalar', span, value: valueOf(part) };
}

const isAtCaret = (part: Part): boolean => part.kind === 'text' && part.text.includes(caretMark);

function valueOf({ text, style }: TextPart): string | number | boolean | null {
  if (style === 'none') return null;
  if (style !== 'plain') return text;
  if (/^[-+]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)$/.test(text)) return Number(text);
  if (text === 'true' || text === 'false') return text === 'true';
  return /^(?:null|~)$/.test(text) ? null : text;
}
