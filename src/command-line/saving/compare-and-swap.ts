import { createHash } from 'node:crypto';
import { constants } from 'node:fs';
import { mkdir, open, rmdir } from 'node:fs/promises';
import { limits } from '../../document/limits.ts';
import { isStillThere, kindOf, type Place } from './place.ts';
import { isRefused, refused, type Refused } from './refusals.ts';
import { realDisk, writeWhole, type Disk, type Kept } from './write-whole.ts';

/** What came of saving a text: it stands there; something else does than what the page started from; or nothing may be saved. */
export type Swapped = { readonly saved: string } | { readonly changed: OnDisk | null } | Refused;

/** What stands in a file. Bytes that are no UTF-8 show as replacement characters in the text; the digest is that of the bytes. */
export interface OnDisk {
  readonly digest: string;
  readonly text: string;
}

/** `sha256:` and 64 hexadecimal digits. */
export const digestOf = (bytes: Uint8Array): string =>
  `sha256:${createHash('sha256').update(bytes).digest('hex')}`;

/**
 * Puts a text into a file if what stands there still has the digest that is expected; null expects that there is no file. Else nothing is
 * written. Only one at a time may do this to one file. Throws what the system says when it cannot be read or written; nothing has changed then.
 *
 * The last look at what stands there is the very step before the new file takes its place. Another program that writes in between
 * is the one thing that is not seen: systems have no step that compares and replaces at once.
 */
export async function compareAndSwap(
  { file, toMake }: Place,
  text: string,
  expected: string | null,
  disk: Disk = realDisk,
): Promise<Swapped> {
  const there = await lookAt(file);
  if (there && isRefused(there)) return there;
  if ((there?.digest ?? null) !== expected) return { changed: there };
  const bytes = Buffer.from(text, 'utf8');
  const isUnchanged = async (): Promise<boolean> => {
    const now = (await isStillThere(file)) ? await lookAt(file) : refused('a_link');
    return now === null ? expected === null : !isRefused(now) && now.digest === expected;
  };
  const made: string[] = [];
  let isSaved = false;
  try {
    for (const folder of toMake) if (await makeFolder(folder)) made.push(folder);
    isSaved = await writeWhole(file, bytes, there, isUnchanged, disk);
  } finally {
    if (!isSaved) for (const folder of made.toReversed()) await rmdir(folder).catch(() => undefined);
  }
  if (isSaved) return { saved: digestOf(bytes) };
  const other = (await isStillThere(file)) ? await lookAt(file) : refused('a_link');
  return other && isRefused(other) ? other : { changed: other };
}

/** False when there is such a folder by now. */
async function makeFolder(folder: string): Promise<boolean> {
  try {
    await mkdir(folder);
    return true;
  } catch (error) {
    if ((await kindOf(folder)) !== 'folder') throw error;
    return false;
  }
}

/** To be read and written, though it is only read: who may not write a file is told so, and does not replace it. No link, no waiting. */
const forBoth = constants.O_RDWR | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0);

/** What stands in a file, with what a new one in its place keeps of it; null when there is none. A link is not followed. */
async function lookAt(file: string): Promise<(OnDisk & Kept) | null | Refused> {
  const kind = await kindOf(file);
  if (kind === 'nothing') return null;
  if (kind === 'link') return refused('a_link');
  // A pipe would be waited for without end.
  if (kind !== 'file') return refused('not_a_file');
  const handle = await open(file, forBoth);
  try {
    const { size, mode, uid, gid } = await handle.stat();
    if (size > limits.bytes) return refused('too_large_there');
    // Whoever takes away the right to write means that nobody writes, the owner of the machine neither.
    if ((mode & 0o222) === 0) return refused('may_not_write');
    const bytes = await handle.readFile();
    return { digest: digestOf(bytes), text: bytes.toString('utf8'), mode, uid, gid };
  } finally {
    await handle.close();
  }
}
