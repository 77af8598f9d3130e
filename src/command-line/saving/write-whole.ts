import { randomBytes } from 'node:crypto';
import { link, open, rename, rm, type FileHandle } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** What a file that is replaced keeps: who owns it, and who may do what with it. */
export interface Kept {
  readonly mode: number;
  readonly uid: number;
  readonly gid: number;
}

/** The calls to the system that a write makes; a test puts a full disk in their place. */
export interface Disk {
  readonly open: (path: string, flags: string, mode?: number) => Promise<FileHandle>;
  readonly rename: (from: string, to: string) => Promise<void>;
  readonly link: (from: string, to: string) => Promise<void>;
}

export const realDisk: Disk = { open, rename, link };

/**
 * Writes a file so that it is whole at every moment: a new file beside it, brought to the disk, takes its place in one step. Whoever is
 * killed in between leaves what was there before, and a file of another name that nothing reads.
 *
 * `kept` null: a new file, which never takes the place of one. `isUnchanged` is asked at the last moment. False when it says no, or when
 * there is such a file by now; then nothing has changed.
 */
export async function writeWhole(
  file: string,
  bytes: Uint8Array,
  kept: Kept | null,
  isUnchanged: () => Promise<boolean>,
  disk: Disk = realDisk,
): Promise<boolean> {
  const draft = join(dirname(file), `.${basename(file)}.${randomBytes(8).toString('hex')}.part`);
  try {
    await writeDraft(draft, bytes, kept, disk);
    if (!(await isUnchanged())) return false;
    if (kept) await disk.rename(draft, file);
    else if (!(await linkNew(draft, file, disk))) return false;
  } finally {
    await rm(draft, { force: true }).catch(() => undefined);
  }
  await bringFolderToDisk(dirname(file), disk);
  return true;
}

async function writeDraft(draft: string, bytes: Uint8Array, kept: Kept | null, disk: Disk): Promise<void> {
  const handle = await disk.open(draft, 'wx', kept ? kept.mode & 0o777 : 0o666);
  try {
    if (kept) await keep(handle, kept);
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Who owns the file is kept where the system lets us; what is allowed with it always is. */
async function keep(handle: FileHandle, { mode, uid, gid }: Kept): Promise<void> {
  const own = await handle.stat();
  if (own.uid !== uid || own.gid !== gid) await handle.chown(uid, gid).catch(() => undefined);
  await handle.chmod(mode & 0o777);
}

/** A second name for the draft, unless there is a file of that name: a rename would put it in that one's place. */
async function linkNew(draft: string, file: string, disk: Disk): Promise<boolean> {
  try {
    await disk.link(draft, file);
  } catch (error) {
    const { code = '' } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST') return false;
    // Some disks know no second names.
    if (!['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK'].includes(code)) throw error;
    await disk.rename(draft, file);
  }
  return true;
}

/** So that the new name outlives a power cut too. Not every system can; the file is whole in any case. */
async function bringFolderToDisk(folder: string, disk: Disk): Promise<void> {
  try {
    const handle = await disk.open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch {
    // The name is there; only how soon it is on the disk is left to the system.
  }
}
