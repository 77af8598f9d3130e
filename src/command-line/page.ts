import { columns, plainText, wrap } from './wrap.ts';

/** How something is shown on a terminal. */
export interface Shown {
  /** Columns. */
  readonly width: number;
  readonly colour: boolean;
}

/** Below so many columns a label stands on a line of its own. */
const roomForLabels = 56;
const labelWidth = 12;

/** Lines of plain words, wrapped to the terminal. Colour only adds to what the words say. */
export class Page {
  readonly #lines: string[] = [];
  readonly #shown: Shown;

  constructor(shown: Shown) {
    this.#shown = { ...shown, width: Math.max(20, shown.width) };
  }

  /** An empty line between two parts; never two of them, and none at the top. */
  gap(): void {
    if (this.#lines.length > 0 && this.#lines.at(-1) !== '') this.#lines.push('');
  }

  heading(text: string, colour: number | null = null): void {
    this.gap();
    for (const line of wrap(text.toUpperCase(), this.#shown.width))
      this.#lines.push(this.#strong(line, colour));
  }

  /** A line that stands out without being a heading. */
  title(text: string, indent = 0): void {
    for (const line of wrap(text, this.#shown.width, ' '.repeat(indent)))
      this.#lines.push(this.#strong(line, null));
  }

  text(text: string, indent = 0): void {
    this.#lines.push(...wrap(text, this.#shown.width, ' '.repeat(indent)));
  }

  item(text: string, indent = 0, mark = '-'): void {
    this.#lines.push(...wrap(text, this.#shown.width, `${' '.repeat(indent)}${mark} `));
  }

  /** A heading with its points; nothing at all without a point. */
  list(heading: string, items: readonly string[]): void {
    if (items.length === 0) return;
    this.heading(heading);
    for (const item of items) this.item(item);
  }

  /** A label with what belongs to it: beside it, or below it where the terminal is narrow. */
  labelled(label: string, texts: readonly string[], indent = 0): void {
    const before = ' '.repeat(indent);
    if (this.#shown.width < roomForLabels) {
      this.text(`${label}:`, indent);
      for (const text of texts) this.text(text, indent + 2);
      return;
    }
    texts.forEach((text, index) => {
      const shown = index === 0 ? plainText(label) : '';
      const first = before + shown + ' '.repeat(Math.max(1, labelWidth - columns(shown)));
      this.#lines.push(...wrap(text, this.#shown.width, first));
    });
  }

  toString(): string {
    return `${this.#lines.join('\n').replace(/\n+$/, '')}\n`;
  }

  #strong(line: string, colour: number | null): string {
    if (!this.#shown.colour) return line;
    return `\u001b[1${colour === null ? '' : `;38;5;${colour}`}m${line}\u001b[0m`;
  }
}
