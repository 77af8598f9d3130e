import { readLadder, readProtocol, readWard, type Compiled, type Ward } from '../../../src/index.ts';
import type { SiteProtocol } from './site-protocol.ts';

/** A problem as a page is told of it. */
export interface PageProblem {
  readonly line: number;
  readonly says: string;
  readonly expected: string | null;
  readonly near_miss: string | null;
}

/** `Line 3: … Expected: ….` */
export function problemInWords({ line, says, expected, near_miss: near }: PageProblem): string {
  const more = [
    expected === null ? '' : ` Expected: ${expected}.`,
    near === null ? '' : ` Did you mean “${near}”?`,
  ];
  return `Line ${line}: ${says}${more.join('')}`;
}

/** What was opened; null with a problem that keeps it from being used. */
export interface OpenedReader {
  readonly protocol: Compiled | null;
  readonly ward: Ward | null;
  readonly problems: readonly PageProblem[];
}

const nameOf = ({ id }: SiteProtocol): string => id.split('/').at(-1) ?? id;

/** Reads and checks a protocol or a ward policy, with those of all that stand here which it needs. */
export function openReader(asked: SiteProtocol, every: readonly SiteProtocol[]): OpenedReader {
  const all = every.filter(({ kind }) => kind === 'protocol');
  return asked.kind === 'ward' ? openWard(asked, all) : openProtocol(asked, all);
}

const parentsFrom = (all: readonly SiteProtocol[]): Map<string, { file: string; text: string }> =>
  new Map(all.map((each) => [nameOf(each), { file: each.file, text: each.text }]));

function openProtocol(
  { file, text, ladder: given }: SiteProtocol,
  all: readonly SiteProtocol[],
): OpenedReader {
  const ladder = given ? readLadder(given.file, given.text) : { ladder: null, problems: [] };
  const { protocol, problems } = readProtocol(file, text, {
    ladder: ladder.ladder,
    parents: parentsFrom(all),
  });
  return { protocol, ward: null, problems: protocol ? [] : [...ladder.problems, ...problems] };
}

/** Opens a ward policy with those of the protocols here that it names. */
function openWard({ file, text, ladder: given }: SiteProtocol, all: readonly SiteProtocol[]): OpenedReader {
  const { ladder } = given ? readLadder(given.file, given.text) : { ladder: null };
  const parents = parentsFrom(all);
  const protocols = new Map(
    all.map((each) => {
      const name = nameOf(each);
      const isNamed = text.includes(name);
      return [name, isNamed ? readProtocol(each.file, each.text, { ladder, parents }).protocol : null];
    }),
  );
  const { ward, problems } = readWard(file, text, { ladder, protocols });
  return { protocol: null, ward, problems: ward ? [] : problems };
}
