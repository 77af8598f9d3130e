import type { Chance } from './chance.ts';

/** Texts to change, and the words that stand in any of them. */
export interface Material {
  readonly texts: readonly string[];
  readonly words: readonly string[];
}

type Mutation = (text: string, chance: Chance, material: Material) => string;

/** Letters and marks that mean something to a parser, a terminal or an object. */
const odd: readonly string[] = [
  [
    '\u0000',
    '\u001b[31m',
    '\u009b',
    '\u2028',
    '\u202e',
    '\u200b',
    '\ufeff',
    '\ud800',
    '\udc00',
    '😀',
    'ﬁ',
    'é',
  ],
  [
    'constructor',
    '__proto__',
    'toString',
    'hasOwnProperty',
    'null',
    'yes',
    '~',
    '.nan',
    '<<: *a',
    '&a ',
    '*a',
    '!!str ',
  ],
  ['- ', '? ', ': ', '#', '|\n', '>-\n', '"', "'", '{', '}', '[', ']', ',', '\t', '\r\n', '\r'],
  ['---\n', '%YAML 1.1\n', '`', '${', '*/'],
].flat();

/** On, beside and far beyond what a number may be. */
const numbers: readonly string[] = [
  ['0', '-0', '-1', '1', '0.1', '0.0000001', '1e9', '0x10', '1_000', '9007199254740991', '9007199254740993'],
  ['999999999999999', '1000000000000000', '99999999999999999999999', '-999999999999', '0.333333333333333'],
  ['007', '12:30', '2026-02-30', '-.inf'],
].flat();

const span = (text: string, chance: Chance, most: number): [number, number] => {
  const from = chance.below(text.length + 1);
  return [from, Math.min(text.length, from + chance.below(most))];
};

const replaced = (text: string, [from, to]: readonly [number, number], put: string): string =>
  text.slice(0, from) + put + text.slice(to);

/** A place in a text where a pattern matches, chosen by chance; null when there is none. */
function somewhere(text: string, pattern: RegExp, chance: Chance): [number, number] | null {
  const start = chance.below(text.length);
  pattern.lastIndex = start;
  let found = pattern.exec(text);
  if (!found) {
    pattern.lastIndex = 0;
    found = pattern.exec(text);
  }
  return found ? [found.index, found.index + found[0].length] : null;
}

const token: Mutation = (text, chance, { words }) => {
  const place = somewhere(text, /[\p{L}_][\p{L}\p{N}_]*/gu, chance);
  return place ? replaced(text, place, chance.pick(chance.below(8) === 0 ? odd : words)) : text;
};

const glued: Mutation = (text, chance, { words }) => {
  const place = somewhere(text, /[\p{L}_]+/gu, chance);
  return place ? replaced(text, [place[1], place[1]], `_${chance.pick([...words, ...odd])}`) : text;
};

const number: Mutation = (text, chance) => {
  const place = somewhere(text, /-?\d+(?:\.\d+)?/g, chance);
  return place
    ? replaced(text, place, chance.below(3) === 0 ? String(chance.below(400)) : chance.pick(numbers))
    : text;
};

const bytes: Mutation = (text, chance) =>
  replaced(
    text,
    span(text, chance, 6),
    chance.below(2) === 0 ? '' : String.fromCharCode(chance.below(chance.pick([128, 256, 65_536]))),
  );

const strange: Mutation = (text, chance) => replaced(text, span(text, chance, 3), chance.pick(odd));

const cut: Mutation = (text, chance) => replaced(text, span(text, chance, 200), '');

const piece: Mutation = (text, chance, { texts }) => {
  const other = chance.pick(texts);
  return replaced(text, span(text, chance, 60), other.slice(...span(other, chance, 120)));
};

const lines: Mutation = (text, chance) => {
  const all = text.split('\n');
  const [at, to] = [chance.below(all.length), chance.below(all.length)];
  const [line] = chance.below(2) === 0 ? all.splice(at, 1) : [all[at]];
  const shift = chance.pick(['', '', ' ', '  ', '\t']);
  if (chance.below(4) > 0) all.splice(to, 0, shift + (line ?? ''));
  return all.join('\n');
};

/** A line with all that is indented below it. */
function block(all: readonly string[], chance: Chance): { at: number; count: number; indent: number } {
  const indentOf = (line: string): number => line.length - line.trimStart().length;
  const at = chance.below(all.length);
  const indent = indentOf(all[at] ?? '');
  let count = 1;
  while (at + count < all.length && indentOf(all[at + count] ?? '') > indent) count += 1;
  return { at, count, indent };
}

/** A part of one text in the place of a part of another, or before it, moved to where it then stands. */
const subtree: Mutation = (text, chance, { texts }) => {
  const all = text.split('\n');
  const from = chance.below(3) === 0 ? chance.pick(texts).split('\n') : all;
  const [take, give] = [block(from, chance), block(all, chance)];
  const moved = from
    .slice(take.at, take.at + take.count)
    .map(
      (line) =>
        ' '.repeat(give.indent) + line.slice(Math.min(take.indent, line.length - line.trimStart().length)),
    );
  return all.toSpliced(give.at, chance.below(2) === 0 ? give.count : 0, ...moved).join('\n');
};

const deep: Mutation = (text, chance) => {
  const place = somewhere(text, /[\p{L}\p{N}_]+/gu, chance) ?? [0, 0];
  const times = chance.pick([1, 2, 10, 40, 63, 64, 65, 3000]);
  const [open, close] = chance.pick([
    ['[', ']'],
    ['{ all: [', '] }'],
    ['{ not: ', ' }'],
    ['(', ')'],
    ['-', ''],
  ] as const);
  const inner = text.slice(...place);
  return replaced(text, place, open.repeat(times) + inner + close.repeat(times));
};

const often: readonly Mutation[] = [token, token, glued, number, number, subtree, subtree, lines, piece];
const seldom: readonly Mutation[] = [bytes, bytes, strange, cut, deep];

/** So long a text may grow, in characters: what is longer is tried elsewhere, and would only make the run slow. */
const longest = 60_000;

/** A text with one to four changes; now and then one of nothing but chance. */
export function mutated(text: string, chance: Chance, material: Material): string {
  if (chance.below(200) === 0) {
    return Array.from({ length: chance.below(80) }, () =>
      chance.pick([...odd, ...numbers, '\n', ' ', 'rules']),
    ).join('');
  }
  let now = text;
  for (let left = 1 + chance.below(4); left > 0; left -= 1) {
    now = chance.pick(chance.below(3) === 0 ? seldom : often)(now, chance, material);
  }
  return now.slice(0, longest);
}
