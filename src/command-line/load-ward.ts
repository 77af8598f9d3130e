import { dirname, join } from 'node:path';
import type { Document } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { readWard, type Compiled, type Problem, type Ward } from '../index.ts';
import { askedEditions } from '../ward/asked-editions.ts';
import { isWard } from '../editions/cases-to-answers.ts';
import { editionPath, loadEdition } from './edition-files.ts';
import { exists, fileNames, protocolsBeside, readText } from './files.ts';
import { loadLadder, loadProtocol } from './load.ts';

/** A ward policy as it was found on disk, checked, with the files that stand beside it. */
export interface LoadedWard {
  readonly file: string;
  readonly document: Document | null;
  readonly ward: Ward | null;
  readonly problems: readonly Problem[];
  /** The path of its cases; null when it has none. */
  readonly casesPath: string | null;
}

/** Loads and checks the ward policy of a file, with the protocols that it names. Their own problems are left to their own check. */
export async function loadWard(path: string, today: string | null): Promise<LoadedWard> {
  const { file, text } = await readText(path);
  const { document } = yamlToDocument(file, text);
  const casesPath = join(dirname(path), fileNames.cases);
  const beside = { file, document, casesPath: (await exists(casesPath)) ? casesPath : null };
  const ladder = document && (await loadLadder(document, path));
  const protocols = document ? await namedProtocols(document, path) : new Map<string, Compiled | null>();
  return { ...beside, ...readWard(file, text, { ladder, protocols, today }) };
}

/**
 * Every protocol that there is by name, so that a near miss can be told; only those that the policy names are read. Where the file of a
 * protocol is another edition than the policy reads with, its sealed edition is taken: the ward stays with what it agreed.
 */
async function namedProtocols(document: Document, path: string): Promise<Map<string, Compiled | null>> {
  const asked = askedEditions(document);
  const found = new Map<string, Compiled | null>();
  for (const [name, place] of await protocolsBeside(path)) {
    const edition = asked.get(name);
    found.set(name, asked.has(name) ? await protocolAt(place, edition) : null);
  }
  return found;
}

async function protocolAt(place: string, edition: unknown): Promise<Compiled | null> {
  const { compiled } = await loadProtocol(place, null);
  if (typeof edition !== 'number' || compiled?.protocol.edition === edition) return compiled;
  const sealed = editionPath(dirname(place), edition);
  if (!(await exists(sealed))) return compiled;
  const asked = (await loadEdition(sealed)).edition?.asked;
  return asked && !isWard(asked) ? asked : null;
}
