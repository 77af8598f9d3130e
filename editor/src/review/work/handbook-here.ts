import {
  compareSides,
  handbookToHtml,
  inForceInWords,
  notKnownInForce,
  proveRequirements,
  readDocument,
  readEdition,
  readLessons,
  risksOfCases,
  risksOfEdition,
  risksOfProtocol,
  type AcceptedRisk,
  type Compared,
  type HandbookInput,
  type SaidInForce,
  type SealedState,
} from '../../../../src/index.ts';
import { nameOf } from '../../common/protocol-name.ts';
import type { SiteProtocol, SiteText } from '../../common/site-protocol.ts';
import type { Opening } from '../messages.ts';
import type { HandbookAsked } from '../papers/papers-here.ts';
import type { Side } from './open-side.ts';

/** The handbook of a side, made of the same parts as that of the command line. */
export function handbookHere(
  { reader, cases, sealed }: Side,
  opening: Opening,
  asked: HandbookAsked,
): string {
  const document = cases && readDocument(cases.file, cases.text).document;
  const input: HandbookInput = {
    reads: reader,
    teacher: readLessons(reader, cases),
    accepted: sealed ? risksOfEdition(sealed) : risksOfDraft(reader, opening),
    proofs: proveRequirements(reader),
    changes: changesSince(asked.last, reader, document),
    edition: sealed && sealedState(sealed, opening.protocol, asked.now),
  };
  return handbookToHtml(input);
}

/** What changes since the edition that was sealed before; null where there is none, or none that can be read. */
function changesSince(
  last: SiteText | null,
  reader: Compared,
  cases: Parameters<typeof compareSides>[2],
): HandbookInput['changes'] {
  const before = last && readEdition(last.file, last.text).reader;
  if (!before || 'members' in before !== 'members' in reader) return null;
  return compareSides(before, reader, cases);
}

function risksOfDraft(reader: Compared, { protocol, all }: Opening): AcceptedRisk[] {
  if (!('members' in reader)) return risksOfFiles(protocol);
  const ofMembers = reader.members.flatMap(({ protocol: { name, edition } }) => {
    const found = all.find((each) => each.kind === 'protocol' && nameOf(each) === name);
    const sealed = found?.sealed?.find((each) => each.edition === edition);
    const file = sealed && readEdition(sealed.file, sealed.text).file;
    return file ? risksOfEdition(file) : found ? risksOfFiles(found) : [];
  });
  return [...ofMembers, ...risksOfStories(protocol, reader.title)];
}

function risksOfFiles(protocol: SiteProtocol): AcceptedRisk[] {
  const { document } = readDocument(protocol.file, protocol.text);
  return [...(document ? risksOfProtocol(document) : []), ...risksOfStories(protocol, protocol.title)];
}

function risksOfStories({ cases }: SiteProtocol, title: string): AcceptedRisk[] {
  const document = cases && readDocument(cases.file, cases.text).document;
  return document ? risksOfCases(document, title) : [];
}

/** What the record says of a sealed edition now. */
function sealedState(file: SealedState['file'], { record }: SiteProtocol, now: string): SealedState {
  const approvals = record?.editions.find(({ edition }) => edition === file.edition);
  const isKnown = !record || record.holds;
  return {
    file,
    approvals: approvals && isKnown ? { counted: approvals.approved, lacking: approvals.lacking } : null,
    inForce: isKnown ? inForceInWords(file, saidIn(record, file), now) : notKnownInForce,
  };
}

function saidIn(record: SiteProtocol['record'], file: SealedState['file']): SaidInForce {
  if (record?.withdrawn) return { kind: 'withdrawn', ...record.withdrawn };
  const put = record?.in_force;
  if (!put) return { kind: 'none' };
  return { kind: 'put', ...put, isThis: put.edition === file.edition && put.digest === file.digest };
}
