/** A part of a page that is safe as it stands: it was made by `html` alone. */
export class Html {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

type Part = string | number | Html | null | readonly Part[];

/** Letters that a page would obey. */
const marks: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const quoted = (text: string): string => text.replace(/[&<>"']/g, (mark) => marks[mark] ?? '');

/**
 * The one way in which the page is written: what is put in is text, unless it was made here itself.
 *
 * `` html`<b>${'<script>'}</b>`.text `` is `<b>&lt;script&gt;</b>`.
 */
export function html(texts: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return new Html(
    texts
      .map((text, index) => (index === 0 ? text : `${inserted(parts[index - 1] ?? null)}${text}`))
      .join(''),
  );
}

function inserted(part: Part): string {
  if (part === null) return '';
  if (part instanceof Html) return part.text;
  if (typeof part === 'string') return quoted(part);
  return typeof part === 'number' ? String(part) : part.map(inserted).join('');
}
