import type { Logical } from '../../logic/operators.ts';
import type { Diagram, Diagrams } from '../diagrams/diagrams.ts';
import type { LogicDiagrams } from '../diagrams/logic-to-diagrams.ts';
import type { RuleHere } from './rule-pairs.ts';

/** How a rule stands, as one number each. That its protocol is not for the patient says the same as that it is not met. */
const codes = {
  not_met: 0,
  not_reliable: 1,
  undecided: 2,
  may_be_explained: 3,
  met: 4,
  explained: 5,
} as const;

/** How a rule stands as a function of the set, in codes. */
export function standDiagram({ member, rule }: RuleHere, diagrams: LogicDiagrams, store: Diagrams): Diagram {
  const found = member.logic.rules.find((each) => each.rule === rule.name);
  if (!found) return store.leaf(codes.not_met);
  const choose = (truth: Logical, first: Diagram, second: Diagram): Diagram =>
    store.choose(diagrams.of(truth), first, second);
  const leaf = (code: keyof typeof codes): Diagram => store.leaf(codes[code]);
  const met = choose(found.explained.certain, leaf('explained'), leaf('met'));
  const undecided = choose(found.explained.certain, leaf('may_be_explained'), leaf('undecided'));
  const not = choose(found.notReliable, leaf('not_reliable'), leaf('not_met'));
  const stands = choose(found.certain, met, choose(found.possible, undecided, not));
  return choose(member.logic.applies.possible, stands, leaf('not_met'));
}
