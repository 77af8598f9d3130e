import { mkdtemp, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { firstCases, firstLadder, firstProtocol } from '../authoring/first-protocol.ts';
import { isName } from '../authoring/start-texts.ts';
import { fileNames, findLadder } from './files.ts';
import { parseCall } from './parse-call.ts';
import { exit, type Call } from './terminal.ts';

const ownLadder = 'first_ladder';

/** `vitalwright new NAME`: a first protocol with its cases. Whole or not at all; nothing that exists is touched. */
export const newProtocol: Call = async (args, terminal) => {
  const call = parseCall(args, {}, terminal);
  if (!call) return exit.couldNotAsk;
  const [name, ...more] = call.positionals;
  if (name === undefined || more.length > 0 || !isName(name)) {
    terminal.err(
      'One name is to be given: small letters, digits and underscores, for example ward_pressure.\n',
    );
    return exit.couldNotAsk;
  }
  const parent = (await stat('protocols').catch(() => null))?.isDirectory() ? 'protocols' : '.';
  const folder = join(parent, name);
  if (await stat(folder).catch(() => null)) {
    terminal.err(`${folder} is already there; nothing was written.\n`);
    return exit.couldNotAsk;
  }
  const ladder =
    (await findLadder('alder_ladder', join(folder, fileNames.protocol))) === null
      ? ownLadder
      : 'alder_ladder';
  const schema = await schemaFrom(folder);
  try {
    await writeWhole(folder, parent, {
      [fileNames.protocol]: firstProtocol(name, ladder, schema),
      [fileNames.cases]: firstCases(name, schema),
      ...(ladder === ownLadder ? { [fileNames.ladder]: firstLadder(ownLadder, schema) } : {}),
    });
  } catch (error) {
    terminal.err(
      `${folder} could not be written: ${(error as NodeJS.ErrnoException).code ?? (error as Error).message}.\n`,
    );
    return exit.couldNotAsk;
  }
  terminal.out(`Written: ${folder}. Now change it, and ask:\n  vitalwright check ${folder}\n`);
  return exit.well;
};

/** The way from a new folder to `schema/`, where that stands in the folder of the call; null: there is none. */
async function schemaFrom(folder: string): Promise<string | null> {
  const found = await stat(join('schema', 'protocol.schema.json')).catch(() => null);
  return found?.isFile() ? relative(folder, 'schema').split(sep).join('/') : null;
}

/** Writes a folder beside its place and moves it there in one step, so that a half-written one is never seen. */
async function writeWhole(
  folder: string,
  parent: string,
  files: Readonly<Record<string, string>>,
): Promise<void> {
  const draft = await mkdtemp(join(parent, '.new-'));
  try {
    for (const [file, text] of Object.entries(files)) await writeFile(join(draft, file), text);
    await rename(draft, folder);
  } catch (error) {
    await rm(draft, { recursive: true, force: true });
    throw error;
  }
}
