import { dirname, join } from 'node:path';
import { toPlain, type Document } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { readWard, type Compiled, type Problem, type Ward } from '../index.ts';
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

/** Every protocol that there is by name, so that a near miss can be told; only those that the policy names are read. */
async function namedProtocols(document: Document, path: string): Promise<Map<string, Compiled | null>> {
  const plain = toPlain(document.root) as { reads_with?: unknown };
  const named = new Set(
    (Array.isArray(plain.reads_with) ? plain.reads_with : []).map(
      (each: unknown) => (each as { protocol?: unknown } | null)?.protocol,
    ),
  );
  const found = new Map<string, Compiled | null>();
  for (const [name, place] of await protocolsBeside(path))
    found.set(name, named.has(name) ? (await loadProtocol(place, null)).compiled : null);
  return found;
}
