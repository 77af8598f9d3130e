import {
  readLadder,
  readProtocol,
  readWard,
  type Compiled,
  type Ladder,
  type Parents,
  type Problem,
  type Ward,
} from '../../../../src/index.ts';
import type { SiteProtocol } from '../../common/site-protocol.ts';

/** What the open protocol is read with: it does not change while one writes. */
export interface Around {
  readonly protocol: SiteProtocol;
  readonly ladder: Ladder | null;
  /** Problems of the ladder itself. */
  readonly problems: readonly Problem[];
  readonly parents: Parents;
  /** What a ward policy reads with, by name. */
  readonly members: ReadonlyMap<string, Compiled | null>;
}

const nameOf = ({ id }: SiteProtocol): string => id.split('/').at(-1) ?? id;

export function aroundOf(protocol: SiteProtocol, every: readonly SiteProtocol[]): Around {
  const all = every.filter(({ kind }) => kind === 'protocol');
  const { ladder, problems } = protocol.ladder
    ? readLadder(protocol.ladder.file, protocol.ladder.text)
    : { ladder: null, problems: [] };
  const parents = new Map(all.map((each) => [nameOf(each), { file: each.file, text: each.text }]));
  const members = new Map(
    (protocol.kind === 'ward' ? all : []).map((each) => {
      const isNamed = protocol.text.includes(nameOf(each));
      const read = isNamed ? readProtocol(each.file, each.text, { ladder, parents }).protocol : null;
      return [nameOf(each), read];
    }),
  );
  return { protocol, ladder, problems, parents, members };
}

/** The ward policy that is open; null when it has errors. */
export function wardOf(
  { protocol, ladder, members }: Around,
  text: string,
): { readonly ward: Ward | null; readonly problems: readonly Problem[] } {
  return readWard(protocol.file, text, { ladder, protocols: members });
}
