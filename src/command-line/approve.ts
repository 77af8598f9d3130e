import { approvalsOf, reportApproval } from '../editions/approvals.ts';
import type { Ledger } from '../editions/record.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { jsonToDocument } from '../document/json-to-document.ts';
import { reporter, type Finding } from '../problems/problem.ts';
import type { ApprovedEntry, EditionFile } from '../shape/generated/types.ts';
import { editionOf, keysIn, needed } from './decision.ts';
import { enterAndSay } from './entering.ts';
import { openOrSay } from './open-record.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable, sayProblems } from './say.ts';
import { shortDigest } from './short-digest.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';

const options = {
  as: { type: 'string' },
  role: { type: 'string' },
  minute: { type: 'string' },
  on: { type: 'string' },
  key: { type: 'string' },
} as const;

const mustSay = {
  as: 'who approves',
  role: 'in which role',
  minute: 'where the decision stands in the minutes',
} as const;

/** `vitalwright approve PROTOCOL@N --as NAME --role ROLE --minute REF [--on DAY] [--key FILE]`: one person approves one edition. */
export const approve: Call = async (args, terminal) => {
  const call = parseCall(args, options, terminal);
  if (!call) return exit.couldNotAsk;
  const [edition, ...more] = call.positionals;
  if (edition === undefined || more.length > 0)
    return cannotAsk('One sealed edition is to be named: for example alder_wing@1.', terminal);
  const given = needed(call.values, mustSay, terminal);
  if (!given) return exit.couldNotAsk;
  const { on = terminal.today, key } = call.values;
  const said = { by: given.as, role: given.role, minute: given.minute, on: String(on) };
  const keys = typeof key === 'string' ? [key] : [];
  return orUnreadable(async () => approveEdition(edition, said, keys, terminal), terminal);
};

async function approveEdition(
  asked: string,
  by: Pick<ApprovedEntry, 'by' | 'role' | 'minute' | 'on'>,
  keyPaths: readonly string[],
  terminal: Terminal,
): Promise<Exit> {
  const keys = await keysIn(keyPaths, terminal);
  const found = keys && (await editionOf(asked, terminal));
  if (!keys || !found) return exit.couldNotAsk;
  const opened = await openOrSay(found.folder, terminal);
  if (!opened) return exit.doesNotHold;
  const { file } = found.edition;
  const approved: ApprovedEntry = { edition: file.edition, digest: file.digest, seal: file.seal, ...by };
  if (!counts(opened.record, file, approved, terminal)) return exit.doesNotHold;
  const said = (after: Ledger): string =>
    `Approved: ${file.name}, edition ${file.edition}, ${shortDigest(file.digest)}, by ${by.by} (${by.role}). ${stillNeeded(after, file)}`;
  return enterAndSay({ folder: found.folder, opened, body: { approved }, keys }, said, terminal);
}

/** Whether an approval would count for the edition; else it is said why not. */
function counts(record: Ledger, edition: EditionFile, approved: ApprovedEntry, terminal: Terminal): boolean {
  const findings: Finding[] = [];
  reportApproval(record, edition, approved, reporter(findings));
  if (approved.on < edition.sealed_on) {
    terminal.err(
      `The edition was sealed on ${edition.sealed_on}; it cannot have been approved on ${approved.on}.\n`,
    );
    return false;
  }
  const { document } = jsonToDocument('the approval', JSON.stringify({ approved }));
  if (document && findings.length > 0) {
    sayProblems(findingsToProblems(document, findings), terminal);
    terminal.err('Nothing was entered.\n');
  }
  return findings.length === 0;
}

/** What is still needed after an approval. */
function stillNeeded(after: Ledger, edition: EditionFile): string {
  const lacking = approvalsOf(after, edition)?.lacking ?? [];
  if (lacking.length === 0) return 'It has all approvals that it needs.';
  return `Still needed: ${lacking.map(({ role, people }) => `${people} × ${role}`).join(', ')}.`;
}
