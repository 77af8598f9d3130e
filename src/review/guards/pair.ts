import type { Input } from '../../logic/inputs.ts';
import { stepName, type Logic, type RuleLogic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Read } from '../../outcome/view.ts';
import type { Change } from '../changes/change.ts';
import { inputsBehind } from '../observations-behind.ts';
import { SameLogic } from './same-logic.ts';

/** One answer of a protocol and of the changed one, as read from a result of each. */
export interface ReadPair {
  readonly before: Read;
  readonly after: Read;
}

/** A truth over many sets, in both. */
export interface TruthPair {
  readonly certain: ReadPair;
  readonly possible: ReadPair;
}

/** A protocol and the same with one change, with every answer in which the two can differ at all. */
export interface Pair {
  readonly before: Compiled;
  readonly after: Compiled;
  /** Whether rules are met, and whether the protocol is for the patient: those that can differ. */
  readonly truths: readonly TruthPair[];
  /** Whether rules are explained, where that can differ. */
  readonly explained: readonly TruthPair[];
  /** What is not reliable, where that can differ: it can, although no rule does. */
  readonly notReliable: readonly ReadPair[];
  /** The two levels of a rule, where the change is one of its level: when it is met, the two differ. */
  readonly levelOf: TruthPair | null;
  /** The innermost condition that the change stands in, and that stands in both. While it says the same, all does. */
  readonly inside: TruthPair | null;
  /** The observations that any of this depends on. */
  readonly reads: readonly string[];
  /** Of these, those behind the changed part itself: a search looks at them first. */
  readonly near: readonly string[];
  /** Whether any of this depends on earlier sets. */
  readonly looksBack: boolean;
}

interface Named {
  readonly before: Logical;
  readonly after: Logical;
}

/** Null when no answer can differ: the two are built alike. */
export function pairOf(before: Compiled, after: Compiled, change: Change): Pair | null {
  const same = new SameLogic();
  const [numberBefore, numberAfter] = [same.of(before.logic), same.of(after.logic)];
  const differs = (each: Named): boolean => numberBefore(each.before) !== numberAfter(each.after);
  const truths = truthsOf(before.logic, after.logic).filter((each) => each.some(differs));
  const explained = explainedOf(before.logic, after.logic).filter((each) => each.some(differs));
  const blind = notReliableOf(before.logic, after.logic).filter(differs);
  const levels = levelsOf(before.logic, after.logic).filter(differs);
  const all = [...truths.flat(), ...explained.flat(), ...blind, ...levels];
  if (all.length === 0) return null;
  const inside = insideOf(before.logic, after.logic, change);
  const applies = both(before.logic.applies, after.logic.applies);
  const level = change.kind === 'level' ? levelled(before.logic, after.logic, change) : null;
  const own = [...(inside ?? []), ...(level ?? []), ...ownerOf(before.logic, after.logic, change)];
  const behind = (named: readonly Named[]): Input[] => [
    ...inputsBehind(
      before.logic,
      [...named, ...applies].map((each) => each.before),
    ),
    ...inputsBehind(
      after.logic,
      [...named, ...applies].map((each) => each.after),
    ),
  ];
  const read = ({ before: first, after: second }: Named): ReadPair => ({
    before: before.evaluator.reader(first),
    after: after.evaluator.reader(second),
  });
  const truth = ([certain, possible]: readonly [Named, Named]): TruthPair => ({
    certain: read(certain),
    possible: read(possible),
  });
  const inputs = behind(all);
  return {
    before,
    after,
    truths: truths.map(truth),
    explained: explained.map(truth),
    notReliable: blind.map(read),
    levelOf: level && truth(level),
    inside: inside && truth(inside),
    reads: observationsOf(inputs),
    near: own.length > 0 ? observationsOf(behind(own)) : observationsOf(inputs),
    looksBack: inputs.some(({ of }) => of === 'look_back'),
  };
}

const observationsOf = (inputs: readonly Input[]): string[] => [
  ...new Set(inputs.flatMap(({ of, owner }) => (of === 'observation' ? [owner] : []))),
];

const truthsOf = (before: Logic, after: Logic): (readonly [Named, Named])[] => [
  both(before.applies, after.applies),
  ...ofRules(before, after, (rule) => rule),
];

const explainedOf = (before: Logic, after: Logic): (readonly [Named, Named])[] =>
  ofRules(before, after, ({ explained }) => explained);

function ofRules(
  before: Logic,
  after: Logic,
  rails: (rule: RuleLogic) => Rails,
): (readonly [Named, Named])[] {
  return before.rules.flatMap((rule) => {
    const other = after.rules.find((each) => each.rule === rule.rule);
    return other ? [both(rails(rule), rails(other))] : [];
  });
}

/** Everything about the rule that a change is made in, or the value of the measure. */
function ownerOf(before: Logic, after: Logic, { owner }: Change): Named[] {
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

const both = (before: Rails, after: Rails): readonly [Named, Named] => [
  { before: before.certain, after: after.certain },
  { before: before.possible, after: after.possible },
];

const levelsOf = (before: Logic, after: Logic): Named[] =>
  (['raised', 'could', 'floor'] as const).map((key) => ({
    before: before.levels[key],
    after: after.levels[key],
  }));

function notReliableOf(before: Logic, after: Logic): Named[] {
  return before.rules.flatMap(({ rule, notReliable }) => {
    const other = after.rules.find((each) => each.rule === rule);
    return other ? [{ before: notReliable, after: other.notReliable }] : [];
  });
}

function levelled(before: Logic, after: Logic, { owner, path }: Change): readonly [Named, Named] | null {
  const [rule, other] = [before, after].map(({ rules }) => rules.find((each) => each.rule === owner));
  if (!rule || !other) return null;
  return path.includes('explained_by') ? both(rule.explained, other.explained) : both(rule, other);
}

function insideOf(
  before: Logic,
  after: Logic,
  { kind, path, after: there }: Change,
): readonly [Named, Named] | null {
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
