import { realpath } from 'node:fs/promises';
import { join } from 'node:path';
import type { EntryText } from '../editions/texts-to-record.ts';
import { digestOfText } from '../protocol/digest.ts';
import { editionPath, loadEdition, type LoadedEdition } from './edition-files.ts';
import { UnreadableFile } from './files.ts';
import { entryPath, entryTexts } from './record-files.ts';
import { writeOnce } from './write-once.ts';

/**
 * What this reader has seen of one policy: copies of every entry and of every edition that was in force when it was read here. Kept
 * outside the repository, so that whoever changes the one does not change the other.
 */
export interface Seen {
  /** Null: nothing is kept. */
  readonly folder: string | null;
  readonly texts: readonly EntryText[];
}

/** What has been seen of the policy of a folder, by the place of the folder. */
export async function seenOf(folder: string, seenFolder: string | null): Promise<Seen> {
  if (seenFolder === null) return { folder: null, texts: [] };
  const place = await realpath(folder).catch(() => folder);
  const kept = join(seenFolder, digestOfText(place).slice('sha256:'.length, 'sha256:'.length + 32));
  return { folder: kept, texts: await entryTexts(kept) };
}

/** Keeps the entries of a record that holds. False: they could not be kept. */
export async function keepEntries(
  { folder, texts: before }: Seen,
  texts: readonly EntryText[],
): Promise<boolean> {
  if (folder === null) return true;
  try {
    for (const [index, { text }] of texts.entries())
      if (index >= before.length) await writeOnce(entryPath(folder, index + 1), text, 0o600);
    return true;
  } catch {
    return false;
  }
}

/** Keeps an edition that was found as it was sealed. */
export async function keepEdition({ folder }: Seen, edition: number, text: string): Promise<boolean> {
  if (folder === null) return true;
  return writeOnce(editionPath(folder, edition), text, 0o600).then(
    () => true,
    () => false,
  );
}

/** The copy of an edition; null when there is none. */
export async function keptEdition(
  { folder }: Seen,
  name: string,
  edition: number,
): Promise<LoadedEdition | null> {
  if (folder === null) return null;
  try {
    return await loadEdition(editionPath(folder, edition), { name, edition });
  } catch (error) {
    if (error instanceof UnreadableFile) return null;
    throw error;
  }
}
