import { readdir } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import type { Ledger } from '../editions/record.ts';
import { textsToRecord, type EntryText } from '../editions/texts-to-record.ts';
import type { Problem } from '../problems/problem.ts';
import { readText } from './files.ts';

/** The folder in which the entries of a policy's record stand, below its own. */
export const recordFolder = 'record';

export const entryPath = (folder: string, entry: number): string =>
  join(folder, recordFolder, `${entry}.json`);

/** The name that a record goes by: that of the folder of its policy. */
export const recordName = (folder: string): string => basename(resolve(folder));

/** Reads the record of a policy's folder; empty when it has none, null when it does not hold. */
export async function loadRecord(folder: string): Promise<{
  readonly record: Ledger | null;
  readonly texts: readonly EntryText[];
  readonly problems: readonly Problem[];
}> {
  const texts = await entryTexts(folder);
  return { texts, ...(await textsToRecord(recordName(folder), texts)) };
}

/** Every entry in the order of its number, whether or not some are lacking between them: that is then seen. */
export async function entryTexts(folder: string): Promise<EntryText[]> {
  const names = await readdir(join(folder, recordFolder)).catch(() => []);
  const numbers = names.flatMap((name) => {
    const [, number] = /^([1-9][0-9]{0,4})\.json$/.exec(name) ?? [];
    return number === undefined ? [] : [Number(number)];
  });
  return Promise.all(
    numbers.sort((left, right) => left - right).map(async (number) => readText(entryPath(folder, number))),
  );
}
