/** TypeScript text. It is made by the tags below alone, so that no text of a protocol becomes part of a program. */
export class Code {
  readonly text: string;
  private constructor(text: string) {
    this.text = text;
  }

  /** Code with parts put in: code as it is, numbers and truths as they are written, a text as a quoted string. */
  static of(strings: TemplateStringsArray, ...parts: readonly Insert[]): Code {
    return new Code(strings.reduce((all, string, index) => all + written(parts[index - 1]) + string));
  }

  static readonly never = new Code('Infinity');

  static joined(parts: readonly Code[], between: string): Code {
    return new Code(parts.map(({ text }) => text).join(between));
  }

  /** A name of a protocol as a part of an identifier. Throws at anything else: names were checked when the protocol was read. */
  static name(name: string): Code {
    if (!/^[A-Za-z_][A-Za-z0-9_]*$/.test(name)) throw new Error(`${JSON.stringify(name)} is no name`);
    return new Code(name);
  }

  /** A comment of its own lines. Nothing in the text can end it, and nothing in it is invisible. */
  static comment(...lines: readonly string[]): Code {
    const safe = lines.map((line) =>
      ` * ${plain(line).replaceAll('*/', '* /').replaceAll('@', '(at)')}`.trimEnd(),
    );
    return new Code(safe.length === 1 ? `/**${safe[0]?.slice(2) ?? ''} */` : `/**\n${safe.join('\n')}\n */`);
  }
}

export type Insert = Code | string | number | boolean;
export const code = Code.of.bind(Code);

function written(part: Insert | undefined): string {
  if (part === undefined) return '';
  if (part instanceof Code) return part.text;
  if (typeof part === 'string') return quoted(part);
  if (typeof part === 'number' && !Number.isFinite(part))
    throw new Error(`${part} is no number of a program`);
  return Object.is(part, -0) ? '0' : String(part);
}

/** A string literal in ASCII alone: nothing in it can end it, open a comment or a tag, or look like something else. */
function quoted(text: string): string {
  const escaped = [
    ...JSON.stringify(text)
      .slice(1, -1)
      .replaceAll("'", String.raw`\u0027`),
  ].map((letter) => (/[ -~]/.test(letter) && !'<>`$*/'.includes(letter) ? letter : unicode(letter)));
  return `'${escaped.join('').replaceAll(String.raw`\"`, '"')}'`;
}

const unicode = (letter: string): string =>
  letter
    .split('')
    .map((unit) => String.raw`\u` + unit.charCodeAt(0).toString(16).padStart(4, '0'))
    .join('');

/** One line without control characters, line ends of any kind, and letters that cannot be seen or turn the writing round. */
const plain = (text: string): string => text.replaceAll(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Co}\p{Cs}]+/gu, ' ');
