import type { Logic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';

/** Everything that is answered about rules, whether the protocol is for the patient, and the value of one measure. */
export const answersIn = ({ applies, rules, measures }: Logic, measure: string | null): Logical[] => [
  applies.certain,
  applies.possible,
  ...rules.flatMap(({ certain, possible, counts, could, explained, notReliable }) => [
    certain,
    possible,
    counts,
    could,
    explained.certain,
    explained.possible,
    notReliable,
  ]),
  ...measures.flatMap((each) =>
    each.measure === measure ? [each.low, each.high, each.sure, each.maybe] : [],
  ),
];
