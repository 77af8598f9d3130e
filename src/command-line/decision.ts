import { dirname } from 'node:path';
import type { PrivateKey } from '../editions/signatures.ts';
import type { Edition } from '../editions/text-to-edition.ts';
import { loadEdition, numberedName, editionPath } from './edition-files.ts';
import { exists, findProtocol } from './files.ts';
import { readKey } from './key-files.ts';
import { sayProblems } from './say.ts';
import type { Terminal } from './terminal.ts';

/** Options that are texts, all of which must be given; null, and said, when one is not. */
export function needed<K extends string>(
  values: Readonly<Record<string, string | boolean | undefined>>,
  names: Readonly<Record<K, string>>,
  terminal: Terminal,
): Record<K, string> | null {
  const found = {} as Record<K, string>;
  const lacking: string[] = [];
  for (const name of Object.keys(names) as K[]) {
    const value = values[name];
    if (typeof value === 'string' && value.trim() !== '') found[name] = value.trim();
    else lacking.push(`--${name} (${names[name]})`);
  }
  if (lacking.length === 0) return found;
  terminal.err(`Still to be given: ${lacking.join(', ')}.\n`);
  return null;
}

/** The folder of a protocol or ward policy; null, and said, when there is none. */
export async function folderOf(asked: string, terminal: Terminal): Promise<string | null> {
  const path = await findProtocol(asked);
  if (path === null) terminal.err(`There is no protocol or ward policy "${asked}".\n`);
  return path === null ? null : dirname(path);
}

/** A sealed edition that is named as NAME@NUMBER, with its folder; null, and said, when it cannot be read. */
export async function editionOf(
  asked: string,
  terminal: Terminal,
): Promise<{ readonly folder: string; readonly edition: Edition } | null> {
  const numbered = numberedName(asked);
  if (!numbered) {
    terminal.err('One sealed edition is to be named, with its number: for example alder_wing@1.\n');
    return null;
  }
  const folder = await folderOf(numbered.name, terminal);
  if (folder === null) return null;
  const path = editionPath(folder, numbered.edition);
  if (!(await exists(path))) {
    terminal.err(`There is no sealed edition ${numbered.edition} of "${numbered.name}".\n`);
    return null;
  }
  const { edition, problems } = await loadEdition(path);
  if (!edition) sayProblems(problems, terminal);
  return edition && { folder, edition };
}

/** The private keys in some files; null, and said, when one is none. */
export async function keysIn(paths: readonly string[], terminal: Terminal): Promise<PrivateKey[] | null> {
  const keys: PrivateKey[] = [];
  for (const path of paths) {
    const key = await readKey(path);
    if (!key) {
      terminal.err(`${path} is no private key.\n`);
      return null;
    }
    keys.push(key);
  }
  return keys;
}
