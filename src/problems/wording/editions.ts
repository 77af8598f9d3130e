import { error } from '../entry.ts';

/** Problems of sealed editions. */
export const editionsWording = {
  edition_not_sealed: error(
    () => 'This edition does not end with its seal, so nobody can tell whether it is as it was sealed.',
    () => 'the file as "vitalwright seal" wrote it, with nothing added, left out or changed',
  ),
  edition_changed: error(
    () =>
      'This edition was changed after it was sealed: it is not what was agreed, and nothing reads with it.',
    () => 'the file as "vitalwright seal" wrote it; a change is a new edition',
  ),
  edition_in_wrong_place: error(
    (f: { name: string; edition: number; place: string }) =>
      `This is edition ${f.edition} of "${f.name}", but it stands where ${f.place} belongs.`,
    (f) => f.place,
  ),
  edition_of_other_language: error(
    (f: { language: number; own: number }) =>
      `This edition was sealed in language ${f.language}; this kit reads language ${f.own}.`,
    () => 'a kit that reads this language, or a new edition',
  ),
  edition_part_unread: error(
    (f: { part: string; says: string }) =>
      `This kit reads it otherwise: it cannot read ${f.part} any more (${f.says})`,
    () => 'the kit that sealed it, or a new edition',
  ),
  edition_digest_otherwise: error(
    (f: { found: string }) =>
      `This kit reads it otherwise: what it reads here has the digest ${f.found}, not the one that was agreed.`,
    () => 'the kit that sealed it, or a new edition',
  ),
  edition_answers_otherwise: error(
    (f: { name: string; what: string; was: string; is: string }) =>
      `This kit reads it otherwise: in the case "${f.name}", ${f.what} was ${f.was}; it is ${f.is}.`,
    () => 'the kit that sealed it, or a new edition',
  ),
} as const;
