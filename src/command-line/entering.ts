import type { Body } from '../editions/entry.ts';
import type { Ledger } from '../editions/record.ts';
import type { PrivateKey } from '../editions/signatures.ts';
import { keepEntries } from './seen.ts';
import type { OpenRecord } from './open-record.ts';
import { enter } from './deciding/enter.ts';
import type { Meant } from './deciding/meant.ts';
import { loadRecord } from './record-files.ts';
import { sayProblems } from './say.ts';
import { exit, type Exit, type Terminal } from './terminal.ts';

/** What an entry is made of. */
export interface Entering {
  readonly folder: string;
  readonly opened: OpenRecord & { readonly record: Ledger };
  readonly body: Body;
  readonly keys: readonly PrivateKey[];
}

/** Enters what was decided as the next entry, and says what holds after it; or says why it was not entered. */
export async function enterAndSay(
  { folder, opened, body, keys }: Entering,
  said: (after: Ledger) => string,
  terminal: Terminal,
): Promise<Exit> {
  const entered = await enter(folder, opened.record, opened.texts, { body, at: terminal.now, keys });
  if (entered.kind === 'refused') {
    sayProblems(entered.problems, terminal);
    terminal.err('Nothing was entered.\n');
    return exit.doesNotHold;
  }
  if (entered.kind === 'too_late') {
    terminal.err(
      'Nothing was entered: somebody else made an entry at the same moment. Look at it, then ask again.\n',
    );
    return exit.doesNotHold;
  }
  const { texts } = await loadRecord(folder);
  await keepEntries(opened.seen, texts);
  terminal.out(`${said(entered.record)}\n`);
  return exit.well;
}

/** Enters what was meant; or says why it was not, when it is nothing that can be entered. */
export async function enterMeant(
  meant: Meant,
  rest: Omit<Entering, 'body'>,
  terminal: Terminal,
): Promise<Exit> {
  if (meant.kind === 'meant') return enterAndSay({ ...rest, body: meant.body }, meant.said, terminal);
  sayProblems(meant.problems, terminal);
  terminal.err(`${meant.why}\n`);
  return exit.doesNotHold;
}
