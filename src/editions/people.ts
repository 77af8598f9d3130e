import type { NeededRole } from '../shape/generated/types.ts';

/** Somebody who makes an entry, with the roles that she may make it in. */
export interface Acting {
  readonly name: string;
  readonly roles: readonly string[];
}

/** Whether two names are of one person, or one role: capitals and blanks make no other one. `sameName('Dr Ash', 'dr  ash')` is true. */
export const sameName = (left: string, right: string): boolean => folded(left) === folded(right);

const folded = (name: string): string => name.normalize('NFKC').trim().replace(/\s+/gu, ' ').toLowerCase();

/** Somebody of a list, by name. */
export const personOf = <P extends { readonly name: string }>(list: readonly P[], name: string): P | null =>
  list.find((each) => sameName(each.name, name)) ?? null;

/**
 * What some people leave open of the roles that are needed. One person counts once, and fills one role only: people are placed so that as many
 * places as can be are filled.
 */
export function lacking(needs: readonly NeededRole[], people: readonly Acting[]): NeededRole[] {
  const places = needs.flatMap(({ role, people: count }) => Array<string>(count).fill(role));
  const different = people.filter(
    ({ name }, index) => people.findIndex((each) => sameName(each.name, name)) === index,
  );
  const holder = new Map<number, Acting>();
  for (const person of different) settle(person, places, holder, new Set());
  const open = places.filter((_, index) => !holder.has(index));
  return needs.flatMap(({ role }) => {
    const count = open.filter((each) => each === role).length;
    return count === 0 ? [] : [{ role, people: count }];
  });
}

/** Finds a place for a person, moving others to another place of theirs where that makes room. */
function settle(
  person: Acting,
  places: readonly string[],
  holder: Map<number, Acting>,
  tried: Set<number>,
): boolean {
  for (const [index, role] of places.entries()) {
    if (tried.has(index) || !person.roles.some((each) => sameName(each, role))) continue;
    tried.add(index);
    const other = holder.get(index);
    if (other && !settle(other, places, holder, tried)) continue;
    holder.set(index, person);
    return true;
  }
  return false;
}
