/** Characters that are not seen, that change how those around them are seen, or that no font need have. */
const unseen = /[\p{C}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}]/gu;

/**
 * A text in which everything can be seen: control characters as their pictures, other unseen ones by their numbers.
 *
 * `visible('a\u0007b')` is `'a␇b'`; a mark that turns the reading direction becomes `<U+202E>`. Nothing that a terminal would obey is left.
 */
export function visible(text: string): string {
  return text.replace(unseen, (character) => {
    const code = character.codePointAt(0) ?? 0;
    if (code < 0x20) return String.fromCodePoint(0x2400 + code);
    return code === 0x7f ? '␡' : `<${codePointName(code)}>`;
  });
}

/** The name of a character: `U+202E`. */
export const codePointName = (code: number): string =>
  `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;

const longest = 60;

/** The author's own words in quotation marks: all of it visible, and at most 60 characters of it. */
export function quoted(words: string): string {
  const start = Array.from(words.slice(0, 2 * longest + 2));
  return start.length > longest ? `"${visible(start.slice(0, longest).join(''))}…"` : `"${visible(words)}"`;
}
