import { FlowReader, nothing, quotedText, trimmedEnd } from './read-flow.ts';
import { Reading } from './reading.ts';
import { scalarText } from './scalar-text.ts';
import type { Entry, ListPart, MapPart, Part, TextPart } from './sketch.ts';

/** Deeper than this nothing is made out: no file of the language goes so far. */
const deepest = 64;

/**
 * Makes out what a text holds, however half-typed it is: by the columns in which its lines begin, by dashes, colons and brackets.
 * It never fails; what cannot be made out is left out.
 *
 * Of `when: { systolic: { bel` it is a map, `when`, in which `systolic` holds the key `bel` that has no colon yet.
 */
export function textToSketch(text: string): Part {
  const reading = new Reading(text);
  const reader = new BlockReader(reading);
  if (reading.done) return { kind: 'map', flow: false, from: text.length, to: text.length, entries: [] };
  let root = reader.block(-1, 0);
  while (!reading.done) root = together(root, reader.block(-1, 0));
  return root;
}

/** Two parts of which the second was to be part of the first: their entries, their items; what was half-typed is a key without a colon. */
function together(first: Part, second: Part): Part {
  const to = second.to;
  if (second.kind === 'map') {
    const before = first.kind === 'map' ? first.entries : first.kind === 'text' ? halfTyped(first) : [];
    return { ...second, from: first.from, entries: [...before, ...second.entries] };
  }
  if (first.kind === 'map' && second.kind === 'text')
    return { ...first, to, entries: [...first.entries, ...halfTyped(second)] };
  if (second.kind === 'list') {
    const before = first.kind === 'list' ? first.items : written(first);
    return first.kind === 'map'
      ? first
      : { ...second, from: first.from, items: [...before, ...second.items] };
  }
  if (first.kind === 'list') return { ...first, to, items: [...first.items, second] };
  return written(first).length === 0 ? second : first;
}

const written = (part: Part): Part[] => (part.kind === 'text' && part.text === '' ? [] : [part]);

const halfTyped = (key: TextPart): Entry[] =>
  key.text === '' ? [] : [{ key, colon: false, value: nothing(key.to) }];

class BlockReader {
  readonly #reading: Reading;

  constructor(reading: Reading) {
    this.#reading = reading;
  }

  /** The part that begins here, deeper than `outer`. */
  block(outer: number, depth: number): Part {
    const reading = this.#reading;
    if (depth > deepest) {
      while (!reading.done && reading.column > outer) reading.toNextLine();
      return nothing(reading.at);
    }
    if (reading.isDash()) return this.#list(depth);
    if (reading.colonAfterKey() !== -1 || this.#isHalfKey()) return this.#map(depth);
    return this.#inline(outer);
  }

  /** A line without a colon, above one in the same column that has one. */
  #isHalfKey(): boolean {
    const reading = this.#reading;
    if (/["'{[|>]/.test(reading.next)) return false;
    const { at, column } = reading;
    reading.toNextLine();
    const is =
      !reading.done && reading.column === column && reading.colonAfterKey() !== -1 && !reading.isDash();
    reading.at = at;
    return is;
  }

  #map(depth: number): MapPart {
    const reading = this.#reading;
    const { at: from, column } = reading;
    const entries: Entry[] = [];
    let to = from;
    while (!reading.done && reading.column === column && !reading.isDash()) {
      let entry = this.#entry(column, depth);
      while (!reading.done && reading.column > column)
        entry = { ...entry, value: together(entry.value, this.block(column, depth + 1)) };
      entries.push(entry);
      to = Math.max(entry.key.to, entry.value.to);
    }
    return { kind: 'map', flow: false, from, to, entries };
  }

  #entry(column: number, depth: number): Entry {
    const reading = this.#reading;
    const colon = reading.colonAfterKey();
    const key = this.#key(colon);
    if (colon === -1) {
      reading.toNextLine();
      return { key, colon: false, value: nothing(key.to) };
    }
    reading.at = colon + 1;
    reading.skipSpaces();
    if (!reading.lineIsDone) return { key, colon: true, value: this.#inline(column) };
    reading.toNextLine();
    const isDeeper = reading.column > column || (reading.column === column && reading.isDash());
    if (reading.done || !isDeeper) return { key, colon: true, value: nothing(colon + 1) };
    return { key, colon: true, value: this.block(column, depth + 1) };
  }

  #key(colon: number): TextPart {
    const reading = this.#reading;
    if (reading.next === '"' || reading.next === "'") return quotedText(reading, reading.column);
    const from = reading.at;
    const to = trimmedEnd(reading.text, from, colon === -1 ? this.#plainEnd() : colon);
    return { kind: 'text', style: 'plain', from, to, text: reading.text.slice(from, to) };
  }

  #list(depth: number): ListPart {
    const reading = this.#reading;
    const { at: from, column } = reading;
    const items: Part[] = [];
    while (!reading.done && reading.column === column && reading.isDash()) {
      let item = this.#item(column, depth);
      while (!reading.done && reading.column > column) item = together(item, this.block(column, depth + 1));
      items.push(item);
    }
    return { kind: 'list', flow: false, from, to: items.at(-1)?.to ?? from, items };
  }

  #item(column: number, depth: number): Part {
    const reading = this.#reading;
    reading.at += 1;
    const after = reading.at;
    reading.skipSpaces();
    if (!reading.lineIsDone) return this.block(column, depth + 1);
    reading.toNextLine();
    return !reading.done && reading.column > column ? this.block(column, depth + 1) : nothing(after);
  }

  /** What stands on this line, and on deeper ones that it goes on to; then to the next line. */
  #inline(outer: number): Part {
    const reading = this.#reading;
    const part = this.#inlinePart(outer);
    if (part.style !== 'block') reading.toNextLine();
    return part.part;
  }

  #inlinePart(outer: number): { part: Part; style: string } {
    const reading = this.#reading;
    const { next } = reading;
    if (next === '{' || next === '[') return { part: new FlowReader(reading, outer).part(), style: 'flow' };
    if (next === '"' || next === "'") return { part: quotedText(reading, outer), style: 'quoted' };
    if (/^[|>][-+0-9]*[ \t]*(?:#|\r?\n|$)/.test(reading.text.slice(reading.at, reading.at + 40)))
      return { part: this.#blockText(outer), style: 'block' };
    return { part: this.#plain(outer), style: 'plain' };
  }

  #plain(outer: number): TextPart {
    const reading = this.#reading;
    const from = reading.at;
    let to = trimmedEnd(reading.text, from, this.#plainEnd());
    for (;;) {
      reading.at = to;
      reading.toNextLine();
      const goesOn =
        !reading.done && reading.column > outer && reading.colonAfterKey() === -1 && !reading.isDash();
      if (!goesOn) break;
      to = trimmedEnd(reading.text, reading.at, this.#plainEnd());
    }
    reading.at = to;
    return { kind: 'text', style: 'plain', from, to, text: scalarText(reading.text.slice(from, to)) };
  }

  /** The end of this line without its comment. */
  #plainEnd(): number {
    const reading = this.#reading;
    const end = reading.lineEnd();
    for (let at = reading.at; at < end; at += 1) if (reading.isCommentStart(at)) return at;
    return end;
  }

  /** A text of further lines, after | or >. */
  #blockText(outer: number): TextPart {
    const reading = this.#reading;
    const { text, at: from } = reading;
    let to = reading.lineEnd();
    let at = text.indexOf('\n', from);
    while (at !== -1) {
      const [, spaces = '', sign = ''] = /^([ \t]*)(\S?)/.exec(text.slice(at + 1, at + 200)) ?? [];
      if (sign !== '' && spaces.length <= outer) break;
      to = reading.lineEnd(at + 1);
      at = text.indexOf('\n', at + 1);
    }
    reading.at = at === -1 ? text.length : at + 1;
    reading.toContent();
    const head = reading.lineEnd(from);
    to = trimmedEnd(text, from, to);
    const lines = text.slice(head, Math.max(head, to));
    return {
      kind: 'text',
      style: 'block',
      from,
      to,
      text: scalarText(lines, text[from] === '|' ? 'literal' : 'plain').trim(),
    };
  }
}
