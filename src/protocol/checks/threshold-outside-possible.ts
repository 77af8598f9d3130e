import { possibleRange } from '../../vocabulary/possible-range.ts';
import { plainWords } from '../words.ts';
import { quantityWords } from './in-words.ts';
import { thresholdsOf, valueOf } from './thresholds.ts';
import type { Check } from './check.ts';

/** No observation is compared with a number that it can never have. */
export const thresholdOutsidePossible: Check = ({ protocol }, report) => {
  for (const { observation, value, path } of thresholdsOf(protocol)) {
    const { low, high } = possibleRange(observation);
    const [least, most] = [valueOf(low, observation), valueOf(high, observation)];
    if (value.compare(least) >= 0 && value.compare(most) <= 0) continue;
    report('threshold_outside_possible', path, {
      name: plainWords(observation.name),
      asked: quantityWords(value, observation.unit),
      low: quantityWords(least, null),
      high: quantityWords(most, observation.unit),
    });
  }
};
