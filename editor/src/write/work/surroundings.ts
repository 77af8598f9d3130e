import {
  askedEditions,
  readDocument,
  readLadder,
  readProtocol,
  vitalSigns,
  type Compiled,
  type Ladder,
  type Parents,
  type Problem,
  type Workbench,
} from '../../../../src/index.ts';
import { atEdition } from '../../common/open-reader.ts';
import { nameOf } from '../../common/protocol-name.ts';
import type { SiteProtocol, SiteText } from '../../common/site-protocol.ts';
import type { Question } from '../messages.ts';

/** A ladder, what is wrong with its own text, and all that a protocol on it is checked with. */
interface ReadLadder {
  readonly ladder: Ladder | null;
  readonly problems: readonly Problem[];
  /** The same object for the same ladder, so that it can be seen that nothing has changed. */
  readonly surroundings: CheckedWith;
}

type CheckedWith = Parameters<Workbench['check']>[1];

/** What the open protocol is read with. */
export interface Around {
  readonly protocol: SiteProtocol;
  readonly parents: Parents;
  /** The ladder that a text calls on by its name. */
  readonly ladderOf: (text: string) => ReadLadder;
  /** What a ward policy reads with, by name. */
  readonly members: (text: string) => ReadonlyMap<string, Compiled | null>;
}

/** All that is around a text while it is written; each part is read once. */
export function aroundOf({ protocol, all: every, ladders }: Extract<Question, { kind: 'open' }>): Around {
  const all = every.filter(({ kind }) => kind === 'protocol');
  const parents = new Map(all.map((each) => [nameOf(each), { file: each.file, text: each.text }]));
  const known = ladderReader(protocol.ladder ? [protocol.ladder, ...ladders] : ladders, parents);
  const ladderOf = (text: string): ReadLadder => known(namedIn('ladder', text));
  const read = new Map<string, Compiled | null>();
  const members = (text: string): ReadonlyMap<string, Compiled | null> => {
    const { ladder } = ladderOf(text);
    const { document } = readDocument(protocol.file, text);
    const asked = document ? askedEditions(document) : new Map<unknown, unknown>();
    const memberAt = (each: SiteProtocol): Compiled | null => {
      const edition = asked.get(nameOf(each));
      const key = `${nameOf(each)} ${String(edition)}`;
      const draft = (): Compiled | null => readProtocol(each.file, each.text, { ladder, parents }).protocol;
      if (!read.has(key)) read.set(key, atEdition(edition, each, draft));
      return read.get(key) ?? null;
    };
    return new Map(all.map((each) => [nameOf(each), asked.has(nameOf(each)) ? memberAt(each) : null]));
  };
  return { protocol, parents, ladderOf, members };
}

/** What stands behind a key at the top of a text, when it is a name. */
const namedIn = (key: string, text: string): string | null =>
  new RegExp(`^${key}:[ \\t]*["']?([a-z][a-z0-9_]*)`, 'm').exec(text)?.[1] ?? null;

/** Finds ladders by their names, and reads each at most once. */
function ladderReader(ladders: readonly SiteText[], parents: Parents): (name: string | null) => ReadLadder {
  const withLadder = (ladder: Ladder | null, problems: readonly Problem[]): ReadLadder => ({
    ladder,
    problems,
    surroundings: { ladder, dictionary: vitalSigns, today: null, parents },
  });
  const none = withLadder(null, []);
  const read = new Map<string, ReadLadder>();
  return (name) => {
    const found = ladders.find(({ text }) => name !== null && namedIn('ladder', text) === name);
    if (!found) return none;
    const before = read.get(found.text);
    if (before) return before;
    const { ladder, problems } = readLadder(found.file, found.text);
    const made = withLadder(ladder, problems);
    read.set(found.text, made);
    return made;
  };
}
