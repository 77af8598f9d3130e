import { error } from '../entry.ts';

type Name = { name: string };
type OfParent = Name & { parent: string };

/** Problems of a protocol that is based on another. */
export const basedOnWording = {
  parent_not_found: error(
    (f: Name) => `The protocol "${f.name}", which this one is based on, cannot be found.`,
    () => 'the name of a protocol below protocols/, or beside this file',
  ),
  parent_has_errors: error(
    (f: Name & { place: string; says: string }) =>
      `The protocol "${f.name}" has to be mended before another can be based on it (${f.place}): ${f.says}`,
  ),
  parent_of_other_edition: error(
    (f: Name & { edition: number }) =>
      `"${f.name}" is now edition ${f.edition}; this protocol was agreed on another one.`,
    (f) => `edition: ${f.edition}, once somebody has read what is new in it`,
  ),
  ladder_of_parent: error(
    (f: Name & { ladder: string }) => `The rules of "${f.name}" call for levels of another ladder.`,
    (f) => f.ladder,
  ),
  based_on_circle: error(
    (f: { names: readonly string[] }) =>
      `These protocols are based on each other in a circle: ${f.names.join(' → ')}.`,
    () => 'no way round from a protocol to itself',
  ),
  based_on_too_deep: error(
    (f: { names: readonly string[] }) => `Too many protocols stand one on the other: ${f.names.join(' → ')}.`,
    () => 'a protocol, the one that it is based on, and at most one more',
  ),
  name_of_parent: error(
    (f: OfParent & { as: string }) =>
      `"${f.name}" is already the name of ${f.as === 'observation' ? 'an' : 'a'} ${f.as} of "${f.parent}", which this protocol is based on.`,
    (f) => (f.as === 'observation' ? 'the name left out; it can be read all the same' : 'another name'),
  ),
  limit_not_of_parent: error(
    (f: OfParent) => `"${f.parent}" has no limit "${f.name}".`,
    () => 'the name of a limit of the protocol that this one is based on',
  ),
  limit_not_to_change: error(
    (f: OfParent) => `"${f.parent}" does not say between which numbers the limit "${f.name}" may be changed.`,
    () => 'a limit that has between',
  ),
  rule_not_of_parent: error(
    (f: OfParent) => `"${f.parent}" has no rule "${f.name}" that could be withdrawn.`,
    () => 'the name of a rule of the protocol that this one is based on',
  ),
  withdrawn_twice: error(
    (f: Name) => `The rule "${f.name}" is withdrawn twice.`,
    () => 'each rule withdrawn once',
  ),
  withdrawn_rule_named: error(
    (f: Name & { by: string }) => `The rule "${f.name}" is withdrawn, but "${f.by}" names it.`,
    (f) => `"${f.by}" withdrawn too; or "${f.name}" kept`,
  ),
} as const;
