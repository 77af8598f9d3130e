import { findingsToProblems } from '../../document/finding-to-problem.ts';
import { jsonToDocument } from '../../document/json-to-document.ts';
import { approvalsOf, reportApproval } from '../../editions/approvals.ts';
import { rolesInWords } from '../../editions/entry-in-words.ts';
import type { Ledger } from '../../editions/record.ts';
import { reporter, type Finding } from '../../problems/problem.ts';
import type { ApprovedEntry, EditionFile } from '../../shape/generated/types.ts';
import { shortDigest } from '../short-digest.ts';
import { notMeant, type Meant } from './meant.ts';

/** What must be said with an approval, and what each is. */
export const approvalSays = {
  by: 'who approves',
  role: 'in which role',
  minute: 'where the decision stands in the minutes',
} as const;

/** One person approves one sealed edition: refused when it would not count. */
export function approvalMeant(
  record: Ledger,
  file: EditionFile,
  by: Pick<ApprovedEntry, 'by' | 'role' | 'minute' | 'on'>,
): Meant {
  const approved: ApprovedEntry = { edition: file.edition, digest: file.digest, seal: file.seal, ...by };
  const findings: Finding[] = [];
  reportApproval(record, file, approved, reporter(findings));
  if (approved.on < file.sealed_on)
    return notMeant(
      `The edition was sealed on ${file.sealed_on}; it cannot have been approved on ${approved.on}.`,
    );
  const { document } = jsonToDocument('the approval', JSON.stringify({ approved }));
  if (document && findings.length > 0)
    return { kind: 'refused', problems: findingsToProblems(document, findings), why: 'Nothing was entered.' };
  const said = (after: Ledger): string =>
    `Approved: ${file.name}, edition ${file.edition}, ${shortDigest(file.digest)}, by ${by.by} (${by.role}). ${stillNeeded(after, file)}`;
  return { kind: 'meant', body: { approved }, said };
}

function stillNeeded(after: Ledger, edition: EditionFile): string {
  const lacking = approvalsOf(after, edition)?.lacking ?? [];
  return lacking.length === 0
    ? 'It has all approvals that it needs.'
    : `Still needed: ${rolesInWords(lacking)}.`;
}
