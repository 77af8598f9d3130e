import type { Asked } from './asked.ts';
import type { Span } from './ranges.ts';
import type { ReadLookBack } from './reader.ts';

/**
 * For how long a condition has held up to the present set, in milliseconds: surely (low), possibly (high).
 *
 * The run goes back over the sets of the window (t − over, t] while the condition holds in each and no two
 * neighbours are further apart than the longest gap; exactly so far apart is not too far. It ends at the
 * present set, not at the evaluation time.
 */
export function heldFor({ condition, over, longestGap }: ReadLookBack, asked: Asked): Span {
  const { sets, present } = asked;
  const held = { low: 0, high: 0 };
  if (!condition || !present) return held;
  let sure = true;
  let next = present.time;
  for (let index = sets.length - 1; index >= 0; index -= 1) {
    const set = sets[index];
    if (!set || set.time <= asked.time - over) break;
    if (longestGap !== null && next - set.time > longestGap) break;
    const verdict = condition(set, asked);
    if (verdict === 0) break;
    sure &&= verdict === 2;
    held.high = present.time - set.time;
    if (sure) held.low = held.high;
    next = set.time;
  }
  return held;
}
