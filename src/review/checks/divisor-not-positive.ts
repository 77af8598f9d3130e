import { findSet } from '../find-set.ts';
import { observationsBehind } from '../observations-behind.ts';
import { setInWords } from '../set-in-words.ts';
import type { DeepCheck } from './deep-check.ts';

/** A divisor is above zero for every possible set. Contradictory sets are none. */
export const divisorNotPositive: DeepCheck = (checked, report) => {
  const { protocol, logic, evaluator } = checked;
  for (const { measure, path, certain, possible } of logic.divisors) {
    const [surely, maybe] = [evaluator.reader(certain), evaluator.reader(possible)];
    const reads = observationsBehind(logic, [certain, possible]);
    const found = findSet(checked, reads, (result) =>
      surely(result) === 1 ? 'yes' : maybe(result) === 0 ? 'no' : 'open',
    );
    if (found.kind === 'none') continue;
    const set =
      found.kind === 'found' ? setInWords(found.set, reads, protocol) : 'some set that is too far to seek';
    report('divisor_not_positive', [...path, 'formula'], { name: measure, set });
  }
};
