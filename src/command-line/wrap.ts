import { visible } from '../problems/visible.ts';
import { units } from '../vocabulary/units.ts';

/** Code points that take two columns: from and to, both included. */
const wide: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f],
  [0x2e80, 0x303e],
  [0x3041, 0x33ff],
  [0x3400, 0x4dbf],
  [0x4e00, 0x9fff],
  [0xa000, 0xa4cf],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe30, 0xfe4f],
  [0xff00, 0xff60],
  [0xffe0, 0xffe6],
  [0x1f300, 0x1faff],
  [0x20000, 0x3fffd],
];

/** How many columns a text takes: a letter of two columns counts twice, a mark above or below a letter not at all. */
export function columns(text: string): number {
  let count = 0;
  for (const character of text) count += columnsOf(character);
  return count;
}

function columnsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x300) return 1;
  if (/^\p{M}$/u.test(character)) return 0;
  return wide.some(([from, to]) => code >= from && code <= to) ? 2 : 1;
}

/** A text on one line, in which a terminal finds nothing to obey. */
export const plainText = (text: string): string => visible(text.replace(/\s+/gu, ' ').trim());

/** Stands for the blank between a number and its unit while lines are filled, so that they stay together. */
const unbroken = '\u00a0';
const unitWords = units.map(({ word }) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
const numberWithUnit = new RegExp(`([0-9]) (?=(?:${unitWords.join('|')})(?![\\p{L}/]))`, 'gu');

/**
 * A text as lines of at most so many columns. The first begins with `first`, the others with as many blanks. A word that is
 * longer than a line is broken.
 *
 * `wrap('Take a full set now', 12, '- ')` is `- Take a`, `  full set`, `  now`.
 */
export function wrap(text: string, width: number, first = ''): string[] {
  const indent = ' '.repeat(columns(first));
  const room = Math.max(8, width - indent.length);
  const lines: string[] = [];
  let line = '';
  const words = plainText(text).replace(numberWithUnit, `$1${unbroken}`).split(' ');
  for (const word of words.flatMap((each) => broken(each, room))) {
    if (line !== '' && columns(line) + 1 + columns(word) > room) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.map((each, index) => (index === 0 ? first : indent) + each.replaceAll(unbroken, ' '));
}

function broken(word: string, room: number): string[] {
  if (columns(word) <= room) return [word];
  const parts: string[] = [];
  let part = '';
  for (const character of word) {
    if (columns(part) + columnsOf(character) > room) {
      parts.push(part);
      part = '';
    }
    part += character;
  }
  return [...parts, part];
}
