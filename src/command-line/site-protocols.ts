import { basename, dirname, join, relative, sep } from 'node:path';
import { toPlain } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { fileNames, filesBelow, findLadder, readText } from './files.ts';

/** A text that the rooms get, under the name that its problems cite. */
export interface SiteText {
  readonly file: string;
  readonly text: string;
}

/**
 * A protocol, or a ward policy, as the rooms get it: its text, that of its ladder, and that of its cases. The rooms check them all
 * themselves.
 */
export interface SiteProtocol {
  readonly kind: 'protocol' | 'ward';
  /** Its folder below the one that is served, with `/` between: `lessons/a_curve`. */
  readonly id: string;
  readonly title: string;
  readonly file: string;
  readonly text: string;
  readonly ladder: SiteText | null;
  /** The cases.yaml beside it; null when there is none. */
  readonly cases: SiteText | null;
}

/**
 * Every ward policy and every protocol below a folder: those at the top before those in deeper folders, ward policies before
 * protocols, then in the order of the alphabet.
 */
export async function protocolsBelow(folder: string): Promise<readonly SiteProtocol[]> {
  const all = await filesBelow(folder);
  const found = await Promise.all(
    (['ward', 'protocol'] as const).flatMap((kind) =>
      all
        .filter((path) => basename(path) === fileNames[kind])
        .map((path) => siteProtocol(kind, path, folder, all)),
    ),
  );
  const depth = ({ id }: SiteProtocol): number => id.split('/').length;
  return found.sort(
    (left, right) =>
      depth(left) - depth(right) ||
      (left.kind === right.kind ? 0 : left.kind === 'ward' ? -1 : 1) ||
      (left.id < right.id ? -1 : 1),
  );
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
  const { document } = yamlToDocument('a protocol', text);
  const { title, ladder } = (document ? toPlain(document.root) : {}) as Head;
  heads.set(text, { title, ladder });
  return { title, ladder };
}

async function siteProtocol(
  kind: SiteProtocol['kind'],
  path: string,
  folder: string,
  all: readonly string[],
): Promise<SiteProtocol> {
  const { text } = await readText(path);
  const id = relative(folder, dirname(path)).split(sep).join('/') || basename(dirname(path));
  const plain = headOf(text);
  const name =
    typeof plain.ladder === 'string' && /^[a-z][a-z0-9_]*$/.test(plain.ladder) ? plain.ladder : null;
  const cases = join(dirname(path), fileNames.cases);
  const ladderPath = name === null ? null : await findLadder(name, path);
  return {
    kind,
    id,
    title: typeof plain.title === 'string' ? plain.title : id,
    file: `${id}/${fileNames[kind]}`,
    text,
    ladder:
      ladderPath === null
        ? null
        : { file: `${name ?? ''}/${fileNames.ladder}`, text: (await readText(ladderPath)).text },
    cases: all.includes(cases)
      ? { file: `${id}/${fileNames.cases}`, text: (await readText(cases)).text }
      : null,
  };
}
