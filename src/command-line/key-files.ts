import { realpath, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { textToKey, type PrivateKey } from '../editions/signatures.ts';
import { readText } from './files.ts';

/** Reads a private key from its file, which is no pipe and no device; null when it is none. */
export async function readKey(path: string): Promise<PrivateKey | null> {
  return textToKey((await readText(path)).text);
}

/**
 * Why a private key may not be kept at a place: it is below a git work tree, or below a folder of protocols, from where it would be shared
 * with everybody. Null when it may. Links are followed.
 */
export async function whyNoPlace(path: string): Promise<string | null> {
  let folder = await nearestFolder(dirname(resolve(path)));
  for (;;) {
    if (await isThere(join(folder, '.git'))) return `${folder} is kept with git`;
    if (folder.split(/[\\/]/).at(-1) === 'protocols') return `${folder} holds protocols`;
    if (dirname(folder) === folder) return null;
    folder = dirname(folder);
  }
}

/** The nearest folder above a place that is there already, where it really is. */
async function nearestFolder(folder: string): Promise<string> {
  const real = await realpath(folder).catch(() => null);
  return real ?? nearestFolder(dirname(folder));
}

const isThere = async (path: string): Promise<boolean> => Boolean(await stat(path).catch(() => null));
