import type { ApproversEntry, RecordEntry } from '../shape/generated/types.ts';

/** A record of which every entry holds. */
export interface Ledger {
  /** The protocol or ward policy that it is of. */
  readonly name: string;
  /** In order, from the first. */
  readonly entries: readonly RecordEntry[];
}

/** The list of approvers that holds after an entry; null before the first list. */
export function listAfter({ entries }: Ledger, count: number = entries.length): ListEntry | null {
  for (const entry of entries.slice(0, count).toReversed())
    if (entry.approvers) return { list: entry.approvers, digest: entry.digest };
  return null;
}

export interface ListEntry {
  readonly list: ApproversEntry;
  /** The digest of the entry. */
  readonly digest: string;
}

/** The list of an entry, by the digest of the entry, among the first so many. */
export function listOf({ entries }: Ledger, digest: string, count: number): ApproversEntry | null {
  return entries.slice(0, count).find((entry) => entry.digest === digest)?.approvers ?? null;
}

/** The digest of the last entry; null when there is none. */
export const headOf = ({ entries }: Ledger): string | null => entries.at(-1)?.digest ?? null;
