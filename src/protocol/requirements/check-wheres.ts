import { betweenWrongWay } from '../checks/between-wrong-way.ts';
import type { Check } from '../checks/check.ts';
import { countBeyondList } from '../checks/count-beyond-list.ts';
import { thresholdOffStep } from '../checks/threshold-off-step.ts';
import { thresholdOutsidePossible } from '../checks/threshold-outside-possible.ts';
import { unitMismatch } from '../checks/unit-mismatch.ts';

/** What is asked of a condition wherever it stands. */
const ofConditions: readonly Check[] = [
  unitMismatch,
  thresholdOutsidePossible,
  thresholdOffStep,
  betweenWrongWay,
  countBeyondList,
];

/** Asks of the conditions of requirements what is asked of those of rules. Only what is found in a requirement is told. */
export const checkWheres: Check = (checked, report) => {
  const { protocol } = checked;
  const wheres = protocol.requirements.flatMap(({ where, from }) => (from === null && where ? [where] : []));
  if (wheres.length === 0) return;
  const partitions = new Map([['must_always', { name: 'must_always', of: wheres, path: ['must_always'] }]]);
  for (const check of ofConditions)
    check({ ...checked, protocol: { ...protocol, partitions } }, (...finding) => {
      if (finding[1][0] === 'must_always') report(...finding);
    });
};
