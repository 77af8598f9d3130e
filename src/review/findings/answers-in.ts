import type { Logic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';

/** Whose answers are asked: these rules, and the value of one measure where it is named. */
export interface AskedAnswers {
  readonly rules: ReadonlySet<string>;
  readonly measure: string | null;
}

/** Whether the protocol is for the patient, and everything that is answered about some rules and a measure. */
export const answersIn = ({ applies, rules, measures }: Logic, asked: AskedAnswers): Logical[] => [
  applies.certain,
  applies.possible,
  ...rules.flatMap(({ rule, certain, possible, counts, could, explained, notReliable }) =>
    asked.rules.has(rule)
      ? [certain, possible, counts, could, explained.certain, explained.possible, notReliable]
      : [],
  ),
  ...measures.flatMap((each) =>
    each.measure === asked.measure ? [each.low, each.high, each.sure, each.maybe] : [],
  ),
];
