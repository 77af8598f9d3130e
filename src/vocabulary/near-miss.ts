import { distance } from 'fastest-levenshtein';
import { lettersOf, wordsOf } from './words.ts';

/** Something that may have been meant: its name, and what else people write for it. */
export interface Candidate {
  readonly name: string;
  readonly alsoCalled?: readonly string[];
}

/** A name as it is compared. */
interface Form {
  readonly words: readonly string[];
  /** The name without anything between its words. */
  readonly joined: string;
  /** Whether it is the candidate's own name. */
  readonly own: boolean;
  /** One bit for the first letter of each word: without one in common, no word is near another. */
  readonly initials: number;
}

/** Longer texts are no names. */
const longestName = 60;

/** A greater distance is not near. An exact match has 0. */
const farthest = 0.45;

const otherFirstLetter = 0.3;

/**
 * The candidate that was probably meant; null when nothing is near.
 *
 * Names are compared letter by letter and word by word, in any order, with one word missing, in the plural, with British
 * or American spelling, with hyphens, spaces or capitals. Only a candidate that is offered is ever the answer: offer those
 * of the right kind. The order of the candidates means nothing.
 *
 * `nearMiss('resp_rate', [{ name: 'respiratory_rate' }, { name: 'heart_rate' }])` is `'respiratory_rate'`;
 * `nearMiss('hr', [{ name: 'heart_rate', alsoCalled: ['hr'] }])` is `'heart_rate'`; `nearMiss('banana', …)` is null.
 */
export function nearMiss(written: string, candidates: readonly Candidate[]): string | null {
  if (written.length > longestName) return null;
  const form = formOf(written, true);
  if (form.joined === '') return null;
  let best: Ranked | null = null;
  for (const candidate of candidates) {
    const forms = formsOf(candidate);
    let nearest = 1;
    for (const each of forms) nearest = Math.min(nearest, apart(form, each));
    if (nearest > farthest) continue;
    const ranked = { name: candidate.name, apart: nearest, letters: distance(form.joined, forms[0].joined) };
    if (best === null || before(ranked, best)) best = ranked;
  }
  return best?.name ?? null;
}

interface Ranked {
  readonly name: string;
  readonly apart: number;
  /** Letters between what was written and the name itself: decides between equals. */
  readonly letters: number;
}

function before(left: Ranked, right: Ranked): boolean {
  if (left.apart !== right.apart) return left.apart < right.apart;
  if (left.letters !== right.letters) return left.letters < right.letters;
  return left.name < right.name;
}

function formOf(name: string, own: boolean): Form {
  const words = wordsOf(name);
  const initials = words.reduce((bits, word) => bits | (1 << (word.charCodeAt(0) % 31)), 0);
  return { words, joined: lettersOf(name), own, initials };
}

type Forms = readonly [Form, ...Form[]];

const remembered = new WeakMap<Candidate, Forms>();

/** The forms of a candidate, its own name first; worked out once, as a file with many mistakes asks often. */
function formsOf(candidate: Candidate): Forms {
  const known = remembered.get(candidate);
  if (known) return known;
  const others = (candidate.alsoCalled ?? []).map((each) => formOf(each, false));
  const forms: Forms = [formOf(candidate.name, true), ...others];
  remembered.set(candidate, forms);
  return forms;
}

/** How far two names are apart: 0 for the same words, 1 for nothing in common. */
function apart(written: Form, form: Form): number {
  if (written.joined === form.joined) return 0;
  // Words that were written together, or apart, differ in few letters; else a whole word could count as misspelt.
  const most = written.words.length === 1 && form.words.length === 1 ? 4 : 2;
  const letters = wordApart(written.joined, form.joined, most) ?? 1;
  return (written.initials & form.initials) === 0
    ? letters
    : Math.min(letters, wordsApart(written.words, form));
}

/** Letters that may be wrong in a word of so many letters. */
function mayDiffer(length: number): number {
  if (length < 4) return 0;
  if (length < 6) return 1;
  if (length < 9) return 2;
  return length < 13 ? 3 : 4;
}

/**
 * How far two words are apart; null when one is not the other misspelt. Hardly anybody misspells the first letter, so that
 * `dystolic` is nearer to `diastolic` than to `systolic`, and `height` is not `weight`.
 */
function wordApart(left: string, right: string, most = 4): number | null {
  if (left === right) return 0;
  const length = Math.max(left.length, right.length);
  const other = left[0] === right[0] ? 0 : otherFirstLetter;
  const allowed = Math.min(most, mayDiffer(length), Math.floor((farthest - other) * length));
  if (Math.abs(left.length - right.length) > allowed) return null;
  if (swapped(left, right)) return 1 / length;
  if (allowed === 0) return null;
  const letters = distance(left, right);
  return letters <= allowed ? letters / length + other : null;
}

/** Whether the words differ only in two neighbouring letters that changed places: `gsc` and `gcs`. */
function swapped(left: string, right: string): boolean {
  if (left.length !== right.length || left.length < 2) return false;
  let at = 0;
  while (at < left.length && left[at] === right[at]) at += 1;
  if (left[at] !== right[at + 1] || left[at + 1] !== right[at]) return false;
  return left.slice(at + 2) === right.slice(at + 2);
}

/**
 * How far a word that was cut short is from the whole: `resp` from `respiratory`; or two words with one stem, `confused`
 * from `confusion`. Null when neither.
 */
function stemApart(written: string, whole: string): number | null {
  const shorter = Math.min(written.length, whole.length);
  let shared = 0;
  while (shared < shorter && written[shared] === whole[shared]) shared += 1;
  if (shared === written.length && shared >= 3 && 4 * shared >= whole.length) return 0.15;
  return shared >= 5 && shared >= 0.6 * shorter ? 0.15 : null;
}

/** How far two words of longer names are apart, misspelt or cut short; 1 when neither, or when the first letters differ. */
function wordOrStemApart(written: string, whole: string): number {
  if (written[0] !== whole[0]) return 1;
  return Math.min(wordApart(written, whole) ?? 1, stemApart(written, whole) ?? 1);
}

interface Pair {
  readonly at: number;
  readonly to: number;
  readonly near: number;
}

/**
 * How far the words are apart: each with the nearest of the other name, words left over counting in full. What is only
 * also called so must fit better, as it holds more everyday words.
 */
function wordsApart(written: readonly string[], { words, own }: Form): number {
  const pairs = nearPairs(written, words);
  if (pairs.length === 0) return 1;
  pairs.sort((one, other) => one.near - other.near || one.at - other.at || one.to - other.to);
  const chosen: Pair[] = [];
  for (const pair of pairs) {
    if (!chosen.some(({ at, to }) => at === pair.at || to === pair.to)) chosen.push(pair);
  }
  const inOrder = chosen.every((one) => chosen.every((other) => one.at < other.at === one.to < other.to));
  const all = written.length + words.length;
  const leftOver = all - 2 * chosen.length;
  const sum = chosen.reduce((total, { near }) => total + 2 * near, leftOver);
  return sum / all + (inOrder ? 0 : 0.05) + (own || leftOver === 0 ? 0 : 0.15);
}

/** Plain loops, as a file with thousands of mistakes comes here for every name that could have been meant. */
function nearPairs(written: readonly string[], words: readonly string[]): Pair[] {
  const pairs: Pair[] = [];
  for (let at = 0; at < written.length; at += 1) {
    for (let to = 0; to < words.length; to += 1) {
      const near = wordOrStemApart(written[at] ?? '', words[to] ?? '');
      if (near < 1) pairs.push({ at, to, near });
    }
  }
  return pairs;
}
