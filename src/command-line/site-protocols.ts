import { basename, dirname, join, relative, sep } from 'node:path';
import { toPlain } from '../document/document.ts';
import { yamlToDocument } from '../document/yaml-to-document.ts';
import { recordFolder } from './record-files.ts';
import type { SiteEdition, SiteRecord } from '../editions/site-record.ts';
import { editionsOf } from './site-editions.ts';
import type { SiteInForce } from './site-in-force.ts';
import type { Terminal } from './terminal.ts';
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
  /** Of a ward policy with a record: what is in force, which a patient is read with in place of the text. */
  readonly in_force?: SiteInForce;
  /** Its sealed editions, the oldest first; absent when there is none. */
  readonly editions?: readonly SiteEdition[];
  /** What its record says of this moment, and every entry; absent when it has none. */
  readonly record?: SiteRecord;
}

/** All that the rooms are told of a folder. */
export interface SiteBody {
  /** Whether what is written in the rooms can be saved here. */
  readonly saves: boolean;
  readonly protocols: readonly SiteProtocol[];
  /** Every ladder that a new protocol could call on: those below the folder, and those that its protocols call on. */
  readonly ladders: readonly SiteText[];
}

/** What `protocols.json` holds of a folder; with what is in force there now, where a terminal says when that is. */
export async function siteBelow(
  folder: string,
  saves: boolean,
  terminal: Terminal | null = null,
): Promise<SiteBody> {
  const all = await filesBelow(folder);
  const inside = all
    .filter((path) => basename(path) === fileNames.ladder)
    .map(async (path) => ({ file: `${idOf(path, folder)}/${fileNames.ladder}`, ...(await textOf(path)) }));
  const [drafts, below] = await Promise.all([protocolsIn(all, folder), Promise.all(inside)]);
  const found =
    terminal === null ? drafts : await withInForce(drafts, all, { folder, terminal, isLive: saves });
  const called = found.flatMap(({ ladder }) => (ladder ? [ladder] : []));
  const texts = new Set<string>();
  const ladders = [...below, ...called].filter(({ text }) => !texts.has(text) && texts.add(text));
  return { saves, protocols: found, ladders };
}

/**
 * Every ward policy and every protocol below a folder: those at the top before those in deeper folders, ward policies before
 * protocols, then in the order of the alphabet.
 */
export async function protocolsBelow(folder: string): Promise<readonly SiteProtocol[]> {
  return protocolsIn(await filesBelow(folder), folder);
}

async function protocolsIn(all: readonly string[], folder: string): Promise<readonly SiteProtocol[]> {
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

/** The same with the record of each that has one, and of a ward policy with what is in force. */
async function withInForce(
  drafts: readonly SiteProtocol[],
  all: readonly string[],
  { folder, terminal, isLive }: { folder: string; terminal: Terminal; isLive: boolean },
): Promise<readonly SiteProtocol[]> {
  const { siteInForce } = await import('./site-in-force.ts');
  const { siteRecord } = await import('./site-record.ts');
  const recorded = new Map(
    all
      .filter((path) => basename(dirname(path)) === recordFolder)
      .map((path) => [idOf(dirname(path), folder), dirname(dirname(path))]),
  );
  return Promise.all(
    drafts.map(async (draft) => {
      const place = recorded.get(draft.id);
      if (place === undefined) return draft;
      const { id, kind, editions = [] } = draft;
      const inForce = kind === 'ward' ? { in_force: await siteInForce(place, id, terminal, isLive) } : {};
      const numbers = editions.map(({ edition }) => edition);
      return { ...draft, ...inForce, record: await siteRecord(place, numbers, terminal) };
    }),
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

/** The folder of a file below the one that is served, with `/` between; of a file right in that one, the folder's own name. */
const idOf = (path: string, folder: string): string =>
  relative(folder, dirname(path)).split(sep).join('/') || basename(dirname(path));

const textOf = async (path: string): Promise<{ text: string }> => ({ text: (await readText(path)).text });

async function siteProtocol(
  kind: SiteProtocol['kind'],
  path: string,
  folder: string,
  all: readonly string[],
): Promise<SiteProtocol> {
  const { text } = await textOf(path);
  const id = idOf(path, folder);
  const { title, ladder } = headOf(text);
  const cases = join(dirname(path), fileNames.cases);
  const editions = await editionsOf(dirname(path), id, all);
  return {
    kind,
    id,
    title: typeof title === 'string' ? title : id,
    file: `${id}/${fileNames[kind]}`,
    text,
    ladder: await ladderOf(ladder, path),
    ...(editions.length > 0 ? { editions } : {}),
    cases: all.includes(cases) ? { file: `${id}/${fileNames.cases}`, ...(await textOf(cases)) } : null,
  };
}

/** The ladder that a protocol names; null when it names none, or one that is not there. */
async function ladderOf(name: unknown, path: string): Promise<SiteText | null> {
  if (typeof name !== 'string' || !/^[a-z][a-z0-9_]*$/.test(name)) return null;
  const found = await findLadder(name, path);
  return found === null ? null : { file: `${name}/${fileNames.ladder}`, ...(await textOf(found)) };
}
