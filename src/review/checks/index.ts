import { actionsExclude } from './actions-exclude.ts';
import { comparisonFixed } from './comparison-fixed.ts';
import type { DeepCheck } from './deep-check.ts';
import { divisorNotPositive } from './divisor-not-positive.ts';
import { partitionHolds } from './partition.ts';
import { unlessReachesLowest } from './unless-reaches-lowest.ts';

/** Every check that asks about all possible sets. To add one: a file here, and a line in this list. */
export const deepChecks: readonly DeepCheck[] = [
  comparisonFixed,
  divisorNotPositive,
  partitionHolds,
  unlessReachesLowest,
  actionsExclude,
];
