import { basename, dirname, join } from 'node:path';
import { textToEdition, type Edition, type EditionPlace } from '../editions/text-to-edition.ts';
import type { Problem } from '../problems/problem.ts';
import { findProtocol, readText } from './files.ts';

/** The folder in which the sealed editions of a protocol or ward policy stand, below its own. */
const editionsFolder = 'editions';

export const editionPath = (folder: string, edition: number): string =>
  join(folder, editionsFolder, `${edition}.yaml`);

/** Where a sealed edition stands by its path; null when it is not among the editions of something. */
export function placeOfEdition(path: string): EditionPlace | null {
  const [, number] = /^([1-9][0-9]{0,3})\.yaml$/.exec(basename(path)) ?? [];
  const folder = dirname(path);
  if (number === undefined || basename(folder) !== editionsFolder) return null;
  return { name: basename(dirname(folder)), edition: Number(number) };
}

/** Whether the edition of a path is one of the protocol or ward policy in a folder. */
export const isIn = (path: string, folder: string): boolean => dirname(dirname(path)) === folder;

/** A sealed edition as it was found on disk. */
export interface LoadedEdition {
  readonly file: string;
  readonly path: string;
  readonly text: string;
  readonly edition: Edition | null;
  readonly problems: readonly Problem[];
}

/** What was found in each text, so that one call does not look at it twice. */
const found = new Map<string, ReturnType<typeof textToEdition>>();

/** Reads the sealed edition of a file. It throws `UnreadableFile` when there is none. */
export async function loadEdition(
  path: string,
  place: EditionPlace | null = placeOfEdition(path),
): Promise<LoadedEdition> {
  const { file, text } = await readText(path);
  const name = JSON.stringify([file, place, text]);
  const known = found.get(name) ?? textToEdition(file, text, place);
  found.set(name, known);
  return { file, path, text, ...known };
}

/** `one_threshold@2` as a name and a number; null when no number is named. */
export function numberedName(asked: string): { readonly name: string; readonly edition: number } | null {
  const [, name, number] = /^(.+)@([1-9][0-9]{0,3})$/.exec(asked) ?? [];
  return name === undefined ? null : { name, edition: Number(number) };
}

/** Where a sealed edition stands that is asked for as NAME@NUMBER; null when there is no such protocol or ward policy. */
export async function findEdition(asked: string): Promise<{ path: string; folder: string } | null> {
  const numbered = numberedName(asked);
  const path = numbered && (await findProtocol(numbered.name));
  if (!numbered || path === null) return null;
  const folder = dirname(path);
  return { path: editionPath(folder, numbered.edition), folder };
}
