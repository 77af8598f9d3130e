import type { LevelAnswer } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';
import { appliesAlike, asksAlike, callAlike } from './asked-alike.ts';
import type { Asking } from './asking.ts';
import type { Atom } from './atoms.ts';
import { levelFound, levelOfPoint, type Result } from './level-found.ts';
import { conditionsOfRule } from './open-comparisons.ts';
import type { Question } from './partitioner.ts';
import type { RulePair } from './rule-pairs.ts';
import { pointNode, type Node } from './node.ts';
import type { Tightened } from './tightened.ts';

/** Another level. Null where no protocol is for these patients. */
export interface LevelChange {
  readonly from: LevelAnswer | null;
  readonly to: LevelAnswer | null;
}

/** Which sets get another level. */
export function levelQuestion(asking: Asking): Question<LevelChange> {
  return (node, find) => {
    const members = asking.members.filter((pair) => !appliesAlike(pair, asking.atoms, node));
    const rules = asking.rules.filter(
      (pair) => calls(pair) && !(asksAlike(pair, asking.atoms, node) && callAlike(pair)),
    );
    if (members.length === 0 && rules.length === 0 && asking.sameLadder) return { kind: 'same' };
    const sides = [asking.before, asking.after].map((all) => resultsOf(all, node, asking)) as [
      Result[],
      Result[],
    ];
    if (members.length === 0 && asking.sameLadder && sameAnyway(rules, sides)) return { kind: 'same' };
    for (const pair of rules) {
      const by = asking.open.oneSided(pair, node);
      if (by) return { kind: 'cut', by };
    }
    const levels: (LevelAnswer | null)[] = [];
    for (const results of sides) {
      const found = levelIn(node, results, asking, find);
      if (found && 'by' in found) return { kind: 'cut', by: found.by };
      levels.push(found);
    }
    const change = { from: levels[0] ?? null, to: levels[1] ?? null };
    return isSame(change, asking) ? { kind: 'same' } : { kind: 'other', change };
  };
}

const calls = ({ before, after }: RulePair): boolean =>
  highestOf(before?.rule) > 0 || highestOf(after?.rule) > 0;

function highestOf(
  rule: RulePair['before'] extends infer Here
    ? (Here extends { rule: infer R } ? R : never) | undefined
    : never,
): number {
  return Math.max(rule?.level ?? 0, rule?.explainedBy?.level ?? 0);
}

const resultsOf = (members: readonly Compiled[], node: Node, { tightened }: Asking): Result[] =>
  members.map((member) => {
    const asked = tightened.get(member) as Tightened;
    return { asked, result: asked.run(node) };
  });

/**
 * Whether the level is the same on both sides, whatever it is: when all that the rules in question can call for is called for on
 * both sides anyway. Then it is that, or more by rules that are the same.
 */
function sameAnyway(rules: readonly RulePair[], [before, after]: readonly [Result[], Result[]]): boolean {
  const most = Math.max(
    0,
    ...rules.flatMap((pair) => [
      pair.before && isPossible(pair.before, before) ? highestOf(pair.before.rule) : 0,
      pair.after && isPossible(pair.after, after) ? highestOf(pair.after.rule) : 0,
    ]),
  );
  if (most === 0) return true;
  return [before, after].every((results) =>
    results.some(
      ({ asked, result }) => asked.applies.certain(result) !== 0 && asked.levels.floor(result) >= most,
    ),
  );
}

function isPossible({ member, rule }: NonNullable<RulePair['before']>, results: readonly Result[]): boolean {
  const own = results.find(({ asked }) => asked.compiled === member);
  if (!own || own.asked.applies.possible(own.result) === 0) return false;
  return (own.asked.rules.get(rule.name)?.possible(own.result) ?? 1) !== 0;
}

function levelIn(
  node: Node,
  results: readonly Result[],
  asking: Asking,
  find: () => Float64Array | null,
): LevelAnswer | null | { readonly by: Atom } {
  const found = levelFound(results);
  if (found.kind === 'found') return found.level;
  const applies = found.applies?.compiled;
  const by =
    (applies && asking.open.in([applies.protocol.applies], applies, node)) ??
    openAbove(node, results, found.above, asking);
  if (by) return { by };
  const point = find();
  // Nothing is left to settle: one set stands for all.
  return (
    point &&
    levelOfPoint(
      resultsOf(
        results.map(({ asked }) => asked.compiled),
        pointNode(node, point),
        asking,
      ),
    )
  );
}

/** A comparison of the highest rule that is open and calls for more than some level. */
function openAbove(node: Node, results: readonly Result[], above: number, { open }: Asking): Atom | null {
  const rules = results.flatMap(({ asked, result }) =>
    asked.applies.possible(result) === 0
      ? []
      : asked.compiled.protocol.rules
          .filter((rule) => highestOf(rule) > above && asked.rules.get(rule.name)?.possible(result) !== 0)
          .map((rule) => ({ rule, member: asked.compiled })),
  );
  rules.sort((left, right) => highestOf(right.rule) - highestOf(left.rule));
  for (const { rule, member } of rules) {
    const by = open.in(conditionsOfRule(rule), member, node);
    if (by) return by;
  }
  return null;
}

export function isSame({ from, to }: LevelChange, { levelNames }: Asking): boolean {
  if (!from || !to) return from === to;
  const [before, after] = levelNames;
  const name = (names: readonly string[], level: number | null): string | null =>
    level === null ? null : (names[level] ?? null);
  return (
    name(before, from.atLeast) === name(after, to.atLeast) &&
    name(before, from.couldBe) === name(after, to.couldBe) &&
    from.settled === to.settled
  );
}
