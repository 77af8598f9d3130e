import { yamlToDocument } from '../document/yaml-to-document.ts';
import { approvalsOf } from '../editions/approvals.ts';
import { inForceAt, type InForce } from '../editions/in-force-at.ts';
import type { Ledger } from '../editions/record.ts';
import { risksOfCases, risksOfProtocol } from '../handbook/accepted-risks.ts';
import type { AcceptedRisk, SealedState } from '../handbook/input.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import { proveRequirements } from '../review/requirements/prove.ts';
import { textToTime } from '../series/text-to-time.ts';
import { teacherOf } from '../teach/teacher.ts';
import type { EditionFile } from '../shape/generated/types.ts';
import { editionOf } from './decision.ts';
import { changesSinceLast } from './handbook-changes.ts';
import type { FoundInput } from './handbook-input.ts';
import { openRecord } from './open-record.ts';
import { sayProblems } from './say.ts';
import { exit, type Terminal } from './terminal.ts';

/** The handbook of a sealed edition, with what its record says of it now; null, and said, when it cannot be read. */
export async function handbookOfEdition(asked: string, terminal: Terminal): Promise<FoundInput | null> {
  const found = await editionOf(asked, terminal);
  if (!found) return null;
  const { file, asked: reads } = found.edition;
  // A handbook looks, and leaves nothing behind.
  const { record, problems } = await openRecord(found.folder, terminal, { keep: false });
  sayProblems(problems, terminal);
  const edition: SealedState = {
    file,
    approvals: record && approvalsOf(record, file),
    inForce: record
      ? inForceInWords(file, record, terminal.now)
      : 'Its record does not hold: whether it is in force is not known. Use the paper policy.',
  };
  const cases = yamlToDocument(`${file.name}, edition ${file.edition}, cases`, file.cases).document;
  const changes = await changesSinceLast(found.folder, reads, cases);
  const input = {
    reads,
    teacher: teacherOf(reads, cases),
    accepted: risksOfEdition(file),
    proofs: proveRequirements(reads),
    edition,
    changes,
  };
  return { input, exit: record ? exit.well : exit.doesNotHold };
}

/** What the texts of an edition accept. */
export function risksOfEdition({ texts, cases, title }: EditionFile): AcceptedRisk[] {
  const documents = Object.entries(texts).map(([name, text]) => yamlToDocument(name, text).document);
  const ofCases = yamlToDocument('cases', cases).document;
  return [
    ...documents.flatMap((document) => (document ? risksOfProtocol(document) : [])),
    ...(ofCases ? risksOfCases(ofCases, title) : []),
  ];
}

function inForceInWords(file: EditionFile, record: Ledger, now: string): string {
  if (file.sealed === 'protocol')
    return 'A protocol is in force only through a ward policy that reads with it.';
  const at = textToTime(now);
  const state: InForce = typeof at === 'number' ? inForceAt(record, at) : { kind: 'none' };
  const asOf = `as of ${timeInWords(now)}`;
  if (state.kind === 'none') return `Nothing is in force for this ward, ${asOf}: use the paper policy.`;
  if (state.kind === 'withdrawn')
    return `WITHDRAWN, ${asOf}: ${state.withdrawn.because} Instead: ${state.withdrawn.instead}`;
  const { inForce } = state.put;
  if (inForce.edition !== file.edition || inForce.seal !== file.seal)
    return `NOT in force, ${asOf}: edition ${inForce.edition} is.`;
  return `In force since ${timeInWords(inForce.from)}, ${asOf}; put in force by ${inForce.by}: ${inForce.because}`;
}
