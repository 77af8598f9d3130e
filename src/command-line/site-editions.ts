import { basename, dirname, relative, sep } from 'node:path';
import type { SiteEdition } from '../editions/site-record.ts';
import { isIn, placeOfEdition } from './edition-files.ts';
import { filesBelow, readText, UnreadableFile } from './files.ts';
import { siteFiles } from './site-files.ts';

/** The sealed editions of one protocol or ward policy, the oldest first, out of all files that are there. */
export async function editionsOf(
  folder: string,
  id: string,
  all: readonly string[],
): Promise<readonly SiteEdition[]> {
  const found = all.flatMap((path) => {
    const number = placeOfEdition(path)?.edition;
    return number !== undefined && isIn(path, folder) ? [{ path, number }] : [];
  });
  const editions = await Promise.all(found.map(async ({ path, number }) => siteEdition(path, id, number)));
  return editions.flatMap((each) => each ?? []).toSorted((left, right) => left.edition - right.edition);
}

async function siteEdition(path: string, id: string, edition: number): Promise<SiteEdition | null> {
  const text = await textIfThere(path);
  if (text === null) return null;
  const head = text.slice(0, text.search(/^(?:reads_with|dictionary):/m) + 1 || undefined);
  const line = (key: string): string => new RegExp(`^${key}: (.*)$`, 'm').exec(head)?.[1] ?? '';
  const [, authors = ''] = /^authors:\n((?: {2}- .*\n)+)/m.exec(head) ?? [];
  return {
    edition,
    digest: line('digest'),
    logic_digest: line('logic_digest'),
    sealed_on: line('sealed_on'),
    authors: authors.split('\n').flatMap((each) => (each === '' ? [] : [plain(each.slice(4))])),
    file: `${id}/editions/${edition}.yaml`,
    address: addressOf(id, edition),
  };
}

/** A name that YAML had to put in quotation marks, without them. */
function plain(name: string): string {
  if (!/^".*"$/.test(name)) return name;
  try {
    return String(JSON.parse(name));
  } catch {
    return name;
  }
}

/** Null: it is gone again, or may not be read; the record says so where it matters. */
async function textIfThere(path: string): Promise<string | null> {
  try {
    return (await readText(path)).text;
  } catch (error) {
    if (error instanceof UnreadableFile) return null;
    throw error;
  }
}

const addressOf = (id: string, edition: number): string => `${siteFiles.editions}/${id}/${edition}.yaml`;

/**
 * The text of a sealed edition by its address, `editions/alder_wing/1.yaml`; null when there is none. Only what a look through the folder
 * comes upon is given: no path is made of an address, and no link is followed.
 */
export async function editionAt(served: string, address: string): Promise<string | null> {
  for (const path of await filesBelow(served)) {
    const place = placeOfEdition(path);
    if (!place) continue;
    const folder = dirname(dirname(path));
    const id = relative(served, folder).split(sep).join('/') || basename(folder);
    if (addressOf(id, place.edition) === address) return textIfThere(path);
  }
  return null;
}
