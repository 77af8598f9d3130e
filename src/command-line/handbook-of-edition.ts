import { yamlToDocument } from '../document/yaml-to-document.ts';
import { approvalsOf } from '../editions/approvals.ts';
import { inForceAt, type InForce } from '../editions/in-force-at.ts';
import type { Ledger } from '../editions/record.ts';
import { risksOfEdition } from '../handbook/accepted-risks.ts';
import { inForceInWords, notKnownInForce } from '../handbook/in-force-in-words.ts';
import type { SealedState } from '../handbook/input.ts';
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
    inForce: record ? inForceIn(file, record, terminal.now) : notKnownInForce,
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

function inForceIn(file: EditionFile, record: Ledger, now: string): string {
  const at = textToTime(now);
  const state: InForce = typeof at === 'number' ? inForceAt(record, at) : { kind: 'none' };
  if (state.kind === 'none') return inForceInWords(file, state, now);
  if (state.kind === 'withdrawn') return inForceInWords(file, { kind: 'withdrawn', ...state.withdrawn }, now);
  const { inForce } = state.put;
  const isThis = inForce.edition === file.edition && inForce.seal === file.seal;
  return inForceInWords(file, { kind: 'put', ...inForce, isThis }, now);
}
