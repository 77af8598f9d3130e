import type { Condition } from '../../protocol/protocol.ts';
import { between, every } from './apart.ts';
import { readLeaf, sayLeaf } from './comparisons.ts';
import { clauseOf, item, plain, type Sentence } from './sentence.ts';
import type { Speaker } from './speaker.ts';

type Group = Extract<Condition, { readonly of: readonly Condition[] }>;

const notSo = 'it is not so that ';

/**
 * A condition as a clause: what has one part is said in one breath, what has several as a heading that counts those below it. That
 * they are counted tells when one of them was lost.
 */
export function sayCondition(condition: Condition, speaker: Speaker): Sentence {
  if (!('of' in condition)) return plain(sayLeaf(condition, speaker));
  const [only] = condition.of;
  if (condition.kind === 'none' && condition.of.length === 1 && only && !('of' in only))
    return plain(`${notSo}${sayLeaf(only, speaker)}`);
  return {
    text: headingOf(condition),
    of: condition.of.map((each) => item('', sayCondition(each, speaker))),
  };
}

function headingOf(group: Group): string {
  const count = group.of.length;
  switch (group.kind) {
    case 'all':
      return count === 2 ? 'both of these hold' : `all ${count} of these hold`;
    case 'any':
      return `at least one of these ${count} holds`;
    case 'none':
      return count === 2 ? 'neither of these holds' : `none of these ${count} holds`;
    case 'at_least_of':
      return `at least ${group.count} of these ${count} hold`;
  }
}

/** The same back, without places; null for what is no such clause. */
export function readCondition({ text, of }: Sentence, speaker: Speaker): Condition | null {
  if (of.length > 0) return readGroup(text, of, speaker);
  const denied = between(text, notSo);
  if (denied === null) return readLeaf(text, speaker);
  const leaf = readLeaf(denied, speaker);
  return leaf && { kind: 'none', of: [leaf], path: [] };
}

function readGroup(heading: string, below: readonly Sentence[], speaker: Speaker): Condition | null {
  const of = readItems(below, speaker);
  if (!of) return null;
  const [, count] = /^at least ([1-9][0-9]*) of these/.exec(heading) ?? [];
  const groups: readonly Group[] = [
    { kind: 'all', of, path: [] },
    { kind: 'any', of, path: [] },
    { kind: 'none', of, path: [] },
    ...(count === undefined ? [] : [{ kind: 'at_least_of', count: Number(count), of, path: [] } as const]),
  ];
  return groups.find((group) => headingOf(group) === heading) ?? null;
}

/** Every item of a list as a condition. */
export const readItems = (below: readonly Sentence[], speaker: Speaker): Condition[] | null =>
  every(below, (each) => {
    const clause = clauseOf(each);
    return clause && readCondition(clause, speaker);
  });
