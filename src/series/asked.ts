import type { SetWorld } from './judge.ts';
import type { Reader } from './reader.ts';
import type { SetAt } from './slot.ts';
import type { StandingWorld } from './standing.ts';

/** A question about one time, and all that it can be answered from. */
export interface Asked extends SetWorld, StandingWorld {
  readonly reader: Reader;
  /** The latest set; null before the first. */
  readonly present: SetAt | null;
  /** The sets that a look back can still reach, in the order of time, the present one last. */
  readonly sets: readonly SetAt[];
  /** The evaluation time in milliseconds; 0 when there is none. */
  readonly time: number;
}
