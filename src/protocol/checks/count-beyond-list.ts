import { conditionsIn, everyConditionOf } from '../walk.ts';
import type { Check } from './check.ts';

/** `at_least_of` does not ask for more than there are. */
export const countBeyondList: Check = ({ protocol }, report) => {
  for (const condition of everyConditionOf(protocol)) {
    for (const each of conditionsIn(condition)) {
      if (each.kind !== 'at_least_of' || each.count <= each.of.length) continue;
      report('count_beyond_list', [...each.path, 'count'], { count: each.count, of: each.of.length });
    }
  }
};
