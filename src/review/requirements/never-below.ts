import { wholeBox } from './box.ts';
import { impossibleOf } from './impossible.ts';
import { drawn } from './question.ts';
import { search } from './search.ts';
import { spaceOf } from './space.ts';
import type { Subject } from './subject.ts';

const known = new WeakMap<Subject, boolean>();

/** So many groups of sets are looked into for one rule. */
const most = 5000;

/**
 * Whether each rule that counts in a set of which everything is known also could hold there. The two are written apart; so it is looked
 * into, rule by rule, unless they are the same.
 */
export function neverBelow(subject: Subject): boolean {
  const before = known.get(subject);
  if (before !== undefined) return before;
  const space = spaceOf(subject);
  const { program, terms } = drawn(subject, space, { both: new Set(), second: new Set() });
  const seconds = new Map<number, never>();
  const impossible = impossibleOf(subject, space, seconds);
  const found = terms.rules().every(({ counts, could }) => {
    if (counts === could) return true;
    const node = program.min([counts, program.not(could)]);
    const about = { first: node, second: node };
    const question = { space, program, start: wholeBox(space), seconds, whom: program.constant(1), about };
    const asked = { ...question, breaks: { kind: 'set', node } } as const;
    const watched = { cancelled: () => false, progress: () => undefined, most, accept: () => true };
    return search(asked, impossible, { ...watched, wanted: 'any' }).kind === 'none';
  });
  known.set(subject, found);
  return found;
}
