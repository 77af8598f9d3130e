import type { Logic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';

/** Everything that is answered about rules, and whether the protocol is for the patient. */
export const answersIn = ({ applies, rules }: Logic): Logical[] => [
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
];
