/** A piece of HTML that was written through the tag below: nothing in it is markup but what the kit itself wrote. */
export class Html {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

/** What may stand in a gap: text and numbers become text, pieces stay, null is nothing. */
export type Gap = Html | string | number | null | readonly Gap[];

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text that means the same between tags and between quotation marks: `a < "b"` is `a &lt; &quot;b&quot;`. */
const escaped = (text: string): string => text.replaceAll(/[&<>"']/g, (each) => escapes[each] ?? each);

function written(gap: Gap): string {
  if (gap === null) return '';
  if (gap instanceof Html) return gap.text;
  if (typeof gap === 'string') return escaped(gap);
  return typeof gap === 'number' ? String(gap) : gap.map(written).join('');
}

/** HTML with gaps that are quoted: `` html`<p>${'<b>'}</p>` `` is `<p>&lt;b&gt;</p>`. */
export const html = ({ raw }: TemplateStringsArray, ...gaps: readonly Gap[]): Html =>
  new Html(raw.map((text, index) => text + written(gaps[index] ?? null)).join(''));
