import type { Remark, Taken } from './bounds.ts';
import type { Doubt, Span } from './ranges.ts';
import type { Observed } from './series.ts';
import type { Value } from './read-observation.ts';

/** When something was said. */
export interface Moment {
  /** In milliseconds; 0 for a set without a time. */
  readonly time: number;
  readonly at: number | null;
  /** As written. */
  readonly text: string | null;
}

/** What one set says of one observation, and, once the set has been checked, what that counts as. */
export interface Slot extends Value {
  /** More than one when they contradict each other. */
  said: readonly Observed[];
  state: 'value' | 'refused' | 'unobtainable' | 'declined';
  low: number;
  high: number;
  asRead: Span | null;
  /** The faults of technique that made it a range. */
  faults: string[] | null;
  picked: readonly number[];
  /** Whether anybody said that it could not be obtained. */
  unobtainable: boolean;
  taken: Taken | null;
  refused: Remark[] | null;
  questioned: Remark[] | null;
}

/** Everything that was said at one instant. */
export interface SetAt extends Moment {
  text: string | null;
  /** By the observation's index. */
  readonly slots: (Slot | undefined)[];
  /** Groups of which something is said by an observation that the protocol does not read: by a value, or otherwise. */
  foreign: { readonly group: number; readonly byValue: boolean }[] | null;
  /** The age with which its values were checked; null when unknown. */
  age: Span | null;
  /** The same without an earlier age that stands in. */
  sureAge: Span | null;
  /** How far its faults of technique may make each observation read wrong, given or not, by its name. */
  readonly doubts: Map<string, Doubt>;
  checked: boolean;
  /** Whether something is to be told of one of its values. */
  remarked: boolean;
}

/** What a set says, and when. */
export interface Said {
  readonly slot: Slot;
  readonly moment: Moment;
}

/** Whether a slot is a statement: a value, or one that was refused, after which nobody can tell what holds. */
export const states = ({ state }: Slot): boolean => state === 'value' || state === 'refused';
