import { partAt, type Document, type Node, type ScalarNode } from '../../document/document.ts';
import type { Path } from '../../problems/place.ts';
import type { Splice } from '../splice.ts';
import { flowText, plainText, type Plain } from '../yaml-text.ts';
import { beforeComment, beginsLine, colonAfter, column } from './places.ts';

/**
 * The edit that puts another value in the place of one that stands there; its quotation marks stay where it had some and the new value is
 * a text. Null where nothing stands at the path, and nothing can be put there by that.
 *
 * `setValue(document, ['limits', 'mean_floor', 'value'], 70)` changes two characters of the file.
 */
export function setValue(document: Document, path: Path, value: Plain): readonly Splice[] | null {
  const parent = path.length === 0 ? null : partAt(document, path.slice(0, -1)).node;
  const { node, keySpan } = partAt(document, path);
  if (path.length > 0 && !isAt(parent, path.at(-1) as string | number)) return null;
  const { text } = document;
  const { start, end } = node.span;
  if (node.kind !== 'scalar')
    return [
      {
        from: start,
        to: end,
        text: deepEnough(text, node, keySpan, beforeComment(text, end, flowText(value))),
      },
    ];
  const written = text.slice(start, end);
  if (written !== '') return [{ from: start, to: end, text: likeWritten(written, value) }];
  const colon = keySpan && colonAfter(text, keySpan.end);
  return colon === null ? null : [{ from: colon, to: colon, text: ` ${flowText(value)}` }];
}

function isAt(parent: Node | null, step: string | number): boolean {
  if (parent?.kind === 'map') return parent.entries.some(({ key }) => key === String(step));
  return parent?.kind === 'list' && Number(step) < parent.items.length;
}

/** In the quotation marks that stand there. */
function likeWritten(written: string, value: Plain): string {
  if (typeof value !== 'string') return flowText(value);
  if (written.startsWith('"')) return JSON.stringify(value);
  if (written.startsWith("'") && !/[\n\r]/.test(value)) return `'${value.replaceAll("'", "''")}'`;
  return plainText(value);
}

/** A list whose dashes stand below the first letter of its key: what takes its place must stand deeper. */
function deepEnough(
  text: string,
  { span }: Exclude<Node, ScalarNode>,
  key: Document['root']['span'] | null,
  put: string,
): string {
  const isFlat =
    key !== null && beginsLine(text, span.start) && column(text, span.start) <= column(text, key.start);
  return isFlat ? `  ${put}` : put;
}
