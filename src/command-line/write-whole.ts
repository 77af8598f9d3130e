import { randomBytes } from 'node:crypto';
import { lstat, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** Why a file could not be written, in words; the system's own code is kept where there are none. */
export class UnwritableFile extends Error {
  constructor(file: string, code: string) {
    const reasons: Record<string, string> = {
      EISDIR: 'it is a folder; name a file in it',
      ENOENT: 'its folder is not there',
      ENOTDIR: 'what should be its folder is a file',
      EACCES: 'it may not be written',
      EPERM: 'it may not be written',
      EROFS: 'it may not be written',
      ENOSPC: 'the disk is full',
      ENOTFILE: 'it is neither a file nor free',
    };
    super(`${file} was not written: ${reasons[code] ?? `it cannot be (${code})`}.`);
  }
}

/**
 * Writes a file whole or not at all: beside its place first, then moved there in one step. Whoever reads it meanwhile sees the old
 * one or the new one. A link is followed, and what it leads to is replaced.
 */
export async function writeWhole(file: string, text: string): Promise<void> {
  let draft: string | null = null;
  try {
    const place = (await lstat(file).catch(() => null))?.isSymbolicLink() ? await realpath(file) : file;
    const before = await stat(place).catch(() => null);
    if (before?.isDirectory()) throw codeOf('EISDIR');
    if (before && !before.isFile()) throw codeOf('ENOTFILE');
    draft = join(dirname(place), `.${basename(place)}-${randomBytes(6).toString('hex')}`);
    await writeFile(draft, text, { flag: 'wx', ...(before ? { mode: before.mode } : {}) });
    await rename(draft, place);
  } catch (error) {
    if (draft !== null) await rm(draft, { force: true }).catch(() => undefined);
    throw new UnwritableFile(file, (error as NodeJS.ErrnoException).code ?? 'unknown');
  }
}

const codeOf = (code: string): Error => Object.assign(new Error(code), { code });
