import type { RuleLogic } from '../../logic/logic.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Rule } from '../../protocol/protocol.ts';
import type { SameLogic } from '../guards/same-logic.ts';
import type { Side } from './side.ts';

/** A rule of one side. */
export interface RuleHere {
  readonly member: Compiled;
  readonly rule: Rule;
}

/** A rule as it is on both sides, or only on one. */
export interface RulePair {
  readonly before: RuleHere | null;
  readonly after: RuleHere | null;
  /** The same question under another name. */
  readonly renamed: boolean;
  /** Whether what it asks, or the level that it calls for, is not built alike: only then can it be met otherwise. */
  readonly differs: boolean;
}

/** A protocol of both sides, or only of one. */
export interface MemberPair {
  readonly before: Compiled | null;
  readonly after: Compiled | null;
  /** Whether the question which patients it is for is not built alike. */
  readonly differs: boolean;
}

/** The protocols of two sides: by name; two protocols that are compared alone are a pair whatever their names. */
export function memberPairs(before: Side, after: Side, same: SameLogic): MemberPair[] {
  const alone = before.kind === 'protocol' && after.kind === 'protocol';
  const left = [...after.members];
  const pairs = before.members.map((member): MemberPair => {
    const at = alone ? 0 : left.findIndex(({ protocol }) => protocol.name === member.protocol.name);
    const [other] = at < 0 ? [] : left.splice(at, 1);
    return { before: member, after: other ?? null, differs: !other || appliesDiffers(member, other, same) };
  });
  return [...pairs, ...left.map((member): MemberPair => ({ before: null, after: member, differs: true }))];
}

function appliesDiffers(before: Compiled, after: Compiled, same: SameLogic): boolean {
  const [first, second] = [same.of(before), same.of(after)];
  const [was, is] = [before.logic.applies, after.logic.applies];
  return first(was.certain) !== second(is.certain) || first(was.possible) !== second(is.possible);
}

/** The rules of a protocol: by name, then, of those left over, by what they ask. */
export function rulePairs({ before, after }: MemberPair, same: SameLogic): RulePair[] {
  const [first, second] = [before ? asked(before, same) : [], after ? asked(after, same) : []];
  const left = new Set(second);
  const take = (found: Asked | undefined): Asked | null => {
    if (found) left.delete(found);
    return found ?? null;
  };
  const byName = new Map(
    first.map((each) => [each, take(second.find((other) => other.rule.name === each.rule.name))]),
  );
  const pairs = first.map((each): RulePair => {
    const named = byName.get(each) ?? null;
    const other = named ?? take([...left].find((one) => one.key === each.key));
    return {
      before: each,
      after: other,
      renamed: other !== null && named === null,
      differs: other === null || other.key !== each.key,
    };
  });
  return [
    ...pairs,
    ...[...left].map((each): RulePair => ({ before: null, after: each, renamed: false, differs: true })),
  ];
}

interface Asked extends RuleHere {
  /** The same for rules that are built alike and call for the same level. */
  readonly key: string;
}

function asked(member: Compiled, same: SameLogic): Asked[] {
  const numberOf = same.of(member);
  const { ladder } = member.protocol;
  const level = (index: number | null | undefined): string => ladder.levels[index ?? -1]?.name ?? '';
  return member.protocol.rules.map((rule, index) => {
    const logic = member.logic.rules[index] as RuleLogic;
    const parts = [
      logic.certain,
      logic.possible,
      logic.counts,
      logic.could,
      logic.explained.certain,
      logic.explained.possible,
      logic.notReliable,
    ].map(numberOf);
    return { member, rule, key: [...parts, level(rule.level), level(rule.explainedBy?.level)].join(' ') };
  });
}
