/** What a value of a file can be. */
export type Plain = string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

/** The line ends that a text uses: those of its first line. */
export const lineEndOf = (text: string): '\n' | '\r\n' => (/^[^\n]*\r\n/.test(text) ? '\r\n' : '\n');

/** What a plain text would mean otherwise, or could not stand for. */
const special =
  /^(?:null|true|false|~|<<|[-+.]?[0-9.].*|)$|^[-?:,[\]{}#&*!|>'"%@`]|[:#,[\]{}]|[\p{C}\u2028\u2029]|^\s|\s$/iu;

const quantity = /^[0-9]+(?:\.[0-9]+)? [^\s:#,[\]{}'"]+$/;

/** A text as it is written in YAML, in brackets or not: plain where it means itself, else in double quotation marks. */
export const plainText = (text: string): string =>
  !special.test(text) || quantity.test(text) ? text : JSON.stringify(text);

/** A value on one line: `{ age: 58 y, systolic: 104 }`. */
export function flowText(value: Plain): string {
  if (typeof value === 'string') return plainText(value);
  if (typeof value !== 'object' || value === null) return String(value);
  if (Array.isArray(value)) return `[${(value as readonly Plain[]).map(flowText).join(', ')}]`;
  const entries = Object.entries(value as { readonly [key: string]: Plain });
  const inside = entries.map(([key, each]) => `${plainText(key)}: ${flowText(each)}`);
  return inside.length === 0 ? '{}' : `{ ${inside.join(', ')} }`;
}
