import { checkSize, hasMoreLines } from './checks/size.ts';
import { checkCharacters } from './checks/characters.ts';
import { MapKeys } from './checks/keys.ts';
import { valueIn, type ListNode, type MapEntry, type MapNode, type Node } from './document.ts';
import { limits } from './limits.ts';
import { moved } from './moved.ts';
import type { ReadText } from './read-text.ts';
import { TextFaults } from './text-faults.ts';
import { piecesOf, type Piece } from './yaml-pieces.ts';
import { partsIn } from './yaml-parse.ts';
import { yamlToDocument } from './yaml-to-document.ts';

/** A piece that was read by itself and has no mistake. */
interface ReadPiece {
  readonly root: Node;
  /** How many parts of YAML it has; never fewer than it adds to the whole text. */
  readonly parts: number;
  /** The same at its place in the last text that had it; so what stands before a change is not moved again. */
  placed: { readonly by: number; readonly root: Node };
}

/** What a piece is nested in when the text is read whole. */
const levelsAbove = 2;

/** In front of an item that is read by itself, so that it stands in a list. */
const listKey = 'x:\n';

/**
 * Reads YAML texts that are nearly the same as one that was read before, while somebody writes: only the parts that have changed are parsed.
 * The answer is always that of `yamlToDocument`; a text with any mistake is read whole.
 */
export class YamlReader {
  private known = new Map<string, ReadPiece | null>();
  private last: { readonly file: string; readonly text: string; readonly read: ReadText } | null = null;

  /** The very same answer for the very same text, so that it can be seen that nothing has changed. */
  read(file: string, text: string): ReadText {
    if (this.last?.file === file && this.last.text === text) return this.last.read;
    const read = this.readAnew(file, text);
    this.last = { file, text, read };
    return read;
  }

  private readAnew(file: string, text: string): ReadText {
    const root = this.inPieces(text);
    if (!root) return yamlToDocument(file, text);
    const document = { file, text, root };
    return { document, problems: [], draft: document };
  }

  private inPieces(text: string): MapNode | null {
    const faults = new TextFaults('', text);
    if (!checkSize(text, faults) || hasMoreLines(text, limits.parts)) return null;
    const used = new Map<string, ReadPiece | null>();
    const entries: MapEntry[] = [];
    const items = new Map<number, ListNode>();
    let parts = 0;
    const pieces = piecesOf(text) ?? [];
    // What stands above the first key belongs to no piece.
    checkCharacters(text.slice(0, pieces[0]?.start), faults);
    for (const piece of pieces) {
      const read = this.piece(piece);
      used.set(keyOf(piece), read);
      if (!read) break;
      parts += read.parts;
      const root = placedAt(read, piece);
      if (root.kind === 'map') entries.push(...root.entries);
      if (root.kind === 'list') items.set(piece.listAt, together(items.get(piece.listAt), root));
    }
    const isWhole = [...used.values()].every((read) => read !== null);
    this.known = used;
    return isWhole && parts <= limits.parts ? joined(entries, items, faults) : null;
  }

  /** Null when the piece is not one entry or one item, or has a mistake. */
  private piece(piece: Piece): ReadPiece | null {
    const key = keyOf(piece);
    const before = this.known.get(key);
    if (before !== undefined) return before;
    const read = piece.kind === 'item' ? readItem(piece.text) : readEntry(piece.text);
    this.known.set(key, read);
    return read;
  }
}

const keyOf = ({ kind, text }: Piece): string => `${kind} ${text}`;

function readEntry(text: string): ReadPiece | null {
  const { document } = yamlToDocument('', text);
  return document?.root.kind === 'map' && document.root.entries.length === 1
    ? readPiece(document.root, text)
    : null;
}

function readItem(text: string): ReadPiece | null {
  const { document } = yamlToDocument('', listKey + text);
  const list = document && valueIn(document.root, 'x');
  const isAlone = document?.root.kind === 'map' && document.root.entries.length === 1;
  return isAlone && list?.kind === 'list' && list.items.length === 1
    ? readPiece(moved(list, -listKey.length), text)
    : null;
}

function readPiece(root: Node, text: string): ReadPiece | null {
  const isShallow = nestingOf(root) + levelsAbove <= limits.depth;
  return isShallow ? { root, parts: partsIn(text), placed: { by: 0, root } } : null;
}

const nestingOf = (node: Node): number =>
  node.kind === 'scalar'
    ? 0
    : 1 +
      Math.max(
        0,
        ...(node.kind === 'list' ? node.items : node.entries.map(({ value }) => value)).map(nestingOf),
      );

function placedAt(read: ReadPiece, { start }: Piece): Node {
  if (read.placed.by !== start) read.placed = { by: start, root: moved(read.root, start) };
  return read.placed.root;
}

const together = (list: ListNode | undefined, more: ListNode): ListNode =>
  list
    ? { ...list, span: { start: list.span.start, end: more.span.end }, items: [...list.items, ...more.items] }
    : more;

/** The entries with their lists in place; null where two have one key. */
function joined(
  entries: readonly MapEntry[],
  items: ReadonlyMap<number, ListNode>,
  faults: TextFaults,
): MapNode | null {
  const keys = new MapKeys(faults);
  const whole = entries.map((entry): MapEntry => {
    keys.accept(entry.key, entry.keySpan);
    return { ...entry, value: items.get(entry.keySpan.start) ?? entry.value };
  });
  const [first, last] = [whole[0], whole.at(-1)];
  if (!first || !last || !faults.isEmpty) return null;
  const end = Math.max(last.keySpan.end, last.value.span.end);
  return { kind: 'map', span: { start: first.keySpan.start, end }, entries: whole };
}
