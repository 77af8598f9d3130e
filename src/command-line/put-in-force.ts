import type { InForceEntry } from '../shape/generated/types.ts';
import { editionOf, keysIn, needed } from './decision.ts';
import { noPolicy, puttingMeant, puttingSays } from './deciding/putting.ts';
import { enterMeant } from './entering.ts';
import { openOrSay } from './open-record.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable } from './say.ts';
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
  const given = needed(call.values, puttingSays, terminal);
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
  const why = noPolicy(found.edition);
  if (why !== null) return cannotAsk(why, terminal);
  const opened = await openOrSay(found.folder, terminal);
  if (!opened) return exit.doesNotHold;
  const meant = puttingMeant(opened.record, found.edition, decided);
  return enterMeant(meant, { folder: found.folder, opened, keys }, terminal);
}
