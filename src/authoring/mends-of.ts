import type { Code } from '../problems/catalogue.ts';
import type { Problem } from '../problems/problem.ts';
import { spliced, type Splice } from './splice.ts';
import { lineEnd, lineStart } from './edits/places.ts';
import { lineEndOf, plainText } from './yaml-text.ts';

/** A mend of a problem that is made with one click. */
export interface Mend {
  /** What it does, in a few words. */
  readonly title: string;
  readonly splices: readonly Splice[];
}

/** Checks a text as it was checked when the problem was found. */
export type CheckAgain = (text: string) => readonly Problem[];

/**
 * The mends of a problem whose place is in a text: mostly none. What was probably meant takes the place of what is written, in its
 * quotation marks, and nothing else changes. With `checkAgain` only those that are certain: each is made and checked, takes this
 * problem away and brings no other.
 *
 * For `levle: call_doctor` it is one, `Put “level” for “levle”`.
 */
export function mendsOf(problem: Problem, text: string, checkAgain?: CheckAgain): readonly Mend[] {
  const start = offsetOf(problem, text);
  if (start === null) return [];
  const place = { start, end: start + problem.length, written: text.slice(start, start + problem.length) };
  const mend = others[problem.code]?.(problem, place, text) ?? near(problem, place);
  if (!mend) return [];
  return !checkAgain || isCertain(problem, mend, text, checkAgain) ? [mend] : [];
}

/** Whether a mend takes its problem away and brings none that was not there. */
function isCertain(problem: Problem, { splices }: Mend, text: string, checkAgain: CheckAgain): boolean {
  const left = checkAgain(text).map(keyOf);
  const own = left.indexOf(keyOf(problem));
  if (own !== -1) left.splice(own, 1);
  return checkAgain(spliced(text, splices)).every((each) => {
    const at = left.indexOf(keyOf(each));
    if (at !== -1) left.splice(at, 1);
    return at !== -1;
  });
}

const keyOf = ({ code, says }: Problem): string => `${code}: ${says}`;

interface Place {
  readonly start: number;
  readonly end: number;
  readonly written: string;
}

/** Where a problem begins in the text; null when the text is another by now. */
function offsetOf({ line, column, source }: Problem, text: string): number | null {
  let start = 0;
  for (let index = 1; index < line; index += 1) {
    const newline = text.indexOf('\n', start);
    if (newline === -1) return null;
    start = newline + 1;
  }
  return text.startsWith(source, start) ? start + column - 1 : null;
}

/** What was probably meant, in place of the word that is wrong; null where it cannot be seen which word that is. */
function near(problem: Problem, place: Place): Mend | null {
  const { near_miss: nearMiss } = problem;
  if (nearMiss === null || nearMiss === place.written) return null;
  const wrong = wrongPart(problem, place, nearMiss);
  if (!wrong) return null;
  return {
    title: `Put “${nearMiss}” for “${wrong.written}”`,
    splices: [
      { from: wrong.start, to: wrong.end, text: inside(wrong, place) ? nearMiss : plainText(nearMiss) },
    ],
  };
}

const inside = (wrong: Place, place: Place): boolean => wrong.start > place.start || wrong.end < place.end;

/** The word that is wrong: the whole of what is meant, what stands in its quotation marks, or one name or unit of it. */
function wrongPart({ code, says }: Problem, place: Place, nearMiss: string): Place | null {
  const { written } = place;
  const [quote = ''] = /^["']/.exec(written) ?? [];
  const whole =
    quote !== '' && written.length > 1 && written.endsWith(quote)
      ? within(place, 1, written.length - 1)
      : place;
  if (code === 'not_a_quantity') return whole.written.includes(quote || '\n') ? null : whole;
  const words = [...says.matchAll(/"([^"…]+)"/g)].map(([, word = '']) => word);
  if (words.includes(whole.written)) return quoting(whole, place, nearMiss);
  const [word] = words;
  if (word === undefined || (code !== 'unknown_unit' && code !== 'unknown_number')) return null;
  const at = onlyPlace(whole.written, word);
  return at === null ? null : within(whole, at, at + word.length);
}

/** Inside its quotation marks, unless what is put there needs none of its own signs told. */
const quoting = (whole: Place, place: Place, nearMiss: string): Place | null =>
  whole !== place && /["'\\]/.test(nearMiss) ? null : whole;

const within = ({ start, written }: Place, from: number, to: number): Place => ({
  start: start + from,
  end: start + to,
  written: written.slice(from, to),
});

/** Where a name stands in a formula, or a unit after its number; null where it stands more than once, or only as a part of another. */
function onlyPlace(text: string, word: string): number | null {
  const places: number[] = [];
  for (let at = text.indexOf(word); at !== -1; at = text.indexOf(word, at + 1)) {
    const before = /[a-z0-9_]$/i.test(text.slice(0, at)) && /^[a-z0-9_]/i.test(word);
    const after = /^[a-z0-9_]/i.test(text.slice(at + word.length)) && /[a-z0-9_]$/i.test(word);
    if (!before && !after) places.push(at);
  }
  return places.length === 1 ? (places[0] ?? null) : null;
}

type Special = (problem: Problem, place: Place, text: string) => Mend | null;

/** Mends of other kinds. */
const others: Partial<Readonly<Record<Code, Special>>> = {
  hidden_character: (_problem, { start, end }) => ({
    title: 'Take the character that cannot be seen away',
    splices: [{ from: start, to: end, text: '' }],
  }),
  is_of_several(_problem, { start, end, written }, text) {
    const [, before = '', value] =
      /^(\s*:\s*)([a-z][a-z0-9_]*)(?=[\s,}]|$)/.exec(text.slice(end, end + 200)) ?? [];
    if (written !== 'is' || value === undefined) return null;
    const at = end + before.length;
    return {
      title: `Put “one_of: [${value}]” for “is: ${value}”`,
      splices: [
        { from: start, to: end, text: 'one_of' },
        { from: at, to: at + value.length, text: `[${value}]` },
      ],
    };
  },
  limit_without_unit(_problem, { start, end, written }, text) {
    const [, number, unit] = /^(-?[0-9]+(?:\.[0-9]+)?) (\S+)$/.exec(written) ?? [];
    if (number === undefined || unit === undefined) return null;
    const before = text.slice(lineStart(text, start), start);
    const own = `unit: ${plainText(unit)}`;
    const title = `Put “${number}” with “${own}” for “${written}”`;
    if (/[{,]\s*value:\s*$/.test(before))
      return { title, splices: [{ from: start, to: end, text: `${number}, ${own}` }] };
    const [, indent] = /^( *)value:\s*$/.exec(before) ?? [];
    if (indent === undefined) return null;
    const at = lineEnd(text, end);
    const splices = [
      { from: start, to: end, text: number },
      { from: at, to: at, text: lineEndOf(text) + indent + own },
    ];
    return { title, splices };
  },
};
