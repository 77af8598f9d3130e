import type { Present } from './bounds.ts';
import type { Value } from './read-observation.ts';
import type { Moment, Slot } from './slot.ts';
import type { Statement } from './standing.ts';

/** How one observation stands at the evaluation time. */
export interface Resolution {
  readonly state: Present['state'];
  /** Null when missing. */
  readonly value: Value | null;
  readonly known: boolean;
  /** What the value was taken from, or what says that there is none. */
  readonly slot: Slot | null;
  readonly moment: Moment | null;
  readonly statement: Statement | null;
  readonly instead: Present['instead'];
}

/** What there is when no value is: nothing was said, or why there is no value. */
export function missing(slot: Slot | null, moment: Moment | null): Resolution {
  const state = slot ? (insteadOf(slot) ?? 'missing') : 'missing';
  return { state, value: null, known: false, slot, moment: slot && moment, statement: null, instead: null };
}

/** What a slot says in place of a value; null when it has one. */
export const insteadOf = ({ state }: Slot): Present['instead'] => (state === 'value' ? null : state);
