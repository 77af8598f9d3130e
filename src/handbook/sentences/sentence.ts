/** One sentence, or one that ends with a colon and is finished by those below it. */
export interface Sentence {
  readonly text: string;
  readonly of: readonly Sentence[];
}

/** A sentence with nothing below it. */
export const plain = (text: string): Sentence => ({ text, of: [] });

/** The words `start` and a clause as one whole sentence: with a full stop, or with a colon where sentences stand below it. */
export const whole = (start: string, { text, of }: Sentence): Sentence => ({
  text: `${start}${text}${of.length > 0 ? ':' : '.'}`,
  of,
});

/** A clause as an item of a list: no full stop, and a colon where sentences stand below it. */
export const item = (start: string, { text, of }: Sentence): Sentence => ({
  text: `${start}${text}${of.length > 0 ? ':' : ''}`,
  of,
});

/** The clause of a whole sentence that begins so; null when it begins or ends otherwise. */
export const clauseAfter = (start: string, { text, of }: Sentence): Sentence | null =>
  text.startsWith(start) && text.endsWith(of.length > 0 ? ':' : '.')
    ? { text: text.slice(start.length, -1), of }
    : null;

/** The clause of an item; null when a colon stands there without, or lacks with, sentences below it. */
export function clauseOf({ text, of }: Sentence): Sentence | null {
  if (of.length === 0) return { text, of };
  return text.endsWith(':') ? { text: text.slice(0, -1), of } : null;
}

/** Sentences as lines of plain text, each below its own by two blanks: what a person would type to have them read back. */
export const sentencesToText = (sentences: readonly Sentence[], depth = 0): string =>
  sentences
    .map(({ text, of }) => `${'  '.repeat(depth)}- ${text}\n${sentencesToText(of, depth + 1)}`)
    .join('');

/** The same read back; null when a line stands deeper than one below the one before it, or is no line of such a list. */
export function textToSentences(text: string): readonly Sentence[] | null {
  const top: Sentence[] = [];
  const open: Sentence[][] = [top];
  for (const line of text.split('\n').filter((each) => each !== '')) {
    const [, blanks, words] = /^((?: {2})*)- (.+)$/.exec(line) ?? [];
    if (blanks === undefined || words === undefined) return null;
    const depth = blanks.length / 2;
    const list = open[depth];
    if (!list) return null;
    const of: Sentence[] = [];
    list.push({ text: words, of });
    open.length = depth + 1;
    open.push(of);
  }
  return top;
}
