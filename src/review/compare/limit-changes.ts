import Fraction from 'fraction.js';
import { quantityWords } from '../../protocol/checks/in-words.ts';
import type { Limit } from '../../protocol/protocol.ts';
import type { Comparison } from './comparison.ts';
import type { MemberPair } from './rule-pairs.ts';

/** Limits with another value, or with other bounds inside which it may be changed for a patient. */
export function limitChanges(members: readonly MemberPair[]): Comparison['limits'] {
  return members.flatMap(({ before, after }) => {
    const [was, is] = [before?.protocol.limits, after?.protocol.limits];
    const names = new Set([...(was?.keys() ?? []), ...(is?.keys() ?? [])]);
    return [...names].flatMap((name) => {
      const [one, other] = [limitInWords(was?.get(name)), limitInWords(is?.get(name))];
      return one === other ? [] : [{ limit: name, before: one, after: other }];
    });
  });
}

function limitInWords(limit: Limit | undefined): string | null {
  if (!limit) return null;
  const words = (steps: number): string =>
    quantityWords(new Fraction(steps).div(limit.stepsPerUnit), limit.unit);
  const bounds = limit.between
    ? `, which may be changed from ${words(limit.between[0])} to ${words(limit.between[1])}`
    : ', which nobody may change';
  return `${words(limit.value)}${bounds}`;
}
