import {
  askedEditions,
  openWard,
  protocolReader,
  readDocument,
  readEdition,
  readLadder,
  readProtocol,
  type Compiled,
  type Form,
  type Ward,
} from '../../../src/index.ts';
import { nameOf } from './protocol-name.ts';
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

/** What is opened in two halves: its form at once, and what is read with once all of the check is done. */
export interface OpeningReader {
  /** Null with a problem that keeps it from being used. */
  readonly form: () => Form | null;
  readonly problems: readonly PageProblem[];
  readonly finish: () => OpenedReader;
}

/** Begins to open a protocol or a ward policy, with those of all that stand here which it needs. Nothing is read with before `finish`. */
export function beginReader(asked: SiteProtocol, every: readonly SiteProtocol[]): OpeningReader {
  const all = every.filter(({ kind }) => kind === 'protocol');
  return asked.kind === 'ward' ? beginWard(asked, all) : beginProtocol(asked, all);
}

/** Reads and checks all of it. */
export const openReader = (asked: SiteProtocol, every: readonly SiteProtocol[]): OpenedReader =>
  beginReader(asked, every).finish();

const parentsFrom = (all: readonly SiteProtocol[]): Map<string, { file: string; text: string }> =>
  new Map(all.map((each) => [nameOf(each), { file: each.file, text: each.text }]));

function beginProtocol(
  { file, text, ladder: given }: SiteProtocol,
  all: readonly SiteProtocol[],
): OpeningReader {
  const ladder = given ? readLadder(given.file, given.text) : { ladder: null, problems: [] };
  const { protocol, problems: found } = readProtocol(file, text, {
    ladder: ladder.ladder,
    parents: parentsFrom(all),
  });
  const problems = protocol ? [] : [...ladder.problems, ...found];
  return {
    form: () => protocol && protocolReader(protocol).form,
    problems,
    finish: () => ({ protocol, ward: null, problems }),
  };
}

/** A ward policy with those of the protocols here that it names, each at the edition that it states. */
function beginWard({ file, text, ladder: given }: SiteProtocol, all: readonly SiteProtocol[]): OpeningReader {
  const { ladder } = given ? readLadder(given.file, given.text) : { ladder: null };
  const { document } = readDocument(file, text);
  const asked = document ? askedEditions(document) : new Map<unknown, unknown>();
  const parents = parentsFrom(all);
  const protocols = new Map(
    all.map((each) => {
      const name = nameOf(each);
      const read = (): Compiled | null => readProtocol(each.file, each.text, { ladder, parents }).protocol;
      return [name, asked.has(name) ? atEdition(asked.get(name), each, read) : null];
    }),
  );
  const { form, problems, finish } = openWard(file, text, { ladder, protocols });
  return {
    form: () => form,
    problems,
    finish: () => {
      const { ward, problems: found } = finish();
      return { protocol: null, ward, problems: ward ? [] : found };
    },
  };
}

/**
 * The sealed edition that is asked for, where its text is here because the draft has moved on: a ward stays with what it agreed. Else the
 * draft, and the check of the policy says when that is another edition.
 */
export function atEdition(
  asked: unknown,
  { sealed = [] }: SiteProtocol,
  draft: () => Compiled | null,
): Compiled | null {
  const found = sealed.find(({ edition }) => edition === asked);
  if (!found) return draft();
  const { reader } = readEdition(found.file, found.text);
  return reader && !('members' in reader) ? reader : null;
}
