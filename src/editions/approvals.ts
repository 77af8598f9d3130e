import type { ApprovedEntry, EditionFile, NeededRole } from '../shape/generated/types.ts';
import type { Report } from '../problems/problem.ts';
import { lacking, personOf, sameName } from './people.ts';
import type { PutInForce } from './in-force-at.ts';
import { listAfter, listOf, type Ledger } from './record.ts';

/** How far an edition is approved. */
export interface Approvals {
  /** Those that count. */
  readonly counted: readonly ApprovedEntry[];
  /** What is still needed; empty once it is approved. */
  readonly lacking: readonly NeededRole[];
}

/**
 * The approvals of an edition that count, by the first so many entries of the record: on its digest and seal, by people who are none of its authors,
 * who were on the list in that role when it was sealed, and still are.
 */
export function approvalsOf(
  record: Ledger,
  edition: EditionFile,
  count: number = record.entries.length,
): Approvals | null {
  const then = edition.approvers === undefined ? null : listOf(record, edition.approvers, count);
  const now = listAfter(record, count)?.list;
  if (!then || !now) return null;
  const counted = record.entries
    .slice(0, count)
    .flatMap(({ approved }) => approved ?? [])
    .filter((each) => isOn(each, edition) && whyNot(record, edition, each, count) === null);
  const acting = counted.map(({ by, role }) => ({ name: by, roles: [role] }));
  return { counted, lacking: lacking(now.needs, acting) };
}

const isOn = ({ edition, digest, seal }: ApprovedEntry, of: EditionFile): boolean =>
  edition === of.edition && digest === of.digest && seal === of.seal;

/** Tells why an approval of an edition does not count; nothing when it does. */
export function reportApproval(
  record: Ledger,
  edition: EditionFile,
  approved: ApprovedEntry,
  report: Report,
): void {
  const { by } = approved;
  switch (whyNot(record, edition, approved, record.entries.length)) {
    case 'nobody':
      report('record_nobody_may_approve', ['approved', 'edition'], { edition: edition.edition });
      break;
    case 'author':
      report('record_author_approves', ['approved', 'by'], { by });
      break;
    case 'added_since':
      report('record_added_since', ['approved', 'by'], { by, edition: edition.edition });
      break;
    case 'other_file':
      report('record_edition_lost', ['approved', 'seal'], { edition: edition.edition });
      break;
    case 'left':
    case null:
  }
}

type Why = 'nobody' | 'author' | 'added_since' | 'left' | 'other_file' | null;

function whyNot(record: Ledger, edition: EditionFile, approved: ApprovedEntry, count: number): Why {
  const then = edition.approvers === undefined ? null : listOf(record, edition.approvers, count);
  const now = listAfter(record, count)?.list;
  if (!then || !now) return 'nobody';
  if (!isOn(approved, edition)) return 'other_file';
  if ((edition.authors ?? []).some((each) => sameName(each, approved.by))) return 'author';
  const hasRole = (list: typeof then): boolean =>
    personOf(list.people, approved.by)?.roles.some((each) => sameName(each, approved.role)) ?? false;
  if (!hasRole(then)) return 'added_since';
  return hasRole(now) ? null : 'left';
}

/** Tells why the edition of an entry cannot be relied on: it is gone or another file, or was not approved when it was put in force. */
export function reportPut(
  record: Ledger,
  { entry, inForce }: PutInForce,
  edition: EditionFile | null,
  report: Report,
): void {
  const number = { edition: inForce.edition };
  if (edition?.seal !== inForce.seal || edition.digest !== inForce.digest) {
    report('record_edition_lost', ['in_force', 'seal'], number);
    return;
  }
  const approvals = approvalsOf(record, edition, entry.entry - 1);
  if (!approvals) report('record_nobody_may_approve', ['in_force', 'edition'], number);
  const [short] = approvals?.lacking ?? [];
  if (short) report('record_not_approved', ['in_force', 'edition'], { ...number, ...short });
}
