import { getLocation } from 'jsonc-parser';
import { basename } from 'node:path';
import { draftAfter, makersOf } from '../../editions/entry.ts';
import { headOf, listAfter, type Ledger } from '../../editions/record.ts';
import type { Draft } from '../../editions/signatures.ts';
import type { Problem } from '../../problems/problem.ts';
import { textToTime } from '../../series/text-to-time.ts';
import { isYes } from '../../vocabulary/read-choices.ts';
import { editionPath, loadEdition } from '../edition-files.ts';
import { exists } from '../files.ts';
import { openRecord, type OpenRecord } from '../open-record.ts';
import { loadRecord } from '../record-files.ts';
import { keepEntries } from '../seen.ts';
import type { Terminal } from '../terminal.ts';
import { approvalMeant, approvalSays } from './approval.ts';
import type { DecideRequest } from './decide-request.ts';
import { enterDraft, recordWith } from './enter-draft.ts';
import { notMeant, type Meant } from './meant.ts';
import { puttingMeant, puttingSays } from './putting.ts';
import type { Refusal } from './refusals.ts';
import { withdrawalMeant, withdrawalSays } from './withdrawal.ts';

/** What came of a decision that a room sent. */
export type Decided =
  | { readonly kind: 'entered'; readonly says: string }
  /** All but the signature is well: this is to be signed, and sent again with its moment. Nothing is entered. */
  | { readonly kind: 'to_sign'; readonly draft: Draft }
  | { readonly kind: 'not_entered'; readonly says: string; readonly problems: readonly FieldProblem[] }
  | { readonly kind: 'refused'; readonly why: Refusal };

/** A problem beside the field that it is about; null: about the whole. */
export interface FieldProblem {
  readonly field: string | null;
  readonly says: string;
}

/** How long a signature may take, in milliseconds. */
const patience = 600_000;

const mustSay = { approve: approvalSays, put_in_force: puttingSays, withdraw: withdrawalSays } as const;

/** Enters what was decided in a room, by the same rules and the same steps as the calls of the command line. */
export async function decide(request: DecideRequest, folder: string, terminal: Terminal): Promise<Decided> {
  const lacking = Object.entries(mustSay[request.what]).filter(([key]) => request.said[key] === '');
  if (lacking.length > 0)
    return notEntered(lacking.map(([field, what]) => ({ field, says: `Still to be given: ${what}.` })));
  const opened = await openRecord(folder, terminal);
  const { record } = opened;
  if (!record) return notEntered(opened.problems.map(({ says }) => ({ field: null, says })));
  if (headOf(record) !== request.head) return { kind: 'refused', why: 'changed_since' };
  const at = request.signed?.at ?? terminal.now;
  if (request.signed && !isRecent(at, terminal.now)) return { kind: 'refused', why: 'signed_late' };
  const meant = await meantBy(request, record, folder, at);
  if (meant.kind === 'other') return { kind: 'refused', why: meant.why };
  if (meant.kind === 'refused')
    return notEntered([...toFields(meant.problems), ...general(meant.problems, meant.why)]);
  const draft = draftAfter(record, meant.body, at);
  return enter({ folder, opened, record, draft, request, said: meant.said });
}

const notEntered = (problems: readonly FieldProblem[]): Decided => ({
  kind: 'not_entered',
  says: 'Nothing was entered.',
  problems,
});

const general = (problems: readonly Problem[], why: string): FieldProblem[] =>
  problems.length > 0 ? [] : [{ field: null, says: why }];

function isRecent(at: string, now: string): boolean {
  const [then, moment] = [textToTime(at), textToTime(now)];
  return (
    typeof then === 'number' && typeof moment === 'number' && then <= moment && moment - then <= patience
  );
}

async function meantBy(
  request: DecideRequest,
  record: Ledger,
  folder: string,
  at: string,
): Promise<Meant | { readonly kind: 'other'; readonly why: Refusal }> {
  const { said } = request;
  const { by = '', because = '', instead = '', role = '', minute = '', on = '' } = said;
  const from = said['from'] === undefined || said['from'] === '' ? at : said['from'];
  if (request.what === 'withdraw') return withdrawalMeant(basename(folder), { by, because, instead, from });
  const path = editionPath(folder, request.edition);
  if (!(await exists(path))) return { kind: 'other', why: 'no_such_edition' };
  const { edition, problems } = await loadEdition(path);
  if (!edition) return notMeant(problems[0]?.says ?? 'The edition cannot be read.');
  if (edition.file.digest !== request.digest) return { kind: 'other', why: 'other_edition' };
  return request.what === 'approve'
    ? approvalMeant(record, edition.file, { by, role, minute, on })
    : puttingMeant(record, edition, { by, because, from });
}

interface Entering {
  readonly folder: string;
  readonly opened: OpenRecord;
  readonly record: Ledger;
  readonly draft: Draft;
  readonly request: DecideRequest;
  readonly said: (after: Ledger) => string;
}

async function enter({ folder, opened, record, draft, request, said }: Entering): Promise<Decided> {
  const { texts, seen } = opened;
  const isSigned = isYes(listAfter(record)?.list.signing ?? 'no');
  if (isSigned && !request.signed) return toSign(folder, texts, draft);
  const [by = ''] = makersOf(draft);
  const signatures = request.signed ? [{ by, jws: request.signed.jws }] : [];
  const entered = await enterDraft(folder, texts, draft, signatures);
  if (entered.kind === 'too_late') return { kind: 'refused', why: 'changed_since' };
  if (entered.kind === 'refused') return notEntered(toFields(entered.problems));
  await keepEntries(seen, (await loadRecord(folder)).texts);
  return { kind: 'entered', says: said(entered.record) };
}

/** All is asked but the signature, so that nobody signs what would not be entered. */
async function toSign(folder: string, texts: OpenRecord['texts'], draft: Draft): Promise<Decided> {
  const { problems } = await recordWith(folder, texts, draft, []);
  const others = problems.filter(({ code }) => code !== 'record_signature_missing');
  return others.length > 0 ? notEntered(toFields(others)) : { kind: 'to_sign', draft };
}

/** Problems of an entry, which is one line of JSON, each with the last name on the way to its place. */
const toFields = (problems: readonly Problem[]): FieldProblem[] =>
  problems.map(({ source, column, says, expected }) => {
    const { path } = getLocation(source, column - 1);
    const field = path.findLast((part) => typeof part === 'string') ?? null;
    return { field, says: expected === null ? says : `${says} Expected: ${expected}.` };
  });
