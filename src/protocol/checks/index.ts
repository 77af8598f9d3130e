import { bandsNotInOrder } from './bands-not-in-order.ts';
import { betweenWrongWay } from './between-wrong-way.ts';
import type { Check } from './check.ts';
import { countBeyondList } from './count-beyond-list.ts';
import { curveNotRising } from './curve-not-rising.ts';
import { curveOfQuotient } from './curve-of-quotient.ts';
import { curveTooShort } from './curve-too-short.ts';
import { explainedLevel } from './explained-level.ts';
import { knownSilences } from './known-silences.ts';
import { lookBackCondition } from './look-back-condition.ts';
import { observationUnused } from './observation-unused.ts';
import { reviewDate } from './review-date.ts';
import { ruleNotHere } from './rule-not-here.ts';
import { ruleSaysNothing } from './rule-says-nothing.ts';
import { ruleWithoutSource } from './rule-without-source.ts';
import { thresholdOffStep } from './threshold-off-step.ts';
import { thresholdOutsidePossible } from './threshold-outside-possible.ts';
import { unitMismatch } from './unit-mismatch.ts';

/** Every check that needs only the protocol itself. To add one: a file here, and a line in this list. */
export const checks: readonly Check[] = [
  unitMismatch,
  thresholdOutsidePossible,
  thresholdOffStep,
  betweenWrongWay,
  countBeyondList,
  bandsNotInOrder,
  curveNotRising,
  curveTooShort,
  curveOfQuotient,
  lookBackCondition,
  ruleNotHere,
  knownSilences,
  ruleSaysNothing,
  ruleWithoutSource,
  explainedLevel,
  observationUnused,
  reviewDate,
];
