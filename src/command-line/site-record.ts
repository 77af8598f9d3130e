import { approvalsOf } from '../editions/approvals.ts';
import { isWard } from '../editions/cases-to-answers.ts';
import { entryInWords, reasonsInWords, rolesInWords } from '../editions/entry-in-words.ts';
import { inForceAt } from '../editions/in-force-at.ts';
import { headOf, listAfter, type Ledger } from '../editions/record.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import { textToTime } from '../series/text-to-time.ts';
import type { InForceEntry, RecordEntry } from '../shape/generated/types.ts';
import { isYes } from '../vocabulary/read-choices.ts';
import { editionPath, loadEdition, type LoadedEdition } from './edition-files.ts';
import { UnreadableFile } from './files.ts';
import { openRecord } from './open-record.ts';
import type {
  SiteApprovals,
  SiteApprovers,
  SiteEntry,
  SitePut,
  SiteRecord,
  SiteWithdrawn,
} from '../editions/site-record.ts';
import type { Terminal } from './terminal.ts';

/** The record of a folder, in words, for a room in which is decided; `editions` are the numbers that are sealed there. */
export async function siteRecord(
  folder: string,
  editions: readonly number[],
  terminal: Terminal,
): Promise<SiteRecord> {
  const { record, problems } = await openRecord(folder, terminal);
  const told = problems.map(({ file, says, expected }) =>
    expected === null ? `${file}: ${says}` : `${file}: ${says} Expected: ${expected}.`,
  );
  if (!record) return { holds: false, problems: told, head: null, ...nothing };
  return {
    holds: true,
    problems: told,
    head: headOf(record),
    ...stateOf(record, terminal),
    approvers: approversOf(record),
    editions: await Promise.all(editions.map(async (each) => approvalsFor(record, folder, each))),
    entries: record.entries.map(entryOf),
  };
}

/** What is known of a record that does not hold. */
const nothing = {
  in_force: null,
  withdrawn: null,
  planned: [],
  ends: null,
  approvers: null,
  editions: [],
  entries: [],
} as const;

/** What is in force now, what will be, and what was withdrawn. */
function stateOf(
  record: Ledger,
  { now }: Terminal,
): Pick<SiteRecord, 'in_force' | 'withdrawn' | 'planned' | 'ends'> {
  const at = textToTime(now);
  const moment = typeof at === 'number' ? at : 0;
  const state = inForceAt(record, moment);
  const later = record.entries.filter(({ in_force: put }) => put && timeOf(put.from) > moment);
  return {
    in_force: state.kind === 'in_force' ? putOf(state.put.inForce) : null,
    withdrawn: state.kind === 'withdrawn' ? withdrawnOf(state.withdrawn) : null,
    planned: stillPlanned(record, later).map(putOf),
    ends: endOf(record, moment),
  };
}

/** A withdrawal takes back what was entered before it and had not begun by then. */
function stillPlanned({ entries }: Ledger, later: readonly RecordEntry[]): InForceEntry[] {
  return later.flatMap(({ entry, in_force: put }) => {
    const isTaken = entries.some(
      ({ withdrawn }, index) =>
        withdrawn && index + 1 > entry && put && timeOf(withdrawn.from) <= timeOf(put.from),
    );
    return put && !isTaken ? [put] : [];
  });
}

/** The first withdrawal that is still to come. */
function endOf({ entries }: Ledger, moment: number): SiteWithdrawn | null {
  const [first] = entries
    .flatMap(({ withdrawn }) => (withdrawn && timeOf(withdrawn.from) > moment ? [withdrawn] : []))
    .toSorted((left, right) => timeOf(left.from) - timeOf(right.from));
  return first ? withdrawnOf(first) : null;
}

function timeOf(text: string): number {
  const time = textToTime(text);
  return typeof time === 'number' ? time : Infinity;
}

const putOf = ({ edition, digest, from, by, because }: InForceEntry): SitePut => ({
  edition,
  digest,
  from,
  since: timeInWords(from),
  by,
  because,
});

const withdrawnOf = ({
  from,
  by,
  because,
  instead,
}: NonNullable<RecordEntry['withdrawn']>): SiteWithdrawn => ({
  from,
  since: timeInWords(from),
  by,
  because,
  instead,
});

function approversOf(record: Ledger): SiteApprovers | null {
  const list = listAfter(record)?.list;
  if (!list) return null;
  const { signing, needs, people } = list;
  return {
    signing: isYes(signing),
    needs,
    people: people.map(({ name, roles, key }) => ({ name, roles, key: key ?? null })),
  };
}

const entryOf = (entry: RecordEntry): SiteEntry => ({
  entry: entry.entry,
  at: timeInWords(entry.at),
  says: entryInWords(entry),
  reasons: reasonsInWords(entry),
  signed_by: (entry.signatures ?? []).map(({ by }) => by),
});

/** How far a sealed edition is approved. One that is not as it was sealed can be neither approved nor put in force. */
async function approvalsFor(record: Ledger, folder: string, number: number): Promise<SiteApprovals> {
  const { edition, problems } = await loadOrNothing(editionPath(folder, number));
  if (!edition) {
    const why = problems[0]?.says ?? 'It cannot be read.';
    return { edition: number, kind: null, approved: [], lacking: [], is_approved: false, says: why };
  }
  const kind = isWard(edition.asked) ? 'ward' : 'protocol';
  const approvals = approvalsOf(record, edition.file);
  if (!approvals) {
    const says = 'Nobody was entered who may approve it when it was sealed: a new edition is needed.';
    return { edition: number, kind, approved: [], lacking: [], is_approved: false, says };
  }
  const { counted, lacking } = approvals;
  const approved = counted.map(({ by, role, minute, on }) => ({ by, role, minute, on }));
  const isApproved = lacking.length === 0;
  const says = isApproved
    ? 'It has all approvals that it needs.'
    : `Approvals still needed: ${rolesInWords(lacking)}.`;
  return { edition: number, kind, approved, lacking, is_approved: isApproved, says };
}

/** A file that is gone again is an edition that cannot be read. */
async function loadOrNothing(path: string): Promise<Pick<LoadedEdition, 'edition' | 'problems'>> {
  try {
    return await loadEdition(path);
  } catch (error) {
    if (error instanceof UnreadableFile) return { edition: null, problems: [] };
    throw error;
  }
}
