import type { TextFaults } from '../text-faults.ts';
import { limits } from '../limits.ts';

/** Refuses a text over the limit, before anything else looks at it. Returns whether it may be looked at. */
export function checkSize(text: string, faults: TextFaults): boolean {
  if (!isOver(text, limits.bytes)) return true;
  faults.add('text_too_big', { start: 0, end: 1 }, { most: limits.bytes });
  return false;
}

/** Whether a text has more bytes in UTF-8; a character has one to three for each unit of its length. */
function isOver(text: string, bytes: number): boolean {
  if (text.length > bytes) return true;
  if (text.length * 3 <= bytes) return false;
  let size = 0;
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    size += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  }
  return size > bytes;
}

/** Whether a text has more lines than so many. Stops counting there. */
export function hasMoreLines(text: string, lines: number): boolean {
  let at = -1;
  for (let count = 0; count <= lines; count += 1) {
    at = text.indexOf('\n', at + 1);
    if (at === -1) return false;
  }
  return true;
}
