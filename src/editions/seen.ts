import { problemAt, type Problem } from '../problems/problem.ts';
import type { EntryText } from './texts-to-record.ts';

/**
 * What a reader sees who has read a record before: null when it goes on from there. The texts that were seen are all that there were then,
 * in order.
 */
export function notAsSeen(
  folder: string,
  texts: readonly EntryText[],
  seen: readonly EntryText[],
): Problem | null {
  for (const [index, { text }] of seen.entries()) {
    const now = texts[index];
    const start = { start: 0, end: 1 };
    if (!now) return problemAt(folder, '', start, 'record_cut', { seen: seen.length, found: texts.length });
    if (now.text !== text)
      return problemAt(now.file, now.text, start, 'record_other_than_seen', { entry: index + 1 });
  }
  return null;
}
