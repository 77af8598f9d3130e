import { stepName, type Logic } from '../logic/logic.ts';
import type { Condition } from '../protocol/protocol.ts';
import type { Evaluator } from '../targets/evaluator/logic-to-evaluator.ts';
import type { Read } from './view.ts';

/** How a condition stands over all sets that are still possible. */
export interface ReadTruth {
  readonly certain: Read;
  readonly possible: Read;
}

export interface ConditionReaders {
  of(condition: Condition): ReadTruth;
}

/** Finds the answers of conditions in a result, each looked up once. */
export function conditionReaders(logic: Logic, evaluator: Evaluator): ConditionReaders {
  const known = new Map<Condition, ReadTruth>();
  return {
    of(condition) {
      const before = known.get(condition);
      if (before) return before;
      const path = stepName(condition.path);
      const truth = logic.conditions.get(path);
      if (!truth) throw new Error(`no condition stands at ${path}`);
      const made = { certain: evaluator.reader(truth.certain), possible: evaluator.reader(truth.possible) };
      known.set(condition, made);
      return made;
    },
  };
}
