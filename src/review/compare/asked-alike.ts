import type { Atoms } from './atoms.ts';
import type { MemberPair, RulePair } from './rule-pairs.ts';
import type { Node } from './node.ts';
import { metShape, shapeOf } from './shape-in-node.ts';

/** Whether both sides ask the same about the patients whom a protocol is for, once what is settled in a node is put in. */
export function appliesAlike({ before, after, differs }: MemberPair, atoms: Atoms, node: Node): boolean {
  if (!differs) return true;
  if (!before || !after) return false;
  const [first, second] = [before, after].map((member) =>
    member.protocol.applies ? shapeOf(member.protocol.applies, member, atoms, node) : 'holds',
  );
  return first === second;
}

/** Whether two rules are met, and explained, by the same, once what is settled in a node is put in. */
export function asksAlike({ before, after }: RulePair, atoms: Atoms, node: Node): boolean {
  if (!before || !after) return false;
  const [first, second] = [before, after].map(({ rule, member }) => [
    metShape(rule, member, atoms, node),
    shapeOf(rule.explainedBy?.when, member, atoms, node),
  ]) as [string[], string[]];
  return first[0] === second[0] && (first[0] === 'fails' || first[1] === second[1]);
}

/** Whether two rules call for the same level. */
export function callAlike({ before, after }: RulePair): boolean {
  const [first, second] = [before, after].map((here) => {
    const level = (index: number | null | undefined): string | undefined =>
      here?.member.protocol.ladder.levels[index ?? -1]?.name;
    return `${level(here?.rule.level)} ${level(here?.rule.explainedBy?.level)}`;
  });
  return first === second;
}
