import { readdir } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { entryText, makersOf, withDigest, type Body } from '../editions/entry.ts';
import { headOf, listAfter, type Ledger } from '../editions/record.ts';
import { signatureOf, type PrivateKey } from '../editions/signatures.ts';
import { textsToRecord, type EntryText } from '../editions/texts-to-record.ts';
import type { Problem } from '../problems/problem.ts';
import { isYes } from '../vocabulary/read-choices.ts';
import { readText } from './files.ts';
import { writeOnce } from './write-once.ts';

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

/** What came of an entry: entered; not, because it does not hold; not, because somebody else was first. */
export type Entered =
  | { readonly kind: 'entered'; readonly record: Ledger }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'too_late' };

/** Makes the next entry of a record, looks whether it holds, and writes it. */
export async function enter(
  folder: string,
  record: Ledger,
  texts: readonly EntryText[],
  { body, at, keys }: { readonly body: Body; readonly at: string; readonly keys: readonly PrivateKey[] },
): Promise<Entered> {
  const draft = {
    record: record.name,
    entry: record.entries.length + 1,
    before: headOf(record),
    at,
    ...body,
  };
  const list = listAfter(record)?.list ?? ('approvers' in body ? body.approvers : null);
  const signatures =
    list && isYes(list.signing)
      ? await Promise.all(
          makersOf(draft).flatMap((by) => {
            const x = list.people.find(({ name }) => name === by)?.key;
            const key = keys.find((each) => each.x === x);
            return key ? [signatureOf(draft, by, key)] : [];
          }),
        )
      : [];
  const entry = withDigest({ ...draft, ...(signatures.length > 0 ? { signatures } : {}) });
  const path = entryPath(folder, entry.entry);
  const next = { file: path, text: entryText(entry) };
  const after = await textsToRecord(record.name, [...texts, next]);
  if (!after.record) return { kind: 'refused', problems: after.problems };
  return (await writeOnce(path, next.text))
    ? { kind: 'entered', record: after.record }
    : { kind: 'too_late' };
}
