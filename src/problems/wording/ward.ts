import { error } from '../entry.ts';

type Name = { name: string };

/** Problems of ward policies: the protocols that are read together, the ladder, the plans. */
export const wardWording = {
  ward_protocol_not_found: error(
    (f: Name) => `There is no protocol "${f.name}" that this ward could read with.`,
    () => 'the name of a protocol below the same folder',
  ),
  ward_protocol_has_errors: error(
    (f: Name) => `The protocol "${f.name}" has errors of its own, so that no ward can read with it.`,
    () => 'a protocol that passes its own check',
  ),
  ward_protocol_twice: error(
    (f: Name) => `The protocol "${f.name}" is listed twice.`,
    () => 'each protocol once',
  ),
  ward_other_edition: error(
    (f: Name & { asked: number; found: number }) =>
      `The ward reads with edition ${f.asked} of "${f.name}", but what is there is edition ${f.found}.`,
    (f) => `edition ${f.found}, once the ward has read it and agreed`,
  ),
  ward_other_ladder: error(
    (f: Name & { ladder: string; own: string }) =>
      `The protocol "${f.name}" is on the ladder "${f.ladder}", the ward on "${f.own}"; levels of two ladders cannot be compared.`,
    (f) => `a protocol on the ladder ${f.own}`,
  ),
  ward_name_means_two_things: error(
    (f: Name & { first: string; second: string }) =>
      `"${f.name}" means one thing in ${f.first} and another in ${f.second}; one set cannot give both.`,
    () => 'one meaning for each name, or another name in one of them',
  ),
  unknown_time_zone: error(
    (f: { zone: string }) => `"${f.zone}" is no time zone of the time zone database.`,
    () => 'a name such as Europe/London',
  ),
} as const;
