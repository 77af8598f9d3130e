import type { Logic } from '../../logic/logic.ts';
import { and, highest, lessOrSame, less, not, or, type Logical } from '../../logic/operators.ts';

// What can be asked of an outcome, as truths over the steps of its logic: for `holds` of a question. Each speaks of sets that the
// protocol is or may be for, as only they have rules and a level.

export type RuleState = 'met' | 'not_met' | 'undecided';

/** A rule has this state. */
export function ruleIs(logic: Logic, rule: string, state: RuleState): Logical {
  const { certain, possible } = found(logic, rule);
  const is = { met: certain, not_met: not(possible), undecided: and(possible, not(certain)) }[state];
  return and(logic.applies.possible, is);
}

/** Two rules are met by one set. */
export const metTogether = (logic: Logic, first: string, second: string): Logical =>
  and(ruleIs(logic, first, 'met'), ruleIs(logic, second, 'met'));

/** Two rules do not have the same state. */
export function statesDiffer(logic: Logic, first: string, second: string): Logical {
  const [one, other] = [found(logic, first), found(logic, second)];
  const apart = (left: Logical, right: Logical): Logical => or(and(left, not(right)), and(not(left), right));
  return and(
    logic.applies.possible,
    or(apart(one.certain, other.certain), apart(one.possible, other.possible)),
  );
}

/** The outcome says `at_least` this level, by its place on the ladder: of the lowest, that it is settled or more is called for. */
export function levelIsAtLeast(logic: Logic, level: number): Logical {
  const { raised } = logic.levels;
  const reached = lessOrSame(Math.max(level, 1), raised);
  return and(logic.applies.possible, level > 0 ? reached : or(reached, isSettled(logic)));
}

/** The outcome says that it `could_be` this level or a higher one. */
export const levelCouldBe = (logic: Logic, level: number): Logical =>
  and(logic.applies.possible, lessOrSame(level, couldBe(logic)));

const couldBe = ({ levels: { raised, could } }: Logic): Logical => highest([raised, could, 0]);

/** Nothing that is missing could change the level: what is surely called for is what could be. */
function isSettled(logic: Logic): Logical {
  const { raised, floor } = logic.levels;
  const most = couldBe(logic);
  const reaches = (level: Logical): Logical => not(less(highest([level, 0]), most));
  return and(logic.applies.certain, reaches(raised), reaches(floor));
}

function found({ rules }: Logic, name: string): Logic['rules'][number] {
  const rule = rules.find((each) => each.rule === name);
  if (!rule) throw new Error(`there is no rule ${name}`);
  return rule;
}
