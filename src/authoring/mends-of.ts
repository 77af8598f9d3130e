import type { Code } from '../problems/catalogue.ts';
import type { Problem } from '../problems/problem.ts';
import type { Splice } from './splice.ts';
import { plainText } from './yaml-text.ts';

/** A mend of a problem that is made with one click. */
export interface Mend {
  /** What it does, in a few words. */
  readonly title: string;
  readonly splices: readonly Splice[];
}

/**
 * The mends of a problem whose place is in a text; only those that are certain to leave this problem behind: mostly none. What was probably meant
 * takes the place of what is written, in its quotation marks, and nothing else changes.
 *
 * For `levle: call_doctor` it is one, `Put "level" for "levle"`.
 */
export function mendsOf(problem: Problem, text: string): readonly Mend[] {
  const start = offsetOf(problem, text);
  if (start === null) return [];
  const span = { start, end: start + problem.length, written: text.slice(start, start + problem.length) };
  const mend = others[problem.code]?.(problem, span, text) ?? near(problem, span);
  return mend ? [mend] : [];
}

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
    const lineStart = text.lastIndexOf('\n', start - 1) + 1;
    const isInBrackets = /[{,]\s*value:\s*$/.test(text.slice(lineStart, start));
    if (number === undefined || unit === undefined || !isInBrackets) return null;
    const put = `${number}, unit: ${plainText(unit)}`;
    return { title: `Put “${put}” for “${written}”`, splices: [{ from: start, to: end, text: put }] };
  },
};
