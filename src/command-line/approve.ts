import type { ApprovedEntry } from '../shape/generated/types.ts';
import { editionOf, keysIn, needed } from './decision.ts';
import { approvalMeant, approvalSays } from './deciding/approval.ts';
import { enterMeant } from './entering.ts';
import { openOrSay } from './open-record.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable } from './say.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';

const options = {
  as: { type: 'string' },
  role: { type: 'string' },
  minute: { type: 'string' },
  on: { type: 'string' },
  key: { type: 'string' },
} as const;

const mustSay = {
  as: approvalSays.by,
  role: approvalSays.role,
  minute: approvalSays.minute,
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
  const meant = approvalMeant(opened.record, found.edition.file, by);
  return enterMeant(meant, { folder: found.folder, opened, keys }, terminal);
}
