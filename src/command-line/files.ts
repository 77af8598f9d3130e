import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';

/** The files that the kit reads, by their names. */
export const fileNames = {
  protocol: 'protocol.yaml',
  ladder: 'ladder.yaml',
  ward: 'ward.yaml',
  cases: 'cases.yaml',
  approvers: 'approvers.yaml',
} as const;
/** What a file is; a sealed edition and the record of a policy are known by the folder that they stand in. */
export type FileKind = keyof typeof fileNames | 'edition' | 'record';

/** A text with the name that problems cite it by. */
export interface Text {
  /** As the person at the terminal would write it. */
  readonly file: string;
  readonly path: string;
  readonly text: string;
}

/** Why a file could not be read, in words; the system's own code is kept. */
export class UnreadableFile extends Error {
  constructor(file: string, code: string) {
    const reasons: Record<string, string> = {
      ENOENT: 'there is no such file or folder',
      EACCES: 'it may not be read',
      EISDIR: 'it is a folder',
      ENOTDIR: 'what should be its folder is a file',
      ELOOP: 'it is a link that leads back to itself',
      ENOTDIR_ASKED: 'it is no folder, nor a file that protocols are kept in',
      ENOTFILE: 'it is neither a file nor a folder',
      EFBIG: 'it is larger than 1 MiB',
    };
    super(`${file === '' ? '""' : file}: ${reasons[code] ?? `it cannot be read (${code})`}.`);
  }
}

/** No file that the kit reads is larger; what is larger is refused before it is read. */
const largest = 1024 * 1024;

/** Reads one text. Bytes that are no UTF-8 become replacement characters, which are then refused at their place. */
export async function readText(path: string): Promise<Text> {
  const file = named(path);
  try {
    const found = await stat(path);
    if (found.isDirectory()) throw new UnreadableFile(file, 'EISDIR');
    // A pipe would be waited for without end, and a device read without end.
    if (!found.isFile()) throw new UnreadableFile(file, 'ENOTFILE');
    if (found.size > largest) throw new UnreadableFile(file, 'EFBIG');
    return { file, path, text: await readFile(path, 'utf8') };
  } catch (error) {
    throw unreadable(file, error);
  }
}

const unreadable = (file: string, error: unknown): UnreadableFile =>
  error instanceof UnreadableFile
    ? error
    : new UnreadableFile(file, (error as NodeJS.ErrnoException).code ?? 'unknown');

/** A path as the person at the terminal would write it: below the folder that she is in, or whole. */
function named(path: string): string {
  if (path === '') return path;
  const below = relative(process.cwd(), path);
  return below === '' ? '.' : below.startsWith('..') ? path : below;
}

/**
 * Every file that the kit reads at or below a path, in a fixed order. A file that is named itself is always among them. Nothing below a
 * hidden folder counts: a call that was killed may have left half of something there.
 */
export async function filesBelow(path: string): Promise<string[]> {
  const found = await statOrThrow(path);
  if (!found.isDirectory()) return [resolve(path)];
  const known: ReadonlySet<string> = new Set(Object.values(fileNames));
  const entries = await readdir(path, { recursive: true, withFileTypes: true }).catch((error: unknown) => {
    throw unreadable(named(path), error);
  });
  return entries
    .filter(
      (entry) =>
        entry.isFile() &&
        (known.has(entry.name) || isKept(entry)) &&
        !isPassedOver(relative(path, entry.parentPath)),
    )
    .map((entry) => resolve(entry.parentPath, entry.name))
    .sort();
}

/** Whether a file is a sealed edition, or an entry of a record: by its number, and the folder that it stands in. */
export function isKept({
  parentPath,
  name,
}: {
  readonly parentPath: string;
  readonly name: string;
}): boolean {
  const folder = basename(parentPath);
  return (
    (folder === 'editions' && /^[0-9]+\.yaml$/.test(name)) ||
    (folder === 'record' && /^[0-9]+\.json$/.test(name))
  );
}
/** Whether one of the folders on a way down is hidden, or holds other people's packages. */
const isPassedOver = (way: string): boolean =>
  way.split(sep).some((folder) => folder.startsWith('.') || folder === 'node_modules');

async function statOrThrow(path: string): ReturnType<typeof stat> {
  try {
    return await stat(path);
  } catch (error) {
    throw unreadable(named(path), error);
  }
}

/** Where a protocol or a ward policy stands: the file itself, its folder, or a name below protocols/. Null when there is none. */
export async function findProtocol(asked: string): Promise<string | null> {
  for (const place of [asked, join('protocols', asked)]) {
    const found = await stat(place).catch(() => null);
    if (found?.isFile()) return resolve(place);
    if (!found) continue;
    for (const name of [fileNames.protocol, fileNames.ward]) {
      const inside = resolve(place, name);
      if (await exists(inside)) return inside;
    }
  }
  return null;
}

/** The protocols that a ward could read with, by name: those in its own folder and in the folders beside it. */
export async function protocolsBeside(wardPath: string): Promise<ReadonlyMap<string, string>> {
  const around = dirname(dirname(wardPath));
  const places = (await filesBelow(around)).filter((path) => basename(path) === fileNames.protocol);
  return new Map(places.map((path) => [basename(dirname(path)), path]));
}

/** The file of a ladder: in the protocol's own folder, or in a folder of the ladder's name there or further up. */
export async function findLadder(name: string, protocolPath: string): Promise<string | null> {
  const own = join(dirname(protocolPath), fileNames.ladder);
  if (await exists(own)) return own;
  for (let folder = dirname(protocolPath); ; folder = dirname(folder)) {
    const place = join(folder, name, fileNames.ladder);
    if (await exists(place)) return place;
    if (dirname(folder) === folder || basename(folder) === 'protocols') return null;
  }
}

export const exists = async (path: string): Promise<boolean> =>
  Boolean((await stat(path).catch(() => null))?.isFile());
