import { dirname, join } from 'node:path';
import { toPlain, type Document } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Problem } from '../problems/problem.ts';
import { documentToLadder } from '../protocol/document-to-protocol.ts';
import type { Ladder } from '../protocol/protocol.ts';
import { documentToChecked } from '../review/document-to-checked.ts';
import { textToFile } from '../shape/text-to-file.ts';
import { vitalSigns } from '../vocabulary/vital-signs.ts';
import { exists, fileNames, findLadder, readText } from './files.ts';
import { loadParents } from './load-parents.ts';

/** A protocol as it was found on disk, checked, with the files that stand beside it. */
export interface Loaded {
  readonly file: string;
  /** With what the protocol is based on worked in. */
  readonly document: Document | null;
  readonly compiled: Compiled | null;
  readonly problems: readonly Problem[];
  /** The path of its cases; null when it has none. */
  readonly casesPath: string | null;
}

/** Loads and checks the protocol of a file. Problems of its ladder are left to the check of the ladder itself. */
export async function loadProtocol(path: string, today: string | null): Promise<Loaded> {
  const { file, text } = await readText(path);
  const { document, problems } = yamlToDocument(file, text);
  const casesPath = join(dirname(path), fileNames.cases);
  const beside = { file, casesPath: (await exists(casesPath)) ? casesPath : null };
  if (!document) {
    return { ...beside, document, compiled: null, problems: textToFile('protocol', file, text).problems };
  }
  const ladder = await loadLadder(document, path);
  const parents = await loadParents(document, path);
  const checked = documentToChecked(document, { dictionary: vitalSigns, ladder, today, parents });
  return {
    ...beside,
    document: checked.document,
    compiled: checked.compiled,
    problems: [...problems, ...checked.problems],
  };
}

/** The ladder that a protocol or a ward policy names; null when there is none, or it has errors of its own. */
export async function loadLadder(document: Document, path: string): Promise<Ladder | null> {
  const plain = toPlain(document.root) as { ladder?: unknown };
  if (typeof plain.ladder !== 'string' || !/^[a-z][a-z0-9_]*$/.test(plain.ladder)) return null;
  const place = await findLadder(plain.ladder, path);
  if (place === null) return null;
  const { file, text } = await readText(place);
  const read = yamlToDocument(file, text).document;
  const ladder = read && documentToLadder(read).ladder;
  return ladder?.name === plain.ladder ? ladder : null;
}
