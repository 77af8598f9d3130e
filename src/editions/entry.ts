import { digestOfText } from '../protocol/digest.ts';
import type {
  ApprovedEntry,
  ApproversEntry,
  InForceEntry,
  RecordEntry,
  WithdrawnEntry,
} from '../shape/generated/types.ts';
import { canonicalText } from './canonical.ts';
import { headOf, type Ledger } from './record.ts';
import type { Draft } from './signatures.ts';

/** What an entry says. */
export type Body =
  | { readonly approvers: ApproversEntry }
  | { readonly approved: ApprovedEntry }
  | { readonly in_force: InForceEntry }
  | { readonly withdrawn: WithdrawnEntry };

export const bodyKeys = ['approvers', 'approved', 'in_force', 'withdrawn'] as const;

/** What somebody decided as the next entry of a record, before it is signed: this very text is what is signed. */
export const draftAfter = (record: Ledger, body: Body, at: string): Draft => ({
  record: record.name,
  entry: record.entries.length + 1,
  before: headOf(record),
  at,
  ...body,
});

/** An entry with its digest. */
export function withDigest(entry: Omit<RecordEntry, 'digest'>): RecordEntry {
  return { ...entry, digest: digestOfText(canonicalText(entry)) };
}

/** The text of the file of an entry. */
export const entryText = (entry: RecordEntry): string => `${canonicalText(entry)}\n`;

/** An entry as it was before its digest and signatures were on it. */
export function draftOf({ digest: _, signatures: __, ...draft }: RecordEntry): Draft {
  return draft;
}

/** Who makes an entry. */
export function makersOf({ approvers, approved, in_force: inForce, withdrawn }: Draft): readonly string[] {
  if (approvers) return approvers.agreed_by;
  return [(approved ?? inForce ?? withdrawn)?.by ?? ''];
}
