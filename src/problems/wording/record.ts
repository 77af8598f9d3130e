import { error } from '../entry.ts';

type By = { by: string };
type Edition = { edition: number };

/** Problems of the record of a policy, and of the list of those who may approve. */
export const recordWording = {
  // The chain
  record_changed: error(
    () => 'This entry was changed after it was made, or is not whole. The record cannot be relied on.',
    () => 'the file as it was written',
  ),
  record_not_next: error(
    (f: { entry: number; place: number }) =>
      `This entry is number ${f.entry}, but stands where number ${f.place} belongs: an entry is missing, or was moved.`,
    (f) => `entry ${f.place}`,
  ),
  record_link_broken: error(
    (f: { entry: number }) =>
      `This entry does not go on from entry ${f.entry} as it stands here: one of the two is not the one that was made.`,
    () => 'the record as it was written',
  ),
  record_of_another: error(
    (f: { name: string; own: string }) =>
      `This entry belongs to the record of "${f.name}", not to that of "${f.own}".`,
    (f) => f.own,
  ),
  record_one_thing: error(
    (f: { count: number }) => `An entry says one thing; this one says ${f.count}.`,
    () => 'one of approvers, approved, in_force, withdrawn',
  ),
  record_without_approvers: error(
    () => 'The record does not begin with who may approve.',
    () => 'the list of approvers as the first entry',
  ),
  record_time_unreadable: error(
    (f: { written: string }) => `"${f.written}" is no time with its offset.`,
    () => 'a time with its offset, for example 2026-03-02T12:05:00Z',
  ),
  record_time_back: error(
    (f: { at: string; before: string }) =>
      `This entry was made at ${f.at}, before the one that it follows (${f.before}).`,
    () => 'a time that is not earlier; is the clock right?',
  ),
  record_backdated: error(
    (f: { from: string; at: string }) =>
      `This would hold from ${f.from} on, but was only entered at ${f.at}; what was in force before cannot be changed.`,
    () => 'a time that is not before the entry',
  ),
  record_day_ahead: error(
    (f: { on: string; at: string }) => `The day of the decision, ${f.on}, comes after the entry (${f.at}).`,
    () => 'a day that is not after the entry',
  ),

  // Who
  record_unknown_person: error(
    (f: By) => `"${f.by}" is not on the list of approvers.`,
    () => 'somebody of the list; the list is changed with "vitalwright approvers"',
  ),
  record_other_role: error(
    (f: By & { role: string; roles: readonly string[] }) =>
      `"${f.by}" is not on the list in the role "${f.role}".`,
    (f) => f.roles.join(', or '),
  ),
  record_person_twice: error(
    (f: By & Edition) => `"${f.by}" has approved edition ${f.edition} already; one person counts once.`,
    () => 'another person',
  ),
  record_other_seal: error(
    (f: Edition) =>
      `Edition ${f.edition} was entered before with another seal or digest: these are two different files.`,
    () => 'the edition that was sealed first',
  ),
  record_not_agreed: error(
    (f: { role: string; people: number }) =>
      `The list of approvers is changed only when those agree who can approve now: ${f.people} in the role "${f.role}" more would be needed.`,
    () => 'enough people of each role, each once',
  ),
  record_nothing_to_withdraw: error(
    () => 'Nothing is in force or put in force for later, so that there is nothing to withdraw.',
  ),

  // Signatures
  record_signature_missing: error(
    (f: By) => `Entries of this record are signed; the signature of "${f.by}" is missing.`,
    () => 'the signature of each person who makes the entry, and of nobody else',
  ),
  record_signature_unwanted: error(
    () => 'Entries of this record are not signed, but this one carries signatures.',
    () => 'no signatures; signing begins with an entry of the list of approvers that says so',
  ),
  record_signature_wrong: error(
    (f: By) =>
      `The signature of "${f.by}" does not hold: another key made it, or it was made for something else.`,
    () => 'a signature by the key on the list, over this very entry',
  ),

  // Editions
  record_author_approves: error(
    (f: By) => `"${f.by}" wrote this edition; whoever wrote it cannot approve it.`,
    () => 'another person',
  ),
  record_added_since: error(
    (f: By & Edition) =>
      `"${f.by}" was not on the list in this role when edition ${f.edition} was sealed, and so cannot approve it.`,
    () => 'somebody who was on the list then; or a new edition',
  ),
  record_nobody_may_approve: error(
    (f: Edition) => `When edition ${f.edition} was sealed, nobody was entered who may approve it.`,
    () => 'a list of approvers entered first, then a new edition',
  ),
  record_not_approved: error(
    (f: Edition & { role: string; people: number }) =>
      `Edition ${f.edition} is not approved: ${f.people} in the role "${f.role}" still needed.`,
    () => 'the approvals that the list of approvers asks for',
  ),
  record_edition_lost: error(
    (f: Edition) =>
      `Edition ${f.edition}, which this entry is about, cannot be read, or is another file than the one that was meant.`,
    () => 'the edition as it was sealed',
  ),

  // What only a reader knows who has seen more
  record_cut: error(
    (f: { seen: number; found: number }) =>
      `${f.seen} entries of this record have been read here before; now there are ${f.found}. The last ones were taken away, or this is an older copy.`,
    () => 'the record with all its entries',
  ),
  record_other_than_seen: error(
    (f: { entry: number }) =>
      `Entry ${f.entry} of this record was read here before and was another one. This is another record, or it was written anew.`,
    () => 'the record as it was read before',
  ),

  // The list of approvers
  approvers_of_another: error(
    (f: { name: string; own: string }) => `This list is for "${f.name}", but stands beside "${f.own}".`,
    (f) => f.own,
  ),
  approver_twice: error(
    (f: { name: string }) => `"${f.name}" stands on the list twice; one person counts once.`,
    () => 'each person once, with all roles',
  ),
  key_of_two: error(
    (f: { name: string; other: string }) =>
      `"${f.name}" and "${f.other}" have the same key, so that nobody could tell them apart.`,
    () => 'a key of their own for each person',
  ),
  key_lacking: error(
    (f: { name: string }) => `Entries are to be signed, but no key is stated for "${f.name}".`,
    () => 'the public key that "vitalwright key new" printed',
  ),
  role_needed_twice: error(
    (f: { role: string }) => `The role "${f.role}" stands under needs twice.`,
    () => 'each role once, with the number of people',
  ),
  too_few_people: error(
    (f: { role: string; people: number }) =>
      `Nothing could ever be approved: of the role "${f.role}", ${f.people} more would have to be on the list.`,
    () => 'enough people, each in one role only',
  ),
} as const;
