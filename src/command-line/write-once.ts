import { randomUUID } from 'node:crypto';
import { link, mkdir, open, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/**
 * Writes a file that is never written again: whole or not at all, whenever the process ends, and only by one of several that try at
 * once. False: there is a file of that name already, and nothing was changed.
 *
 * The text is on the disk, under a name of its own, before it gets its name by a link, which the system gives once.
 */
export async function writeOnce(path: string, text: string, mode = 0o644): Promise<boolean> {
  const folder = dirname(path);
  await mkdir(folder, { recursive: true });
  const draft = join(folder, `.${basename(path)}.${randomUUID()}.draft`);
  try {
    await writeThrough(draft, text, mode);
    await link(draft, path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  } finally {
    await rm(draft, { force: true });
  }
  await keepFolder(folder);
  return true;
}

/** Writes a new file, and waits until it is on the disk. */
async function writeThrough(path: string, text: string, mode: number): Promise<void> {
  const file = await open(path, 'wx', mode);
  try {
    await file.writeFile(text);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Waits until the names in a folder are on the disk; some systems keep no folder open, and need no waiting. */
async function keepFolder(folder: string): Promise<void> {
  const opened = await open(folder, 'r').catch(() => null);
  await opened?.sync().catch(() => undefined);
  await opened?.close();
}
