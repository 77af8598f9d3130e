import { approvalsOf } from '../../editions/approvals.ts';
import { isWard } from '../../editions/cases-to-answers.ts';
import { rolesInWords } from '../../editions/entry-in-words.ts';
import type { Ledger } from '../../editions/record.ts';
import type { Edition } from '../../editions/text-to-edition.ts';
import { timeInWords } from '../../outcome/time-in-words.ts';
import type { EditionFile, InForceEntry } from '../../shape/generated/types.ts';
import { shortDigest } from '../short-digest.ts';
import { notMeant, type Meant } from './meant.ts';

/** What must be said when an edition is put in force, and what each is. */
export const puttingSays = { by: 'who puts it in force', because: 'why' } as const;

/** Why an edition can never be put in force: it is a protocol. Null for a ward policy. */
export const noPolicy = ({ asked, file }: Edition): string | null =>
  isWard(asked)
    ? null
    : `"${file.name}" is a protocol. A ward reads with a ward policy: seal one that reads with it.`;

/** An approved edition of a ward policy is put in force from a time on. */
export function puttingMeant(
  record: Ledger,
  edition: Edition,
  decided: Pick<InForceEntry, 'by' | 'because' | 'from'>,
): Meant {
  const { file } = edition;
  const why = noPolicy(edition) ?? notApproved(record, file);
  if (why !== null) return notMeant(why);
  const put: InForceEntry = { edition: file.edition, digest: file.digest, seal: file.seal, ...decided };
  const said = `In force from ${timeInWords(decided.from)}: ${file.name}, edition ${file.edition}, ${shortDigest(file.digest)}`;
  return { kind: 'meant', body: { in_force: put }, said: () => said };
}

function notApproved(record: Ledger, file: EditionFile): string | null {
  const approvals = approvalsOf(record, file);
  if (!approvals)
    return `Nothing was entered: when edition ${file.edition} was sealed, nobody was entered who may approve it. Enter the approvers, then seal a new edition.`;
  const { lacking } = approvals;
  if (lacking.length === 0) return null;
  return `Nothing was entered: edition ${file.edition} is not approved. Still needed: ${rolesInWords(lacking)}.`;
}
