import { partAt, type Document, type ListNode, type MapNode } from '../../document/document.ts';
import type { Path } from '../../problems/place.ts';
import type { Splice } from '../splice.ts';
import { flowText, lineEndOf, plainText, type Plain } from '../yaml-text.ts';
import { column, dashOf, entryEnd, isFlow, lineEnd } from './places.ts';

/**
 * The edit that adds an entry to a map, after its last one, in the map's own manner: in its brackets, or on a line of its own. Null where
 * there is no map, or the key stands there already.
 *
 * `addEntry(document, ['rules', 0], 'level', 'call_doctor')`
 */
export function addEntry(
  document: Document,
  path: Path,
  key: string,
  value: Plain,
): readonly Splice[] | null {
  const { node } = partAt(document, path);
  if (node.kind !== 'map' || !leadsTo(document, path)) return null;
  if (node.entries.some((entry) => entry.key === key)) return null;
  const { text } = document;
  const written = `${plainText(key)}: ${flowText(value)}`;
  const last = node.entries.at(-1);
  if (isFlow(text, node)) return inBrackets(text, node, last ? entryEnd(text, last) : null, written);
  const [first] = node.entries;
  if (!first || !last) return null;
  return onOwnLine(
    text,
    entryEnd(text, last),
    column(text, first.keySpan.start),
    written,
    last.value.span.start,
  );
}

/** The edit that adds an item to a list, after its last one, in the list's own manner. Null where there is no list. */
export function addItem(document: Document, path: Path, value: Plain): readonly Splice[] | null {
  const { node } = partAt(document, path);
  if (node.kind !== 'list' || !leadsTo(document, path)) return null;
  const { text } = document;
  const last = node.items.at(-1);
  if (isFlow(text, node)) return inBrackets(text, node, last?.span.end ?? null, flowText(value));
  const dash = dashOf(text, node, node.items.length - 1);
  if (!last || dash === null) return null;
  const end = Math.max(last.span.end, dash + 1);
  return onOwnLine(text, end, column(text, dash), `- ${flowText(value)}`, last.span.start);
}

/** Whether a path leads to a part, and not only towards it. */
export function leadsTo(document: Document, path: Path): boolean {
  return path.every((step, depth) => {
    const { node } = partAt(document, path.slice(0, depth));
    if (node.kind === 'map') return node.entries.some(({ key }) => key === String(step));
    return node.kind === 'list' && Number(step) < node.items.length;
  });
}

function inBrackets(
  text: string,
  { span, kind }: MapNode | ListNode,
  end: number | null,
  written: string,
): Splice[] {
  if (end === null) {
    const put = kind === 'map' ? ` ${written} ` : written;
    return [{ from: span.start + 1, to: span.end - 1, text: put }];
  }
  const comma = /^\s*,/.exec(text.slice(end, span.end));
  const at = comma ? end + comma[0].length : end;
  return [{ from: at, to: at, text: comma ? ` ${written}` : `, ${written}` }];
}

/** Below the line on which the last part ends. A text that keeps the empty lines after it cannot be added to so. */
function onOwnLine(
  text: string,
  end: number,
  indent: number,
  written: string,
  lastStart: number,
): Splice[] | null {
  if (/^[|>][0-9]*\+/.test(text.slice(lastStart, lastStart + 4))) return null;
  const at = lineEnd(text, end);
  return [{ from: at, to: at, text: lineEndOf(text) + ' '.repeat(indent) + written }];
}
