import type { Document, MapEntry, Node } from '../../src/document/document.ts';

/** A document of a plain value, written as JSON on one line, without the limits that a text has. */
export function planted(value: unknown): Document {
  const writer = new Writer();
  const root = writer.node(value);
  return { file: 'planted.json', text: writer.text, root };
}

class Writer {
  private readonly parts: string[] = [];
  private length = 0;

  get text(): string {
    return this.parts.join('');
  }

  node(value: unknown): Node {
    const start = this.length;
    if (Array.isArray(value)) {
      const items = this.between('[', ']', value, (item) => this.node(item));
      return { kind: 'list', span: { start, end: this.length }, items };
    }
    if (typeof value === 'object' && value !== null) {
      const entries = this.between('{', '}', Object.entries(value), (entry) => this.entry(...entry));
      return { kind: 'map', span: { start, end: this.length }, entries };
    }
    this.write(JSON.stringify(value));
    return {
      kind: 'scalar',
      span: { start, end: this.length },
      value: value as string | number | boolean | null,
    };
  }

  private entry(key: string, value: unknown): MapEntry {
    const start = this.length;
    this.write(JSON.stringify(key));
    const keySpan = { start, end: this.length };
    this.write(': ');
    return { key, keySpan, value: this.node(value) };
  }

  private between<Item, Part>(
    open: string,
    close: string,
    items: readonly Item[],
    write: (item: Item) => Part,
  ): Part[] {
    this.write(open);
    const parts = items.map((item, index) => {
      if (index > 0) this.write(', ');
      return write(item);
    });
    this.write(close);
    return parts;
  }

  private write(text: string): void {
    this.parts.push(text);
    this.length += text.length;
  }
}
