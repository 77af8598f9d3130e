import { timeInWords } from '../outcome/time-in-words.ts';
import type { ApproversEntry, NeededRole, RecordEntry } from '../shape/generated/types.ts';

/** `Dr Ash, Dr Elm and Sister Birch`. */
const together = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;

/** What is needed, or still needed: `1 × Doctor, 2 × Senior nurse`. */
export const rolesInWords = (needs: readonly NeededRole[]): string =>
  needs.map(({ role, people }) => `${people} × ${role}`).join(', ');

/**
 * What an entry of a record says, in one sentence: who, what, from when. Its reasons are in `reasonsInWords`.
 *
 * `Dr Ash put edition 1 in force, from 2026-03-03 08:00 UTC.`
 */
export function entryInWords(entry: RecordEntry): string {
  const { approvers, approved, in_force: put, withdrawn } = entry;
  if (approvers) return listInWords(approvers);
  if (approved) return `${approved.by} (${approved.role}) approved edition ${approved.edition}.`;
  if (put) return `${put.by} put edition ${put.edition} in force, from ${timeInWords(put.from)}.`;
  if (withdrawn) return `${withdrawn.by} withdrew the policy, from ${timeInWords(withdrawn.from)}.`;
  return '';
}

function listInWords({ people, agreed_by: agreedBy, signing }: ApproversEntry): string {
  const each = people.map(({ name, roles }) => `${name} (${roles.join(', ')})`);
  const signed = signing === 'yes' ? ' Every entry is signed from now on.' : '';
  return `${together(agreedBy)} agreed who may approve: ${together(each)}.${signed}`;
}

/** Why, by which minute, and what applies instead; a sentence each. */
export function reasonsInWords({ approvers, approved, in_force: put, withdrawn }: RecordEntry): string[] {
  const minuted = approvers ?? approved;
  if (minuted) return [`${minuted.minute}, of ${minuted.on}.`];
  if (put) return [`Why: ${put.because}`];
  return withdrawn ? [`Why: ${withdrawn.because}`, `Instead: ${withdrawn.instead}`] : [];
}
