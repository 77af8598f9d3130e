import { possibleRange } from '../../vocabulary/possible-range.ts';
import { quantityWords } from './in-words.ts';
import { valueOf } from './thresholds.ts';
import type { Check } from './check.ts';

/** A curve that does not reach as far as its observation says what holds beyond; over a measure it always does. */
export const curveTooShort: Check = ({ protocol, file }, report) => {
  for (const { name, how, path } of protocol.measures.values()) {
    if (how.kind !== 'curve' || file.measures?.[name]?.curve?.beyond !== undefined) continue;
    const [first, last] = [how.points[0], how.points.at(-1)];
    const observation = how.of.kind === 'observation' ? protocol.observations.get(how.of.name) : undefined;
    if (!first || !last || how.of.kind === 'number') continue;
    const range = observation && possibleRange(observation);
    const low = observation && range && valueOf(range.low, observation);
    const high = observation && range && valueOf(range.high, observation);
    if (low && high && first.at.compare(low) <= 0 && last.at.compare(high) >= 0) continue;
    report('curve_too_short', [...path, 'curve'], {
      name: how.of.name,
      low: low ? quantityWords(low, null) : 'anything',
      high: high ? quantityWords(high, observation.unit) : 'anything',
      from: first.at.toString(),
      to: last.at.toString(),
    });
  }
};
