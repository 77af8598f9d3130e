import type { Asking } from './asking.ts';
import type { Partitioner } from './partitioner.ts';
import type { Side } from './side.ts';

/** What the parts of a comparison are worked out with. */
export interface Working {
  readonly asking: Asking;
  readonly partitioner: Partitioner;
  readonly sides: readonly [Side, Side];
  /** The dimensions whose sets are counted: all but look backs. */
  readonly over: ReadonlySet<number>;
  /** All complete sets; null when that is too much to work out. */
  readonly all: bigint | null;
}
