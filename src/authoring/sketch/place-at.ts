import type { Path } from '../../problems/place.ts';
import { caretMark } from './reading.ts';
import type { Entry, ListPart, MapPart, Part, TextPart } from './sketch.ts';
import { textToSketch } from './text-to-sketch.ts';

/** Where a caret stands in a text that may be half-typed. */
export interface CaretPlace {
  /** The text as a sketch, in which the word at the caret holds the caret's mark. */
  readonly sketch: Part;
  /** A key of a map; the value under a key; an item of a list. */
  readonly role: 'key' | 'value' | 'item';
  /** Of a key the path of its map; else the path of the value or item. */
  readonly path: Path;
  /** The map or list in which it stands; null where it is the whole text. */
  readonly around: MapPart | ListPart | null;
  /** The entry of a key, or of a value. */
  readonly entry: Entry | null;
  /** The whole word, without quotation marks; what of it stands before the caret. */
  readonly word: string;
  readonly before: string;
  readonly style: TextPart['style'];
  /** The offsets of the word in the text, with its quotation marks. */
  readonly from: number;
  readonly to: number;
  /** Whether it is the first sign of its line. */
  readonly ownLine: boolean;
  /** How far from the beginning of its line it stands. */
  readonly column: number;
}

/** Finds where a caret stands. Null in a comment, and where nothing can be made out. */
export function placeAt(text: string, offset: number): CaretPlace | null {
  const marked = text.slice(0, offset) + caretMark + text.slice(offset);
  const sketch = textToSketch(marked);
  const found = find(sketch, [], null, null);
  if (!found) return null;
  const { part, role, path, around, entry } = found;
  const lineStart = text.lastIndexOf('\n', part.from - 1) + 1;
  const at = part.text.indexOf(caretMark);
  return {
    sketch,
    role,
    path,
    around,
    entry,
    word: part.text.replace(caretMark, ''),
    before: part.text.slice(0, at),
    style: part.style === 'plain' && part.text === caretMark ? 'none' : part.style,
    from: part.from,
    to: part.to - caretMark.length,
    ownLine: text.slice(lineStart, part.from).trim() === '',
    column: part.from - lineStart,
  };
}

type Found = Pick<CaretPlace, 'role' | 'path' | 'around' | 'entry'> & { readonly part: TextPart };
type Around = Found['around'];

function find(part: Part, path: Path, around: Around, entry: Entry | null): Found | null {
  if (part.kind === 'text') {
    if (!part.text.includes(caretMark)) return null;
    return { part, role: around?.kind === 'list' ? 'item' : 'value', path, around, entry };
  }
  if (part.kind === 'list') {
    for (const [index, item] of part.items.entries()) {
      const found = find(item, [...path, index], part, null);
      if (found) return found;
    }
    return null;
  }
  for (const each of part.entries) {
    const { key, value } = each;
    if (key.text.includes(caretMark)) return { part: key, role: 'key', path, around: part, entry: each };
    const found = find(value, [...path, key.text], part, each);
    if (found) return found;
  }
  return null;
}

/** A key or a text at an offset, for hover; the ends belong to it. Null between words. */
export interface WordPlace {
  readonly role: CaretPlace['role'];
  readonly path: Path;
  readonly around: Around;
  readonly part: TextPart;
}

export function wordAt(sketch: Part, offset: number): WordPlace | null {
  return wordIn(sketch, offset, [], null);
}

const holds = ({ from, to }: { from: number; to: number }, offset: number): boolean =>
  from <= offset && offset <= to;

function wordIn(part: Part, offset: number, path: Path, around: Around): WordPlace | null {
  if (part.kind === 'text') {
    const role = around?.kind === 'list' ? 'item' : 'value';
    return holds(part, offset) && part.from < part.to ? { role, path, around, part } : null;
  }
  if (part.kind === 'list') {
    const index = part.items.findIndex((item) => holds(item, offset));
    const item = part.items[index];
    return item ? wordIn(item, offset, [...path, index], part) : null;
  }
  const key = part.entries.find((entry) => holds(entry.key, offset));
  if (key) return { role: 'key', path, around: part, part: key.key };
  const entry = part.entries.find(({ value }) => holds(value, offset));
  return entry ? wordIn(entry.value, offset, [...path, entry.key.text], part) : null;
}
