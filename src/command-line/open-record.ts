import { relative } from 'node:path';
import type { Ledger } from '../editions/record.ts';
import { notAsSeen } from '../editions/seen.ts';
import type { EntryText } from '../editions/texts-to-record.ts';
import type { Problem } from '../problems/problem.ts';
import { loadRecord, recordFolder } from './record-files.ts';
import { keepEntries, seenOf, type Seen } from './seen.ts';
import { sayProblems } from './say.ts';
import type { Terminal } from './terminal.ts';

/** The record of a policy, as this reader finds it. */
export interface OpenRecord {
  /** Null: it does not hold, or does not go on from what was seen here before. */
  readonly record: Ledger | null;
  readonly texts: readonly EntryText[];
  readonly problems: readonly Problem[];
  readonly seen: Seen;
}

/** Reads the record of a folder, and compares it with what was seen here before; what is new is kept, unless told otherwise. */
export async function openRecord(
  folder: string,
  terminal: Terminal,
  { keep = true } = {},
): Promise<OpenRecord> {
  const { record, texts, problems } = await loadRecord(folder);
  const seen = await seenOf(folder, terminal.seenFolder);
  const place = relative(process.cwd(), `${folder}/${recordFolder}`);
  const other = notAsSeen(place, texts, seen.texts);
  if (!record || other)
    return { record: null, texts, problems: other ? [other, ...problems] : problems, seen };
  if (keep && !(await keepEntries(seen, texts)))
    terminal.err(
      `What was read could not be kept in ${terminal.seenFolder ?? ''}; if the record is cut later, nobody here will notice.\n`,
    );
  return { record, texts, problems, seen };
}

/** The record when it holds; else null, and said. */
export async function openOrSay(
  folder: string,
  terminal: Terminal,
): Promise<(OpenRecord & { record: Ledger }) | null> {
  const opened = await openRecord(folder, terminal);
  if (opened.record) return { ...opened, record: opened.record };
  sayProblems(opened.problems, terminal);
  return null;
}
