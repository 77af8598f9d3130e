import { scalarText } from './scalar-text.ts';
import type { Entry, Part, TextPart } from './sketch.ts';
import type { Reading } from './reading.ts';

/** Reads what stands in brackets. Where they are not closed, it ends where a line stands no deeper than `outer`. */
export class FlowReader {
  readonly #reading: Reading;
  readonly #outer: number;

  constructor(reading: Reading, outer: number) {
    this.#reading = reading;
    this.#outer = outer;
  }

  /** A part that begins here: a group, a list, a text. */
  part(): Part {
    const { next } = this.#reading;
    if (next === '{') return this.#map();
    if (next === '[') return this.#list();
    return this.#text(false);
  }

  #map(): Part {
    const reading = this.#reading;
    const from = reading.at;
    reading.at += 1;
    const entries: Entry[] = [];
    while (this.#toNext()) {
      if (reading.next === '}' || reading.next === ']') break;
      const before = reading.at;
      entries.push(this.#entry());
      if (reading.at === before) reading.at += 1;
    }
    this.#close('}');
    return { kind: 'map', flow: true, from, to: reading.at, entries };
  }

  #list(): Part {
    const reading = this.#reading;
    const from = reading.at;
    reading.at += 1;
    const items: Part[] = [];
    while (this.#toNext()) {
      if (reading.next === '}' || reading.next === ']') break;
      const before = reading.at;
      items.push(this.part());
      if (reading.at === before) reading.at += 1;
    }
    this.#close(']');
    return { kind: 'list', flow: true, from, to: reading.at, items };
  }

  #entry(): Entry {
    const reading = this.#reading;
    const key = this.#text(true);
    reading.skipSpaces();
    if (reading.next !== ':') return { key, colon: false, value: nothing(key.to) };
    reading.at += 1;
    const after = reading.at;
    reading.skipSpaces();
    if (reading.lineIsDone && !this.#toFurther()) return { key, colon: true, value: nothing(after) };
    if (/[,}\]]/.test(reading.next)) return { key, colon: true, value: nothing(after) };
    return { key, colon: true, value: this.part() };
  }

  /** A text in quotation marks or not; a key ends at its line, a value may go on over further lines. */
  #text(isKey: boolean): TextPart {
    const reading = this.#reading;
    const from = reading.at;
    if (reading.next === '"' || reading.next === "'") return quotedText(reading, this.#outer);
    let to = from;
    for (;;) {
      const end = reading.lineEnd();
      while (reading.at < end && !this.#endsPlain(isKey)) reading.at += 1;
      to = trimmedEnd(reading.text, from, reading.at);
      if (isKey || reading.at < end || !this.#goesOn()) break;
    }
    reading.at = to;
    return { kind: 'text', style: 'plain', from, to, text: scalarText(reading.text.slice(from, to)) };
  }

  #endsPlain(isKey: boolean): boolean {
    const reading = this.#reading;
    const { next } = reading;
    if (next === ',' || next === '}' || next === ']' || next === '{' || next === '[') return true;
    if (next === ':') return isKey || /[\s,}\]]/.test(reading.text[reading.at + 1] ?? ' ');
    return reading.isCommentStart(reading.at);
  }

  /** To the next line, where a text goes on there; a line that closes, or holds a key, is no such line. */
  #goesOn(): boolean {
    const reading = this.#reading;
    const before = reading.at;
    if (this.#toFurther() && !/[,}\]{[]/.test(reading.next) && reading.colonAfterKey() === -1) return true;
    reading.at = before;
    return false;
  }

  /** To the next sign that is no comma, over lines that stand deep enough. False where the brackets end without being closed. */
  #toNext(): boolean {
    const reading = this.#reading;
    for (;;) {
      reading.skipSpaces();
      if (reading.done) return false;
      if (reading.next === ',') reading.at += 1;
      else if (reading.lineIsDone) {
        if (!this.#toFurther()) return false;
      } else return true;
    }
  }

  /** To the next line, if it belongs to these brackets; else nothing is read. */
  #toFurther(): boolean {
    const reading = this.#reading;
    const before = reading.at;
    reading.toNextLine();
    const closes = reading.next === '}' || reading.next === ']';
    if (!reading.done && (reading.column > this.#outer || closes)) return true;
    reading.at = before;
    return false;
  }

  #close(bracket: string): void {
    if (this.#reading.next === bracket) this.#reading.at += 1;
  }
}

/** Where nothing is written. */
export const nothing = (at: number): TextPart => ({
  kind: 'text',
  style: 'none',
  from: at,
  to: at,
  text: '',
});

/** A text in quotation marks; one that is not closed ends with its line. */
export function quotedText(reading: Reading, outer: number): TextPart {
  const from = reading.at;
  const quote = reading.next;
  const close = closing(reading, quote, outer);
  const to = close === -1 ? trimmedEnd(reading.text, from, reading.lineEnd()) : close + 1;
  reading.at = to;
  const style = quote === '"' ? 'double' : 'single';
  const inside = reading.text.slice(from + 1, close === -1 ? to : close);
  return { kind: 'text', style, from, to, text: scalarText(inside, style) };
}

/** The quotation mark that closes; -1 where a line that stands no deeper than `outer` comes first. */
function closing({ text, at: from }: Reading, quote: string, outer: number): number {
  for (let at = from + 1; at < text.length; at += 1) {
    const sign = text[at];
    if (sign === '\\' && quote === '"') at += 1;
    else if (sign === quote) {
      if (quote === '"' || text[at + 1] !== "'") return at;
      at += 1;
    } else if (sign === '\n') {
      const line = /^([ \t]*)(\S?)/.exec(text.slice(at + 1, at + 200));
      if (line?.[2] !== '' && (line?.[1]?.length ?? 0) <= outer) return -1;
    }
  }
  return -1;
}

/** The end of a text without the spaces after it. */
export function trimmedEnd(text: string, from: number, to: number): number {
  let end = to;
  while (end > from && /\s/.test(text[end - 1] ?? '')) end -= 1;
  return end;
}
