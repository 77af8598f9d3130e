/** SMT-LIB 2 text. It is made by the tags below alone, so that no text of a protocol becomes part of a script. */
export class Smt {
  readonly text: string;
  private constructor(text: string) {
    this.text = text;
  }

  /**
   * A script with parts put in: text that was made here as it is, whole numbers and truths as they are written, and a string as
   * the symbol of that name.
   */
  static of(strings: TemplateStringsArray, ...parts: readonly Insert[]): Smt {
    return new Smt(strings.reduce((all, string, index) => all + written(parts[index - 1]) + string));
  }

  static joined(parts: readonly Smt[], between: ' ' | '\n' | '\n  '): Smt {
    return new Smt(parts.map(({ text }) => text).join(between));
  }

  /** Comments of their own lines. Nothing in a text can end its line, and nothing in it is invisible. */
  static comment(...lines: readonly string[]): Smt {
    return new Smt(lines.map((line) => `; ${oneLine(line)}`.trimEnd()).join('\n'));
  }
}

export type Insert = Smt | string | number | boolean;

/** `smt\`(<= ${'systolic:low'} ${90})\`` is `(<= |systolic:low| 90)`. */
export const smt = Smt.of.bind(Smt);

function written(part: Insert | undefined): string {
  if (part === undefined) return '';
  if (part instanceof Smt) return part.text;
  if (typeof part === 'string') return symbol(part);
  return typeof part === 'number' ? whole(part) : String(part);
}

/** SMT-LIB has no negative numerals: −5 is `(- 5)`. */
function whole(value: number): string {
  if (!Number.isSafeInteger(value)) throw new Error(`${value} is no whole number of a script`);
  return value < 0 ? `(- ${-value})` : String(Math.abs(value));
}

/** What a name holds beside its first letter when it can be none of SMT-LIB's own, whether quoted or not: `and`, `Int`, `/`. */
const isOurs = /^[A-Za-z].*[:/]/;

/**
 * A name as a quoted symbol. Letters, digits and `_ : / # -` stand as they are; every other character is its code point in
 * hexadecimal between two `~`, so that neither `|` nor a backslash nor a line end can end the symbol, two names never share
 * one, and none is a word of SMT-LIB itself (`|and|` would be the same as `and`).
 */
function symbol(name: string): string {
  const letters = [...name].map((letter, index) =>
    /[A-Za-z0-9_:/#-]/.test(letter) && (index > 0 || isOurs.test(name)) ? letter : escaped(letter),
  );
  return `|${letters.join('') || '~~'}|`;
}

const escaped = (letter: string): string => `~${(letter.codePointAt(0) as number).toString(16)}~`;

/** One line in which each control character, line end of any kind and letter that cannot be seen is a blank. */
const oneLine = (text: string): string => text.replaceAll(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Co}\p{Cs}]+/gu, ' ');
