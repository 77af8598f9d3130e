import { dirname } from 'node:path';
import manifest from '../../package.json' with { type: 'json' };
import { editionToText } from '../editions/edition-to-text.ts';
import { listAfter } from '../editions/record.ts';
import { textToEdition } from '../editions/text-to-edition.ts';
import { saysTheSame, type About } from '../editions/to-edition.ts';
import type { Unsealed } from '../editions/unsealed.ts';
import { editionPath, loadEdition } from './edition-files.ts';
import { exists, findProtocol } from './files.ts';
import { kindOf } from './kind-of.ts';
import { openOrSay } from './open-record.ts';
import { parseCall } from './parse-call.ts';
import { cannotAsk, orUnreadable, sayProblems } from './say.ts';
import { allHold, draftOfProtocol, draftOfWard, type SealDraft } from './seal-draft.ts';
import { shortDigest } from './short-digest.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';
import { writeOnce } from './write-once.ts';

/** `vitalwright seal PROTOCOL [--author NAME]…`: writes the next edition, when everything that it must hold holds. */
export const seal: Call = async (args, terminal) => {
  const call = parseCall(args, { author: { type: 'string', multiple: true } }, terminal);
  if (!call) return exit.couldNotAsk;
  const [asked, ...more] = call.positionals;
  if (asked === undefined || more.length > 0)
    return cannotAsk('One protocol or ward policy is to be named.', terminal);
  const path = await findProtocol(asked);
  if (path === null) return cannotAsk(`There is no protocol "${asked}".`, terminal);
  return orUnreadable(async () => sealFile(path, call.lists['author'] ?? [], terminal), terminal);
};

async function sealFile(path: string, authors: readonly string[], terminal: Terminal): Promise<Exit> {
  const folder = dirname(path);
  const opened = await openOrSay(folder, terminal);
  if (!opened) return exit.doesNotHold;
  const approvers = listAfter(opened.record)?.digest ?? null;
  if (approvers !== null && authors.length === 0)
    return cannotAsk(
      'Who wrote it is to be named with --author, so that whoever approves it is somebody else.',
      terminal,
    );
  const about = { kit: manifest.version, sealedOn: terminal.today, authors, approvers };
  const draft = await draftFor(path, about, terminal);
  if (draft === null) return exit.doesNotHold;
  const place = editionPath(folder, draft.draft.edition);
  // Said before anything is looked for that takes long.
  if (await exists(place)) return compareWithSealed(place, draft.draft, terminal);
  return (await allHold(draft.toBe, terminal)) ? write(place, draft.draft, terminal) : exit.doesNotHold;
}

async function draftFor(path: string, about: About, terminal: Terminal): Promise<SealDraft | null> {
  const kind = await kindOf(path);
  return kind === 'ward' ? draftOfWard(path, about, terminal) : draftOfProtocol(path, about, terminal);
}

/** Writes an edition that is read back as it was meant; a number that is taken stays what it is. */
async function write(path: string, draft: Unsealed, terminal: Terminal): Promise<Exit> {
  const { name, edition, digest } = draft;
  const text = editionToText(draft);
  const { problems, edition: back } = textToEdition(path, text, { name, edition });
  if (!back) {
    sayProblems(problems, terminal);
    terminal.err('It was not sealed: what would be written could not be read back.\n');
    return exit.doesNotHold;
  }
  if (!(await writeOnce(path, text))) return compareWithSealed(path, draft, terminal);
  terminal.out(`Sealed: ${name}, edition ${edition}, ${shortDigest(digest)}\n`);
  return exit.well;
}

async function compareWithSealed(path: string, draft: Unsealed, terminal: Terminal): Promise<Exit> {
  const { file, edition, problems } = await loadEdition(path);
  if (!edition) {
    sayProblems(problems, terminal);
    return exit.doesNotHold;
  }
  if (saysTheSame(edition.file, draft)) {
    terminal.out(
      `Edition ${draft.edition} of "${draft.name}" is sealed already and says the same; nothing was changed.\n`,
    );
    return exit.well;
  }
  terminal.err(
    `Edition ${draft.edition} of "${draft.name}" is sealed already (${file}) and says something else. Give what is changed a higher number: edition: ${draft.edition + 1}\n`,
  );
  return exit.doesNotHold;
}
