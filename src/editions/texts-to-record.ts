import { findingsToProblems } from '../document/finding-to-problem.ts';
import type { Document } from '../document/document.ts';
import { hasErrors, reporter, type Finding, type Problem, type Report } from '../problems/problem.ts';
import { textToFile } from '../shape/text-to-file.ts';
import type { RecordEntry } from '../shape/generated/types.ts';
import { isYes } from '../vocabulary/read-choices.ts';
import { checkEntry } from './check-entry.ts';
import { draftOf, entryText, makersOf, withDigest } from './entry.ts';
import { personOf, sameName } from './people.ts';
import { headOf, listAfter, type Ledger } from './record.ts';
import { signatureHolds } from './signatures.ts';

/** The text of one entry's file. */
export interface EntryText {
  /** The name under which problems cite it; it ends with `.json`. */
  readonly file: string;
  readonly text: string;
}

/**
 * Reads the record of a policy from the texts of its entries, in order. Null when one of them does not hold: then nobody can tell what the
 * rest is worth.
 */
export async function textsToRecord(
  name: string,
  texts: readonly EntryText[],
): Promise<{ readonly record: Ledger | null; readonly problems: readonly Problem[] }> {
  let record: Ledger = { name, entries: [] };
  for (const text of texts) {
    const { entry, problems } = await nextEntry(record, text);
    if (!entry) return { record: null, problems };
    record = { name, entries: [...record.entries, entry] };
  }
  return { record, problems: [] };
}

/** Reads the entry that follows on a record; null when it does not hold. */
async function nextEntry(
  record: Ledger,
  { file, text }: EntryText,
): Promise<{ readonly entry: RecordEntry | null; readonly problems: readonly Problem[] }> {
  const { value, document, problems } = textToFile('record_entry', file, text);
  if (!value || !document) return { entry: null, problems };
  const findings: Finding[] = [];
  const report = reporter(findings);
  if (isInPlace(record, value, document, report)) {
    checkEntry(record, value, report);
    if (findings.length === 0) await checkSignatures(record, value, report);
  }
  const found = findingsToProblems(document, findings);
  return { entry: hasErrors(found) ? null : value, problems: found };
}

/** Whether an entry is as it was made, and stands where it was made for. */
function isInPlace(record: Ledger, entry: RecordEntry, { text }: Document, report: Report): boolean {
  const { digest, ...rest } = entry;
  const place = record.entries.length + 1;
  if (withDigest(rest).digest !== digest || entryText(entry) !== text) report('record_changed', [], {});
  else if (entry.record !== record.name)
    report('record_of_another', ['record'], { name: entry.record, own: record.name });
  else if (entry.entry !== place) report('record_not_next', ['entry'], { entry: entry.entry, place });
  else if (entry.before !== headOf(record)) report('record_link_broken', ['before'], { entry: place - 1 });
  else return true;
  return false;
}

/** Everybody who makes an entry signs it, and nobody else, with the key that stands on the list that holds before it. */
async function checkSignatures(record: Ledger, entry: RecordEntry, report: Report): Promise<void> {
  const list = listAfter(record)?.list ?? entry.approvers;
  const signatures = entry.signatures ?? [];
  if (!list || !isYes(list.signing)) {
    if (signatures.length > 0) report('record_signature_unwanted', ['signatures'], {});
    return;
  }
  const makers = makersOf(entry);
  for (const [index, by] of makers.entries()) {
    const signature = signatures[index];
    const key = personOf(list.people, by)?.key;
    if (!signature || !sameName(signature.by, by) || key === undefined)
      report('record_signature_missing', ['signatures'], { by });
    else if (!(await signatureHolds(signature, draftOf(entry), key)))
      report('record_signature_wrong', ['signatures', index, 'jws'], { by });
  }
  const extra = signatures[makers.length];
  if (extra) report('record_signature_missing', ['signatures'], { by: extra.by });
}
