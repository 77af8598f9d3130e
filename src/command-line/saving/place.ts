import { lstat, realpath } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { fileNames } from '../files.ts';
import { refused, type Refused } from './refusals.ts';
import type { SaveRequest } from './save-request.ts';

/** Where something is to be saved. */
export interface Place {
  readonly file: string;
  /** Folders that are not there yet and have to be made, the outermost first. */
  readonly toMake: readonly string[];
}

type Kind = 'folder' | 'file' | 'link' | 'other' | 'nothing';

/**
 * The file that a request means, below the folder that is served. No link is followed, neither one that leads out of the folder nor one
 * that stays inside: what the rooms show is never reached through one.
 *
 * `{ id: 'lessons/a_curve', part: 'cases' }` is `<folder>/lessons/a_curve/cases.yaml`.
 */
export async function placeOf(
  served: string,
  { id, part }: Pick<SaveRequest, 'id' | 'part'>,
): Promise<Place | Refused> {
  const root = await realpath(served);
  const own = id === basename(resolve(served)) && (await holds(root));
  const inside = await walk(root, id.split('/'));
  if (own && 'folder' in inside && (await holds(inside.folder))) return refused('two_of_a_name');
  const found = own ? { folder: root, toMake: [] } : inside;
  if ('refused' in found) return found;
  const { folder, toMake } = found;
  const isWard = (await kindOf(join(folder, fileNames.ward))) !== 'nothing';
  if (part === 'protocol' && isWard) return refused('ward_cases_only');
  if (part === 'cases' && !(await holds(folder))) return refused('no_protocol_yet');
  return { file: join(folder, fileNames[part]), toMake };
}

/** From the served folder down, one name at a time. */
async function walk(
  root: string,
  names: readonly string[],
): Promise<{ folder: string; toMake: string[] } | Refused> {
  let folder = root;
  const toMake: string[] = [];
  for (const name of names) {
    folder = join(folder, name);
    const kind = toMake.length > 0 ? 'nothing' : await kindOf(folder);
    if (kind === 'nothing') toMake.push(folder);
    else if (kind === 'link') return refused('a_link');
    else if (kind !== 'folder') return refused('not_a_file');
  }
  return { folder, toMake };
}

/** Whether a folder holds a protocol or a ward policy. */
const holds = async (folder: string): Promise<boolean> =>
  (await kindOf(join(folder, fileNames.protocol))) !== 'nothing' ||
  (await kindOf(join(folder, fileNames.ward))) !== 'nothing';

/** What stands at a path, without following a link. */
export async function kindOf(path: string): Promise<Kind> {
  try {
    const found = await lstat(path);
    if (found.isSymbolicLink()) return 'link';
    return found.isDirectory() ? 'folder' : found.isFile() ? 'file' : 'other';
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return 'nothing';
    throw error;
  }
}

/** Whether the folder of a file is the very one that it was found in, and not by now a link to another one. */
export const isStillThere = async (file: string): Promise<boolean> =>
  (await realpath(dirname(file))) === dirname(file);
