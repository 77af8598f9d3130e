import { stepName, type Logic, type RuleLogic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';
import type { Change } from '../changes/change.ts';

/** Where one answer stands in the logic of a protocol, and of the changed one. */
export interface Named {
  readonly before: Logical;
  readonly after: Logical;
}

/** A truth: where it is certain, and where it is possible. */
export type NamedTruth = readonly [Named, Named];

export const truthsOf = (before: Logic, after: Logic): NamedTruth[] => [
  both(before.applies, after.applies),
  ...ofRules(before, after, (rule) => rule),
];

export const explainedOf = (before: Logic, after: Logic): NamedTruth[] =>
  ofRules(before, after, ({ explained }) => explained);

function ofRules(before: Logic, after: Logic, rails: (rule: RuleLogic) => Rails): NamedTruth[] {
  return before.rules.flatMap((rule) => {
    const other = after.rules.find((each) => each.rule === rule.rule);
    return other ? [both(rails(rule), rails(other))] : [];
  });
}

/** Everything about the rule that a change is made in, or the value of the measure. */
export function ownerOf(before: Logic, after: Logic, { owner }: Change): Named[] {
  const [rule, other] = [before, after].map(({ rules }) => rules.find((each) => each.rule === owner));
  if (rule && other) {
    const notReliable = { before: rule.notReliable, after: other.notReliable };
    return [...both(rule, other), ...both(rule.explained, other.explained), notReliable];
  }
  const [first, second] = [before, after].map(({ measures }) =>
    measures.find((each) => each.measure === owner),
  );
  return first && second ? [{ before: first.low, after: second.low }] : [];
}

type Rails = { readonly certain: Logical; readonly possible: Logical };

export const both = (before: Rails, after: Rails): NamedTruth => [
  { before: before.certain, after: after.certain },
  { before: before.possible, after: after.possible },
];

export const levelsOf = (before: Logic, after: Logic): Named[] =>
  (['raised', 'could', 'floor'] as const).map((key) => ({
    before: before.levels[key],
    after: after.levels[key],
  }));

export function notReliableOf(before: Logic, after: Logic): Named[] {
  return before.rules.flatMap(({ rule, notReliable }) => {
    const other = after.rules.find((each) => each.rule === rule);
    return other ? [{ before: notReliable, after: other.notReliable }] : [];
  });
}

export function levelled(before: Logic, after: Logic, { owner, path }: Change): NamedTruth | null {
  const [rule, other] = [before, after].map(({ rules }) => rules.find((each) => each.rule === owner));
  if (!rule || !other) return null;
  return path.includes('explained_by') ? both(rule.explained, other.explained) : both(rule, other);
}

export function insideOf(
  before: Logic,
  after: Logic,
  { kind, path, after: there }: Change,
): NamedTruth | null {
  const [first, second] = [before.conditions.get(stepName(path)), after.conditions.get(stepName(there))];
  // Where a part was left out, its place may now be that of the part after it.
  if (first && second && kind !== 'clause' && kind !== 'exception') return both(first, second);
  for (let length = path.length - 1; length > 0; length -= 1) {
    const place = stepName(path.slice(0, length));
    const [outer, same] = [before.conditions.get(place), after.conditions.get(place)];
    if (outer && same) return both(outer, same);
  }
  return null;
}
