/** Stands in a text where the caret is, so that also an empty place is a place. No text that is read can hold it. */
export const caretMark = '\uE000';

/** A text, and how far it has been read. */
export class Reading {
  readonly text: string;
  at = 0;

  constructor(text: string) {
    this.text = text;
    this.toContent();
  }

  get done(): boolean {
    return this.at >= this.text.length;
  }

  get next(): string {
    return this.text[this.at] ?? '';
  }

  /** How far from the beginning of its line the next character stands. */
  get column(): number {
    return this.at - this.lineStart(this.at);
  }

  lineStart(at: number): number {
    return this.text.lastIndexOf('\n', at - 1) + 1;
  }

  /** Where the line of a place ends, without its line end. */
  lineEnd(at = this.at): number {
    const newline = this.text.indexOf('\n', at);
    if (newline === -1) return this.text.length;
    return this.text[newline - 1] === '\r' ? Math.max(at, newline - 1) : newline;
  }

  skipSpaces(): void {
    while (this.next === ' ' || this.next === '\t') this.at += 1;
  }

  /** Whether nothing more is written on this line: its end, or a comment. */
  get lineIsDone(): boolean {
    return this.at >= this.lineEnd() || (this.next === '#' && this.isCommentStart(this.at));
  }

  isCommentStart(at: number): boolean {
    return this.text[at] === '#' && (at === 0 || /\s/.test(this.text[at - 1] ?? ''));
  }

  /** Past the rest of this line, to the next line on which something is written. */
  toNextLine(): void {
    const newline = this.text.indexOf('\n', this.at);
    this.at = newline === -1 ? this.text.length : newline + 1;
    this.toContent();
  }

  /** From the beginning of a line to the first sign that is no space and in no comment. */
  toContent(): void {
    while (!this.done) {
      this.skipSpaces();
      if (!this.lineIsDone && !this.isMarker()) return;
      const newline = this.text.indexOf('\n', this.at);
      if (newline === -1) {
        this.at = this.text.length;
        return;
      }
      this.at = newline + 1;
    }
  }

  /** A line of three dashes begins a document. */
  private isMarker(): boolean {
    return this.column === 0 && /^---[ \t]*(?:\r?\n|$)/.test(this.text.slice(this.at, this.at + 8));
  }

  /** Whether a dash that begins an item stands at a place. */
  isDash(at = this.at): boolean {
    return this.text[at] === '-' && /^(?:\s|\uE000|$)/.test(this.text.slice(at + 1, at + 2));
  }

  /**
   * Where the colon stands that ends the key which begins at a place, on this line; -1 where it begins none. A key may be quoted.
   */
  colonAfterKey(at = this.at): number {
    const end = this.lineEnd(at);
    let from = at;
    const quote = this.text[at];
    if (quote === '"' || quote === "'") {
      const close = this.text.indexOf(quote, at + 1);
      if (close === -1 || close >= end) return -1;
      from = close + 1;
    } else if (quote === '{' || quote === '[') return -1;
    for (let place = from; place < end; place += 1) {
      if (this.isCommentStart(place)) return -1;
      if (this.text[place] === ':' && this.endsKey(place)) return place;
    }
    return -1;
  }

  /** Whether a colon ends a key: a space, the end of the line or the caret follows. */
  endsKey(colon: number): boolean {
    const after = this.text[colon + 1];
    return after === undefined || /[\s\uE000]/.test(after);
  }
}
