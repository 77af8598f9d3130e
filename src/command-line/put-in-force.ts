import { approvalsOf } from '../editions/approvals.ts';
import { isWard } from '../editions/cases-to-answers.ts';
import type { Ledger } from '../editions/record.ts';
import type { EditionFile, InForceEntry } from '../shape/generated/types.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import { editionOf, keysIn, needed } from './decision.ts';
import { enterAndSay } from './entering.ts';
import { openOrSay } from './open-record.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable } from './say.ts';
import { shortDigest } from './short-digest.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';

const options = {
  from: { type: 'string' },
  by: { type: 'string' },
  because: { type: 'string' },
  key: { type: 'string' },
} as const;

/** `vitalwright put-in-force POLICY@N --by NAME --because TEXT [--from TIME] [--key FILE]`. */
export const putInForce: Call = async (args, terminal) => {
  const call = parseCall(args, options, terminal);
  if (!call) return exit.couldNotAsk;
  const [asked, ...more] = call.positionals;
  if (asked === undefined || more.length > 0)
    return cannotAsk(
      'One sealed edition of a ward policy is to be named: for example alder_wing@1.',
      terminal,
    );
  const given = needed(call.values, { by: 'who puts it in force', because: 'why' }, terminal);
  if (!given) return exit.couldNotAsk;
  const { from = terminal.now, key } = call.values;
  const keys = typeof key === 'string' ? [key] : [];
  return orUnreadable(async () => put(asked, { ...given, from: String(from) }, keys, terminal), terminal);
};

async function put(
  asked: string,
  decided: Pick<InForceEntry, 'by' | 'because' | 'from'>,
  keyPaths: readonly string[],
  terminal: Terminal,
): Promise<Exit> {
  const keys = await keysIn(keyPaths, terminal);
  const found = keys && (await editionOf(asked, terminal));
  if (!keys || !found) return exit.couldNotAsk;
  const { file } = found.edition;
  if (!isWard(found.edition.asked))
    return cannotAsk(
      `"${file.name}" is a protocol. A ward reads with a ward policy: seal one that reads with it.`,
      terminal,
    );
  const opened = await openOrSay(found.folder, terminal);
  if (!opened) return exit.doesNotHold;
  if (!isApproved(opened.record, file, terminal)) return exit.doesNotHold;
  const inForce: InForceEntry = { edition: file.edition, digest: file.digest, seal: file.seal, ...decided };
  const said = `In force from ${timeInWords(decided.from)}: ${file.name}, edition ${file.edition}, ${shortDigest(file.digest)}`;
  return enterAndSay(
    { folder: found.folder, opened, body: { in_force: inForce }, keys },
    () => said,
    terminal,
  );
}

function isApproved(record: Ledger, file: EditionFile, terminal: Terminal): boolean {
  const approvals = approvalsOf(record, file);
  if (!approvals) {
    terminal.err(
      `Nothing was entered: when edition ${file.edition} was sealed, nobody was entered who may approve it. Enter the approvers, then seal a new edition.\n`,
    );
    return false;
  }
  if (approvals.lacking.length === 0) return true;
  const lacking = approvals.lacking.map(({ role, people }) => `${people} × ${role}`).join(', ');
  terminal.err(`Nothing was entered: edition ${file.edition} is not approved. Still needed: ${lacking}.\n`);
  return false;
}
