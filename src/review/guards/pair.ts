import type { Input } from '../../logic/inputs.ts';
import type { Logic } from '../../logic/logic.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Read } from '../../outcome/view.ts';
import type { Change } from '../changes/change.ts';
import { inputsBehind } from '../observations-behind.ts';
import {
  both,
  explainedOf,
  insideOf,
  levelled,
  levelsOf,
  notReliableOf,
  ownerOf,
  truthsOf,
  type Named,
  type NamedTruth,
} from './named-pairs.ts';
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
  /**
   * Whether single sets cannot settle it: something depends on earlier sets, on faults of technique, or on a limit that may be changed for a
   * patient.
   */
  readonly beyondSets: boolean;
}

/** Null when no answer can differ: the two are built alike. */
export function pairOf(before: Compiled, after: Compiled, change: Change): Pair | null {
  const differing = differingOf(before, after);
  const all = [...differing.truths.flat(), ...differing.explained.flat(), ...differing.others];
  if (all.length === 0) return null;
  const read = ({ before: first, after: second }: Named): ReadPair => ({
    before: before.evaluator.reader(first),
    after: after.evaluator.reader(second),
  });
  const truth = ([certain, possible]: NamedTruth): TruthPair => ({
    certain: read(certain),
    possible: read(possible),
  });
  const inside = insideOf(before.logic, after.logic, change);
  const level = change.kind === 'level' ? levelled(before.logic, after.logic, change) : null;
  const own = [...(inside ?? []), ...(level ?? []), ...ownerOf(before.logic, after.logic, change)];
  const inputs = behind(all, before, after);
  const looksBack = inputs.some(({ of }) => of === 'look_back');
  return {
    before,
    after,
    truths: differing.truths.map(truth),
    explained: differing.explained.map(truth),
    notReliable: differing.blind.map(read),
    levelOf: level && truth(level),
    inside: inside && truth(inside),
    reads: observationsOf(inputs),
    near: observationsOf(own.length > 0 ? behind(own, before, after) : inputs),
    looksBack,
    beyondSets:
      looksBack || before.protocol.faults.length > 0 || inputs.some((input) => mayBeChanged(input, before)),
  };
}

/** The answers that are not built alike in both. */
function differingOf(
  compiled: Compiled,
  changed: Compiled,
): Readonly<Record<'truths' | 'explained', NamedTruth[]> & Record<'blind' | 'others', Named[]>> {
  const same = new SameLogic();
  const [before, after]: [Logic, Logic] = [compiled.logic, changed.logic];
  const [numberBefore, numberAfter] = [same.of(compiled), same.of(changed)];
  const differs = (each: Named): boolean => numberBefore(each.before) !== numberAfter(each.after);
  const blind = notReliableOf(before, after).filter(differs);
  return {
    truths: truthsOf(before, after).filter((each) => each.some(differs)),
    explained: explainedOf(before, after).filter((each) => each.some(differs)),
    blind,
    others: [...blind, ...levelsOf(before, after).filter(differs)],
  };
}

/** Everything that enters some answers, and whether the protocol is for the patient, in either logic. */
function behind(named: readonly Named[], before: Compiled, after: Compiled): Input[] {
  const all = [...named, ...both(before.logic.applies, after.logic.applies)];
  const of = ({ logic }: Compiled, side: keyof Named): Input[] =>
    inputsBehind(
      logic,
      all.map((each) => each[side]),
    );
  return [...of(before, 'before'), ...of(after, 'after')];
}

const mayBeChanged = ({ of, owner }: Input, { protocol }: Compiled): boolean =>
  of === 'limit' && (protocol.limits.get(owner)?.between ?? null) !== null;

const observationsOf = (inputs: readonly Input[]): string[] => [
  ...new Set(inputs.flatMap(({ of, owner }) => (of === 'observation' ? [owner] : []))),
];
