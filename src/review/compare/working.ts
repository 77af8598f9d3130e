import type { Asking } from './asking.ts';
import type { EverySet } from './every-set.ts';
import type { Partitioner } from './partitioner.ts';
import type { Side } from './side.ts';

/** What the parts of a comparison are worked out with. */
export interface Working {
  readonly asking: Asking;
  readonly partitioner: Partitioner;
  /** Whether both sides are built alike, so that nothing can differ. */
  readonly alike: boolean;
  /** Whether one set can be read by both sides. */
  readonly canAsk: boolean;
  /** Of a policy whose protocols together would be too much, and where there is nothing to ask: null. */
  readonly every: EverySet | null;
  readonly sides: readonly [Side, Side];
  /** The dimensions whose sets are counted: all but look backs. */
  readonly over: ReadonlySet<number>;
  /** All complete sets; null when that is too much to work out. */
  readonly all: bigint | null;
}
