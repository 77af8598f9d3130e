import { basename, dirname, relative, sep } from 'node:path';
import { toPlain } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { fileNames, filesBelow, findLadder, readText } from './files.ts';

/** A protocol as the rooms get it: its text, and that of its ladder. The rooms check both themselves. */
export interface SiteProtocol {
  /** Its folder below the one that is served, with `/` between: `lessons/a_curve`. */
  readonly id: string;
  readonly title: string;
  readonly file: string;
  readonly text: string;
  readonly ladder: { readonly file: string; readonly text: string } | null;
}

/** Every protocol below a folder, those at the top before those in deeper folders, then in the order of the alphabet. */
export async function protocolsBelow(folder: string): Promise<readonly SiteProtocol[]> {
  const paths = (await filesBelow(folder)).filter((path) => basename(path) === fileNames.protocol);
  const found = await Promise.all(paths.map((path) => siteProtocol(path, folder)));
  const depth = ({ id }: SiteProtocol): number => id.split('/').length;
  return found.sort((left, right) => depth(left) - depth(right) || (left.id < right.id ? -1 : 1));
}

interface Head {
  readonly title?: unknown;
  readonly ladder?: unknown;
}

/** What was found at the head of each text, so that a page that is loaded again does not wait for texts that have not changed. */
const heads = new Map<string, Head>();

function headOf(text: string): Head {
  const known = heads.get(text);
  if (known) return known;
  const { document } = yamlToDocument(fileNames.protocol, text);
  const { title, ladder } = (document ? toPlain(document.root) : {}) as Head;
  heads.set(text, { title, ladder });
  return { title, ladder };
}

async function siteProtocol(path: string, folder: string): Promise<SiteProtocol> {
  const { text } = await readText(path);
  const id = relative(folder, dirname(path)).split(sep).join('/') || basename(dirname(path));
  const plain = headOf(text);
  const name =
    typeof plain.ladder === 'string' && /^[a-z][a-z0-9_]*$/.test(plain.ladder) ? plain.ladder : null;
  const ladderPath = name === null ? null : await findLadder(name, path);
  return {
    id,
    title: typeof plain.title === 'string' ? plain.title : id,
    file: `${id}/${fileNames.protocol}`,
    text,
    ladder:
      ladderPath === null
        ? null
        : { file: `${name ?? ''}/${fileNames.ladder}`, text: (await readText(ladderPath)).text },
  };
}
