import type { Logic } from '../../logic/logic.ts';
import type { Answers } from './answers-over.ts';
import { Code, code } from './code.ts';
import type { Part } from './part.ts';
import { writeParts } from './write-parts.ts';

/** How many rules share a word. */
export const rulesInWord = 32;

/** A rule, in both logics. */
export interface Rail {
  readonly certain: Part;
  readonly possible: Part;
}

/** The rules of each word. */
export function wordsOf(rules: readonly Rail[]): Rail[][] {
  return Array.from({ length: Math.ceil(rules.length / rulesInWord) }, (_, word) =>
    rules.slice(word * rulesInWord, (word + 1) * rulesInWord),
  );
}

/** One bit for each truth, the first lowest. */
export function bits(truths: readonly Code[]): Code {
  const open = truths.flatMap((truth, index) =>
    truth.text === '0' ? [] : [index === 0 ? truth : code`(${truth} << ${index})`],
  );
  return open.length === 0 ? code`0` : Code.joined(open, ' | ');
}

/** Lines that work it out, and the code of each part. */
export interface Packed {
  readonly lines: readonly Code[];
  readonly also: readonly Code[];
  readonly summary: Code;
  readonly words: readonly { readonly met: Code; readonly undecided: Code }[];
}

/** The answers packed into a summary and words; `also` are truths that are wanted beside them. */
export function packed(
  { applies, levels, rules }: Logic,
  { graph, read, names }: Answers,
  also: readonly Logic['applies']['certain'][],
): Packed {
  const roots = [applies.certain, applies.possible, levels.raised, levels.could, levels.floor].map(read);
  const words = wordsOf(
    rules.map(({ certain, possible }) => ({ certain: read(certain), possible: read(possible) })),
  );
  const open = words.map((word) =>
    word.map(({ certain, possible }) => graph.make('and', [possible, graph.make('!', [certain])])),
  );
  const beside = also.map(read);
  const written = writeParts(
    [...beside, ...roots, ...words.flat().map(({ certain }) => certain), ...open.flat()],
    names,
  );
  const [certain, possible, raised, could, floor] = roots.map(written.of) as [Code, Code, Code, Code, Code];
  const isOne = roots[0] === roots[1] && roots[2] === roots[3] && roots[3] === roots[4];
  return {
    lines: written.lines,
    also: beside.map(written.of),
    summary: isOne
      ? code`summaryOfOne(${certain}, ${raised})`
      : code`summary(${certain}, ${possible}, ${certain}, ${raised}, ${could}, ${floor})`,
    words: words.map((word, index) => ({
      met: bits(word.map((rule) => written.of(rule.certain))),
      undecided: bits((open[index] ?? []).map(written.of)),
    })),
  };
}
