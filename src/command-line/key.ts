import { newKey } from '../editions/signatures.ts';
import { whyNoPlace } from './key-files.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable } from './say.ts';
import { exit, type Call } from './terminal.ts';
import { writeOnce } from './write-once.ts';

/** `vitalwright key new FILE`: a private key in a file that only its owner may read, and its public part on the terminal. */
export const key: Call = async (args, terminal) => {
  const call = parseCall(args, {}, terminal);
  if (!call) return exit.couldNotAsk;
  const [what, path, ...more] = call.positionals;
  if (what !== 'new' || path === undefined || path === '' || more.length > 0)
    return cannotAsk(
      'To be given: new, and the file for the private key, outside every repository.',
      terminal,
    );
  return orUnreadable(async () => {
    const why = await whyNoPlace(path);
    if (why !== null)
      return cannotAsk(
        `No key was made: ${why}, and would be shared with everybody who gets it. Choose a place of your own.`,
        terminal,
      );
    const made = await newKey();
    if (!(await writeOnce(path, `${JSON.stringify(made)}\n`, 0o600)))
      return cannotAsk(`${path} is there already; nothing was written.`, terminal);
    terminal.out(
      `The private key is in ${path}. Keep it to yourself, and a copy in a safe place.\nThis is the public key, for the list of approvers:\n${made.x}\n`,
    );
    return exit.well;
  }, terminal);
};
