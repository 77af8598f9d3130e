import { basename } from 'node:path';
import { folderOf, keysIn, needed } from './decision.ts';
import { withdrawalMeant, withdrawalSays } from './deciding/withdrawal.ts';
import { enterMeant } from './entering.ts';
import { openOrSay } from './open-record.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable } from './say.ts';
import { exit, type Call } from './terminal.ts';

const options = {
  from: { type: 'string' },
  by: { type: 'string' },
  because: { type: 'string' },
  instead: { type: 'string' },
  key: { type: 'string' },
} as const;

/** `vitalwright withdraw POLICY --by NAME --because TEXT --instead TEXT [--from TIME] [--key FILE]`: by one person, at once. */
export const withdraw: Call = async (args, terminal) => {
  const call = parseCall(args, options, terminal);
  if (!call) return exit.couldNotAsk;
  const [policy, ...more] = call.positionals;
  if (policy === undefined || more.length > 0) return cannotAsk('One ward policy is to be named.', terminal);
  const given = needed(call.values, withdrawalSays, terminal);
  if (!given) return exit.couldNotAsk;
  const { from = terminal.now, key } = call.values;
  return orUnreadable(async () => {
    const keys = await keysIn(typeof key === 'string' ? [key] : [], terminal);
    const folder = keys && (await folderOf(policy, terminal));
    if (!keys || folder === null) return exit.couldNotAsk;
    const opened = await openOrSay(folder, terminal);
    if (!opened) return exit.doesNotHold;
    const meant = withdrawalMeant(basename(folder), { ...given, from: String(from) });
    return enterMeant(meant, { folder, opened, keys }, terminal);
  }, terminal);
};
