import { Smt, smt } from './smt.ts';

/** All of them hold; without any, true. */
export const every = (parts: readonly Smt[]): Smt => joined(parts, smt`and`, smt`true`);

/** One of them holds at least; without any, false. */
export const some = (parts: readonly Smt[]): Smt => joined(parts, smt`or`, smt`false`);

function joined(parts: readonly Smt[], how: Smt, without: Smt): Smt {
  if (parts.length < 2) return parts[0] ?? without;
  return smt`(${how} ${Smt.joined(parts, ' ')})`;
}

const not = (part: Smt): Smt => smt`(not ${part})`;

/** A truth of this name, or that it does not hold. */
export const flag = (name: string, is: boolean): Smt => (is ? smt`${name}` : not(smt`${name}`));
