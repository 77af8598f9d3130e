import { Composer, CST, Lexer, Parser, type Document as YamlDocument } from 'yaml';
import { refuseMark } from './checks/marks.ts';
import { limits } from './limits.ts';
import type { TextFaults } from './text-faults.ts';

export type YamlTree = YamlDocument.Parsed;

/** The text in tokens; `tooDeep` is where its nesting passed the limit and the rest was left unread. */
interface Tokens {
  readonly tokens: readonly CST.Token[];
  readonly tooDeep: number | null;
}

/**
 * Lexes and parses a text into tokens, at most as many parts as the limit. Lexer and parser keep a stack of their own, so that
 * nesting is counted before anything recursive looks at it. Null when the text is refused.
 */
export function toTokens(text: string, faults: TextFaults): Tokens | null {
  const parser = new Parser();
  const found = new FoundTokens(faults);
  const marks = new Marks(faults);
  let parts = 0;
  for (const lexeme of new Lexer().lex(text)) {
    marks.take(lexeme);
    parts += 1;
    if (parts > limits.parts) {
      faults.add('too_many_parts', { start: parser.offset, end: parser.offset + 1 }, { most: limits.parts });
      return null;
    }
    found.take(parser.next(lexeme));
    if (faults.full) return null;
    if (found.documents > 1) return { tokens: found.tokens, tooDeep: null };
    if (isTooDeep(parser.stack)) {
      const tooDeep = parser.offset - 1;
      found.take(parser.end());
      return { tokens: found.tokens, tooDeep };
    }
  }
  found.take(parser.end());
  return { tokens: found.tokens, tooDeep: null };
}

/** How many parts a text has, as the limit counts them. */
export function partsIn(text: string): number {
  return [...new Lexer().lex(text)].length;
}

/** Keeps the tokens of a text; a second document is noted where it begins. */
class FoundTokens {
  readonly tokens: CST.Token[] = [];
  documents = 0;
  private readonly faults: TextFaults;

  constructor(faults: TextFaults) {
    this.faults = faults;
  }

  take(tokens: Iterable<CST.Token>): void {
    for (const token of tokens) {
      // A directive is refused where it stands, and must not change how the rest is read.
      if (token.type === 'directive') continue;
      this.tokens.push(token);
      if (token.type !== 'document') continue;
      this.documents += 1;
      const { offset: start } = token;
      if (this.documents === 2) this.faults.add('several_documents', { start, end: start + 3 }, {});
    }
  }
}

/** Asked at every lexeme: a stack that holds no more than so many parts is not looked through. */
function isTooDeep(stack: readonly CST.Token[]): boolean {
  if (stack.length <= limits.depth) return false;
  let depth = 0;
  for (const { type } of stack) {
    if (type === 'block-map' || type === 'block-seq' || type === 'flow-collection') depth += 1;
  }
  return depth > limits.depth;
}

/** Notes the marks that are refused, lexeme by lexeme. */
class Marks {
  private start = 0;
  private isScalar = false;
  private readonly faults: TextFaults;

  constructor(faults: TextFaults) {
    this.faults = faults;
  }

  take(lexeme: string): void {
    const first = lexeme.charCodeAt(0);
    // The lexer's own signals stand for no characters of the text, in which they are refused.
    const isSignal: boolean = !this.isScalar && lexeme.length === 1 && first < 0x20 && !spaces.has(lexeme);
    const { start } = this;
    if (!isSignal) this.start += lexeme.length;
    if (!this.isScalar && beginMarks.has(first)) {
      refuseMark(lexeme, { start, end: this.start }, this.faults);
    }
    this.isScalar = isSignal && lexeme === CST.SCALAR;
  }
}

const spaces: ReadonlySet<string> = new Set(['\t', '\n', '\r']);
const beginMarks: ReadonlySet<number> = new Set(['&', '*', '!', '%'].map((sign) => sign.charCodeAt(0)));

/** The first document of the tokens, with what is wrong in it; null when nothing is written. */
export function toTree(tokens: readonly CST.Token[]): YamlTree | null {
  return withoutTraces(() => new Composer(options).compose(tokens).next().value ?? null);
}

const options = {
  version: '1.2',
  schema: 'core',
  merge: false,
  // A check of our own is linear in the number of keys.
  uniqueKeys: false,
  strict: true,
  prettyErrors: false,
  logLevel: 'silent',
} as const;

/** Runs something without recording where its errors were made: for a text full of mistakes that takes most of the time. */
function withoutTraces<Result>(run: () => Result): Result {
  const errors = Error as { stackTraceLimit?: number };
  const before = errors.stackTraceLimit;
  errors.stackTraceLimit = 0;
  try {
    return run();
  } finally {
    if (before === undefined) delete errors.stackTraceLimit;
    else errors.stackTraceLimit = before;
  }
}
