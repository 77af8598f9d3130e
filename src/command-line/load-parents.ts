import { readdir } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import { valueIn, type Document } from '../document/document.ts';
import type { Parents, ParentText } from '../protocol/based-on/basis.ts';
import { exists, fileNames, filesBelow, readText, UnreadableFile } from './files.ts';

/**
 * The texts of the protocols that one may be based on, by the names of their folders: those in the folders beside it, and those below
 * the folder protocols/ that it stands in, or else the one of the place where the call is made. A file beside it that has another
 * name than protocol.yaml goes by that name. The nearest of one name stands. None are read for a protocol that stands alone.
 */
export async function loadParents(document: Document, path: string): Promise<Parents> {
  const found = new Map<string, ParentText>();
  if (!valueIn(document.root, 'based_on')) return found;
  for (const file of await candidates(path)) {
    const name = nameOf(file);
    const text = found.has(name) || file === path ? null : await readable(file);
    if (text) found.set(name, { file: text.file, text: text.text });
  }
  return found;
}

const nameOf = (file: string): string =>
  basename(file) === fileNames.protocol ? basename(dirname(file)) : basename(file, extname(file));

/** The nearest first. */
async function candidates(path: string): Promise<string[]> {
  const folder = dirname(path);
  const beside = (await readdir(folder)).filter(
    (file) =>
      extname(file) === '.yaml' && !file.startsWith('.') && !named.has(file) && join(folder, file) !== path,
  );
  return [
    ...beside.map((file) => join(folder, file)),
    ...(await inFoldersOf(folder)),
    ...(await inFoldersOf(dirname(folder))),
    ...(await belowHome(folder)),
  ];
}

const named: ReadonlySet<string> = new Set(Object.values(fileNames));

/** The protocols that stand in the folders of a folder, one level down. */
async function inFoldersOf(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
    .map((entry) => join(folder, entry.name, fileNames.protocol));
  const there = await Promise.all(files.map(exists));
  return files.filter((_, index) => there[index]).sort();
}

async function belowHome(folder: string): Promise<string[]> {
  let home = folder;
  while (basename(home) !== 'protocols' && dirname(home) !== home) home = dirname(home);
  const place = basename(home) === 'protocols' ? home : 'protocols';
  const files = await filesBelow(place).catch(() => []);
  return files.filter((file) => basename(file) === fileNames.protocol);
}

/** A text; null when it cannot be read, so that only who is based on it is told. */
async function readable(path: string): Promise<ParentText | null> {
  try {
    return await readText(path);
  } catch (error) {
    if (error instanceof UnreadableFile) return null;
    throw error;
  }
}
