import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import { textToTime } from '../series/text-to-time.ts';
import type { ApproversEntry, RecordEntry } from '../shape/generated/types.ts';
import { checkList } from './check-list.ts';
import { bodyKeys, makersOf } from './entry.ts';
import { lacking, personOf, sameName } from './people.ts';
import { listAfter, type Ledger } from './record.ts';

/** Checks what an entry says against the entries before it, all of which hold. Signatures are looked at elsewhere. */
export function checkEntry(before: Ledger, entry: RecordEntry, report: Report): void {
  const said = bodyKeys.filter((key) => entry[key] !== undefined);
  if (said.length !== 1) {
    report('record_one_thing', [], { count: said.length });
    return;
  }
  checkTimes(before, entry, report);
  const list = listAfter(before)?.list ?? null;
  if (entry.approvers) checkApprovers(entry.approvers, list, report);
  else if (!list) report('record_without_approvers', [], {});
  else {
    const [by = ''] = makersOf(entry);
    const path: Path = [said[0] ?? '', 'by'];
    const person = personOf(list.people, by);
    if (!person) report('record_unknown_person', path, { by });
    else if (entry.approved) checkApproval(before, entry.approved, person.roles, report);
  }
  checkNumber(before, entry, report);
  if (entry.withdrawn && !before.entries.some((each) => each.in_force))
    report('record_nothing_to_withdraw', ['withdrawn'], {});
}

/** A list is agreed by those who could approve before it; the first one by those who stand on it. */
function checkApprovers(own: ApproversEntry, before: ApproversEntry | null, report: Report): void {
  checkList(own, ['approvers'], report);
  const { people, needs } = before ?? own;
  own.agreed_by.forEach((by, index) => {
    const isKnown = personOf(people, by) !== null;
    if (!isKnown) report('record_unknown_person', ['approvers', 'agreed_by', index], { by });
  });
  const agreeing = own.agreed_by.flatMap((by) => personOf(people, by) ?? []);
  for (const short of lacking(needs, agreeing))
    report('record_not_agreed', ['approvers', 'agreed_by'], short);
}

function checkApproval(
  { entries }: Ledger,
  { by, role, edition }: NonNullable<RecordEntry['approved']>,
  roles: readonly string[],
  report: Report,
): void {
  if (!roles.some((each) => sameName(each, role)))
    report('record_other_role', ['approved', 'role'], { by, role, roles });
  const isTwice = entries.some(({ approved }) => approved?.edition === edition && sameName(approved.by, by));
  if (isTwice) report('record_person_twice', ['approved', 'by'], { by, edition });
}

/** One number is one file, in every entry. */
function checkNumber(
  { entries }: Ledger,
  { approved, in_force: inForce }: RecordEntry,
  report: Report,
): void {
  const named = approved ?? inForce;
  if (!named) return;
  const other = entries
    .flatMap((each) => each.approved ?? each.in_force ?? [])
    .find(({ edition }) => edition === named.edition);
  if (other && (other.seal !== named.seal || other.digest !== named.digest))
    report('record_other_seal', [approved ? 'approved' : 'in_force', 'seal'], { edition: named.edition });
}

function checkTimes({ entries }: Ledger, entry: RecordEntry, report: Report): void {
  const at = timeAt(entry.at, ['at'], report);
  const last = entries.at(-1)?.at;
  const lastAt = last === undefined ? null : textToTime(last);
  if (at === null) return;
  if (last !== undefined && typeof lastAt === 'number' && at < lastAt)
    report('record_time_back', ['at'], { at: entry.at, before: last });
  for (const key of ['in_force', 'withdrawn'] as const) {
    const from = entry[key]?.from;
    const time = from === undefined ? null : timeAt(from, [key, 'from'], report);
    if (from !== undefined && time !== null && time < at)
      report('record_backdated', [key, 'from'], { from, at: entry.at });
  }
  for (const key of ['approvers', 'approved'] as const) {
    const on = entry[key]?.on;
    if (on !== undefined && on > entry.at.slice(0, 10))
      report('record_day_ahead', [key, 'on'], { on, at: entry.at });
  }
}

function timeAt(written: string, path: Path, report: Report): number | null {
  const time = textToTime(written);
  if (typeof time === 'number') return time;
  report('record_time_unreadable', path, { written });
  return null;
}
