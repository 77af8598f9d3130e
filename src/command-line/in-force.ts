import { relative } from 'node:path';
import { approvalsOf, reportPut } from '../editions/approvals.ts';
import { isWard } from '../editions/cases-to-answers.ts';
import { inForceAt, type PutInForce } from '../editions/in-force-at.ts';
import type { Ledger } from '../editions/record.ts';
import { saidOfPolicy } from '../editions/said-of-policy.ts';
import { textsToRecord } from '../editions/texts-to-record.ts';
import { reporter, type Finding, type Problem } from '../problems/problem.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { jsonToDocument } from '../document/json-to-document.ts';
import { entryText } from '../editions/entry.ts';
import type { EditionFile, WardPolicyInForce } from '../shape/generated/types.ts';
import type { Ward } from '../ward/ward.ts';
import { editionPath, loadEdition, type LoadedEdition } from './edition-files.ts';
import { UnreadableFile } from './files.ts';
import { openRecord } from './open-record.ts';
import { entryPath, recordName } from './record-files.ts';
import { keepEdition, keptEdition, type Seen } from './seen.ts';
import type { Terminal } from './terminal.ts';

/** What is read with at a bedside: a policy, with what must be said of it; or why there is none. */
export type Reading =
  | {
      readonly kind: 'policy';
      readonly ward: Ward;
      readonly file: EditionFile;
      readonly text: string;
      readonly said: WardPolicyInForce;
    }
  | {
      readonly kind: 'none';
      /** What applies instead, where somebody has said so. */
      readonly instead: string | null;
      readonly because: string | null;
    };

/** A reading, and what failed on the way to it. */
export interface FoundReading {
  readonly reading: Reading;
  readonly problems: readonly Problem[];
}

/** A moment, in milliseconds since 1970, and its day. */
export interface Moment {
  readonly at: number;
  readonly day: string;
}

/**
 * What is in force for a policy at a time. What fails is told; the answer is then from the last state that this reader has verified, never from
 * one that it has not.
 */
export async function readInForce(folder: string, moment: Moment, terminal: Terminal): Promise<FoundReading> {
  const { record, problems, seen } = await openRecord(folder, terminal);
  if (record) return fromRecord(record, { folder, seen, moment, warning: null });
  const { record: kept } = await textsToRecord(recordName(folder), seen.texts);
  if (!kept || kept.entries.length === 0) return { reading: nothing, problems };
  const warning = `The record of this policy does not hold: ${problems[0]?.says ?? ''} What is read with is what was checked here last; it may have been changed or withdrawn since. Tell whoever keeps the policy.`;
  const found = await fromRecord(kept, { folder, seen, moment, warning });
  return { ...found, problems: [...problems, ...found.problems] };
}

const nothing: Reading = { kind: 'none', instead: null, because: null };

interface Where {
  readonly folder: string;
  readonly seen: Seen;
  readonly moment: Moment;
  readonly warning: string | null;
}

async function fromRecord(record: Ledger, where: Where): Promise<FoundReading> {
  const state = inForceAt(record, where.moment.at);
  if (state.kind !== 'in_force') {
    const { instead = null, because = null } = state.kind === 'withdrawn' ? state.withdrawn : {};
    return { reading: { kind: 'none', instead, because }, problems: [] };
  }
  const problems: Problem[] = [];
  let { warning } = where;
  for (const put of [state.put, ...state.earlier]) {
    const found = await editionFor(record, put, where);
    problems.push(...found.problems);
    const { loaded } = found;
    if (loaded) {
      if (found.isCopy) warning ??= damaged(put);
      return { reading: readingWith(loaded, put, where.moment, warning), problems };
    }
    warning ??= `Edition ${put.inForce.edition} is in force, but it cannot be relied on: ${found.problems[0]?.says ?? ''} What is read with is the edition that was in force before it. Tell whoever keeps the policy.`;
  }
  return { reading: nothing, problems };
}

const damaged = ({ inForce }: PutInForce): string =>
  `The file of edition ${inForce.edition} is damaged or gone. What is read with is the copy that was checked here before; it says the same. Tell whoever keeps the policy.`;

interface Sound extends LoadedEdition {
  readonly edition: NonNullable<LoadedEdition['edition']> & { readonly asked: Ward };
}

/** The edition of an entry, as it was sealed and approved: from its place, else from the copy that was checked before. */
async function editionFor(
  record: Ledger,
  put: PutInForce,
  { folder, seen }: Where,
): Promise<{ loaded: Sound | null; isCopy: boolean; problems: readonly Problem[] }> {
  const { edition: number } = put.inForce;
  const there = await editionAt(folder, number);
  const sound = there && asPut(record, put, there);
  if (sound) {
    await keepEdition(seen, number, sound.text);
    return { loaded: sound, isCopy: false, problems: [] };
  }
  const kept = await keptEdition(seen, record.name, number);
  const copy = kept && asPut(record, put, kept);
  const problems = [...(there?.problems ?? []), ...notRelied(record, put, folder, there)];
  return { loaded: copy, isCopy: true, problems };
}

/** Why the edition of an entry cannot be relied on, at the entry; empty when it can. */
function notRelied(
  record: Ledger,
  put: PutInForce,
  folder: string,
  there: LoadedEdition | null,
): readonly Problem[] {
  const file = relative(process.cwd(), entryPath(folder, put.entry.entry));
  const { document } = jsonToDocument(file, entryText(put.entry));
  const findings: Finding[] = [];
  reportPut(record, put, there?.edition?.file ?? null, reporter(findings));
  return document ? findingsToProblems(document, findings) : [];
}

/** What is wrong with the edition that an entry puts in force, in its place. */
export async function problemsOfPut(
  record: Ledger,
  put: PutInForce,
  folder: string,
): Promise<readonly Problem[]> {
  const there = await editionAt(folder, put.inForce.edition);
  return there && asPut(record, put, there) ? [] : notRelied(record, put, folder, there);
}

/** The edition, when it is the one of the entry, is a ward policy, and had all approvals when it was put in force. */
function asPut(record: Ledger, { entry, inForce }: PutInForce, loaded: LoadedEdition): Sound | null {
  const { edition } = loaded;
  if (!edition || !isWard(edition.asked)) return null;
  const { file, asked } = edition;
  const approvals = approvalsOf(record, file, entry.entry - 1);
  const isIt =
    file.seal === inForce.seal && file.digest === inForce.digest && approvals?.lacking.length === 0;
  return isIt ? { ...loaded, edition: { file, asked } } : null;
}

async function editionAt(folder: string, number: number): Promise<LoadedEdition | null> {
  try {
    return await loadEdition(editionPath(folder, number));
  } catch (error) {
    if (error instanceof UnreadableFile) return null;
    throw error;
  }
}

function readingWith(
  { edition, text }: Sound,
  put: PutInForce,
  { day }: Moment,
  warning: string | null,
): Reading {
  const { file, asked } = edition;
  const said = saidOfPolicy(put.inForce, file.review_by ?? null, day, warning);
  return { kind: 'policy', ward: asked, file, text, said };
}
