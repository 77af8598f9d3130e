import { handbookToHtml } from '../handbook/handbook.ts';
import type { HandbookInput } from '../handbook/input.ts';
import { handbookOfDraft } from './handbook-of-draft.ts';
import { handbookOfEdition } from './handbook-of-edition.ts';
import { numberedName } from './edition-files.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable, sayProblems } from './say.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';
import { UnwritableFile, writeWhole } from './write-whole.ts';

/** `vitalwright handbook PROTOCOL|WARD|NAME@N [--out FILE]`: the policy document as one page of HTML. */
export const handbook: Call = async (args, terminal) => {
  const call = parseCall(args, { out: { type: 'string' } }, terminal);
  if (!call) return exit.couldNotAsk;
  const [asked, ...more] = call.positionals;
  if (asked === undefined || more.length > 0)
    return cannotAsk(
      'One protocol or ward policy is to be named: its file, its folder, its name below protocols/, or NAME@N.',
      terminal,
    );
  const { out } = call.values;
  return orUnreadable(async () => {
    try {
      return await write(asked, out === undefined ? null : String(out), terminal);
    } catch (error) {
      if (!(error instanceof UnwritableFile)) throw error;
      return cannotAsk(error.message, terminal);
    }
  }, terminal);
};

async function write(asked: string, out: string | null, terminal: Terminal): Promise<Exit> {
  const isNumbered = numberedName(asked) !== null;
  const found = await (isNumbered ? handbookOfEdition(asked, terminal) : handbookOfDraft(asked, terminal));
  if (!found) return exit.couldNotAsk;
  const text = handbookToHtml(found.input);
  if (out === null) terminal.out(text);
  else await writeWhole(out, text);
  const all = [casesHold(found.input, terminal), requirementsHold(found.input, terminal)];
  return all.every(Boolean) ? found.exit : exit.doesNotHold;
}

/** Whether every case could be read and comes out as expected; else it is said, as the handbook says it too. */
function casesHold({ teacher }: HandbookInput, terminal: Terminal): boolean {
  const { leftOut, problems } = teacher.lessons;
  sayProblems(problems, terminal);
  if (leftOut.length > 0)
    terminal.err(`Not as expected, and told of in the handbook: ${leftOut.join('; ')}.\n`);
  return leftOut.length === 0 && problems.length === 0;
}

/** Whether everything that must always hold was proven; else it is said, as the handbook says it too. */
function requirementsHold({ proofs }: HandbookInput, terminal: Terminal): boolean {
  const open = proofs
    .filter(({ verdict }) => verdict !== 'proven')
    .map(({ requirement }) => requirement.name);
  if (open.length > 0) terminal.err(`Not proven, and told of in the handbook: ${open.join('; ')}.\n`);
  return open.length === 0;
}
