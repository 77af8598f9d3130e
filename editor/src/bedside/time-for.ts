import type { SetInJson } from '../../../src/index.ts';
import { withOffset } from '../common/clock.ts';

/** The time of a set that is begun now: to the minute, and to the second where an earlier set has that minute already. */
export function timeFor(earlier: readonly SetInJson[]): string {
  const now = withOffset(new Date());
  const minute = now.replace(/^(.{16}):\d{2}/, '$1:00');
  return earlier.some(({ at }) => Date.parse(at) >= Date.parse(minute)) ? now : minute;
}
