import { entryText, withDigest } from '../../editions/entry.ts';
import type { Ledger } from '../../editions/record.ts';
import type { Draft } from '../../editions/signatures.ts';
import { textsToRecord, type EntryText } from '../../editions/texts-to-record.ts';
import type { Problem } from '../../problems/problem.ts';
import type { EntrySignature } from '../../shape/generated/types.ts';
import { entryPath } from '../record-files.ts';
import { writeOnce } from '../write-once.ts';

/** What came of an entry: entered; not, because it does not hold; not, because somebody else was first. */
export type Entered =
  | { readonly kind: 'entered'; readonly record: Ledger }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'too_late' };

/** The record with one more entry, when it holds; nothing is written. */
export async function recordWith(
  folder: string,
  texts: readonly EntryText[],
  draft: Draft,
  signatures: readonly EntrySignature[],
): Promise<{
  readonly record: Ledger | null;
  readonly problems: readonly Problem[];
  readonly next: EntryText;
}> {
  const entry = withDigest({ ...draft, ...(signatures.length > 0 ? { signatures: [...signatures] } : {}) });
  const next = { file: entryPath(folder, draft.entry), text: entryText(entry) };
  return { ...(await textsToRecord(draft.record, [...texts, next])), next };
}

/** Looks whether an entry, signed or not, holds after the entries that are there, and writes it. */
export async function enterDraft(
  folder: string,
  texts: readonly EntryText[],
  draft: Draft,
  signatures: readonly EntrySignature[],
): Promise<Entered> {
  const { record, problems, next } = await recordWith(folder, texts, draft, signatures);
  if (!record) return { kind: 'refused', problems };
  return (await writeOnce(next.file, next.text)) ? { kind: 'entered', record } : { kind: 'too_late' };
}
