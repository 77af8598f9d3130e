import type { Logic } from '../logic/logic.ts';
import type { Logical } from '../logic/operators.ts';
import { stepsFor } from '../logic/used-steps.ts';
import { logicToEvaluator, type Evaluator } from '../targets/evaluator/logic-to-evaluator.ts';
import type { Read } from './view.ts';

/** What tells whether a protocol applies and how far up the ladder its answer is, in the results of one evaluator. */
export interface LevelReaders {
  readonly evaluator: Evaluator;
  readonly applies: { readonly certain: Read; readonly possible: Read };
  readonly levels: { readonly raised: Read; readonly could: Read; readonly floor: Read };
}

export function levelReaders({ applies, levels }: Logic, evaluator: Evaluator): LevelReaders {
  const reader = (logical: Logical): Read => evaluator.reader(logical);
  return {
    evaluator,
    applies: { certain: reader(applies.certain), possible: reader(applies.possible) },
    levels: { raised: reader(levels.raised), could: reader(levels.could), floor: reader(levels.floor) },
  };
}

/** The same with an evaluator of its own, that works out no step which the level does not depend on. */
export function levelAlone(logic: Logic): LevelReaders {
  const asked = [...Object.values(logic.applies), ...Object.values(logic.levels)];
  return levelReaders(logic, logicToEvaluator({ ...logic, steps: stepsFor(logic.steps, asked) }));
}
