import { readEdition, requirementsOf, type Compared } from '../../../../src/index.ts';
import { openReader, problemInWords, type PageProblem } from '../../common/open-reader.ts';
import type { SiteText } from '../../common/site-protocol.ts';
import type { Opening, SideAsked, SideHere } from '../messages.ts';

/** A side that is open in a worker. */
export interface Side {
  readonly reader: Compared;
  /** The text of its cases; null when it has none. */
  readonly cases: SiteText | null;
  /** All that was sealed; null for a draft. */
  readonly sealed: ReturnType<typeof readEdition>['file'];
}

/** A side, or what is wrong with it. */
export type OpenedSide = { readonly side: Side } | { readonly problems: readonly PageProblem[] };

/** Opens a side, and checks all of it: a sealed edition anew from its seal on, a draft as any other file. */
export function openSide(asked: SideAsked, { protocol, all }: Opening): OpenedSide {
  if (asked.kind === 'draft') {
    const { protocol: compiled, ward, problems } = openReader(protocol, all);
    const reader = compiled ?? ward;
    return reader ? { side: { reader, cases: protocol.cases, sealed: null } } : { problems };
  }
  const { file, text } = asked.text;
  const { reader, file: sealed, problems } = readEdition(file, text);
  if (!reader || !sealed) return { problems };
  return { side: { reader, sealed, cases: { file: `${file} (cases)`, text: sealed.cases } } };
}

/** The same as the page is told of it. */
export function sideHere(opened: OpenedSide): SideHere {
  if ('problems' in opened) return { kind: 'problems', problems: opened.problems.map(problemInWords) };
  const { reader, sealed } = opened.side;
  const { name, title, edition, digest } = 'members' in reader ? reader : reader.protocol;
  const requirements = requirementsOf(reader);
  return { kind: 'open', name, title, edition, digest, isSealed: sealed !== null, requirements };
}
