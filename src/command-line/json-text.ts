/** Letters that JSON may hold as they are, but that a terminal obeys or that are not seen. */
const unseen = /[\u007f-\u009f\p{Cf}\p{Zl}\p{Zp}]/gu;

/**
 * A value as indented JSON with a line end, in which a terminal finds nothing to obey: what cannot be seen is written by its number.
 *
 * `jsonText('a\u202eb')` is `"a\\u202eb"` and a line end.
 */
export const jsonText = (value: unknown): string =>
  `${JSON.stringify(value, null, 2).replace(unseen, (letters) =>
    [...Array(letters.length).keys()]
      .map((at) => `\\u${letters.charCodeAt(at).toString(16).padStart(4, '0')}`)
      .join(''),
  )}\n`;
