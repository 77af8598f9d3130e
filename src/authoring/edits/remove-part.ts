import { partAt, type Document, type ListNode, type MapNode, type Node } from '../../document/document.ts';
import type { Path } from '../../problems/place.ts';
import type { Splice } from '../splice.ts';
import { leadsTo } from './add-part.ts';
import {
  beforeComment,
  beginsLine,
  column,
  dashOf,
  entryEnd,
  isFlow,
  lineStart,
  nextLine,
} from './places.ts';

/** A part with what it takes up: from its key or dash to the end of its value. */
interface Extent {
  readonly start: number;
  readonly end: number;
}

/**
 * The edit that takes an entry or an item away, with its line where it has one to itself. The last one leaves empty brackets. Null where
 * nothing stands at the path.
 */
export function removePart(document: Document, path: Path): readonly Splice[] | null {
  if (path.length === 0 || !leadsTo(document, path)) return null;
  const { node } = partAt(document, path.slice(0, -1));
  const { text } = document;
  const extents = extentsOf(text, node);
  const index =
    node.kind === 'map'
      ? node.entries.findIndex(({ key }) => key === String(path.at(-1)))
      : Number(path.at(-1));
  const own = extents?.[index];
  if (!extents || !own || node.kind === 'scalar') return null;
  if (extents.length === 1) return [emptied(text, node)];
  const next = extents[index + 1];
  if (isFlow(text, node)) return [flowCut(extents, index)];
  if (beginsLine(text, own.start))
    return [{ from: lineStart(text, own.start), to: withDeeperComments(text, own), text: '' }];
  return next ? [{ from: own.start, to: next.start, text: '' }] : null;
}

/**
 * The line after a part and after the comments that stand deeper than it begins: they are its own, and behind a text over several lines they
 * would become part of that text.
 */
function withDeeperComments(text: string, { start, end }: Extent): number {
  const own = column(text, start);
  let after = nextLine(text, end);
  for (let at = after; at < text.length;) {
    const [line = '', spaces = '', sign = ''] = /^([ \t]*)(#?)[^\n]*\n?/.exec(text.slice(at)) ?? [];
    const isBlank = line.trim() === '';
    if (!isBlank && !(sign === '#' && spaces.length > own)) break;
    at += line.length;
    if (!isBlank) after = at;
  }
  return after;
}

function extentsOf(text: string, node: Node): Extent[] | null {
  if (node.kind === 'map')
    return node.entries.map((entry) => ({ start: entry.keySpan.start, end: entryEnd(text, entry) }));
  if (node.kind !== 'list') return null;
  if (isFlow(text, node)) return node.items.map(({ span }) => span);
  const found = node.items.map((item, index) => ({ start: dashOf(text, node, index), end: item.span.end }));
  return found.every(({ start }) => start !== null)
    ? found.map(({ start, end }) => ({ start: start ?? 0, end: Math.max(end, (start ?? 0) + 1) }))
    : null;
}

function emptied(text: string, { span, kind }: MapNode | ListNode): Splice {
  const put = beforeComment(text, span.end, kind === 'map' ? '{}' : '[]');
  return { from: span.start, to: span.end, text: put };
}

/** In brackets: with the comma after it, or with the one before it where it is the last. */
function flowCut(extents: readonly Extent[], index: number): Splice {
  const [before, own, next] = [extents[index - 1], extents[index], extents[index + 1]];
  if (next) return { from: own?.start ?? 0, to: next.start, text: '' };
  return { from: before?.end ?? 0, to: own?.end ?? 0, text: '' };
}
