import type { Document } from '../../document/document.ts';
import type { Path } from '../../problems/place.ts';

/**
 * What is done by a change: a number moved one step, or to the next round number; whether a number itself counts; which way
 * a comparison looks; a clause or an exception left out; a level one higher or lower; points one more or one fewer.
 */
export type ChangeKind =
  'step' | 'round' | 'boundary' | 'direction' | 'clause' | 'exception' | 'level' | 'points';

/** The values of one observation for which a change of a score can matter; ends included, in steps. */
export type Within =
  | { readonly observation: string; readonly low: number; readonly high: number }
  | { readonly observation: string; readonly choice: string };

/** One small change of a protocol: what was done, where, and the protocol with it. */
export interface Change {
  readonly kind: ChangeKind;
  /**
   * Where and what, in the words of the file: `rule systolic_too_low, when systolic at_most: 90 to 91`. No two changes of a
   * protocol have the same; an answer in the case file names it.
   */
  readonly name: string;
  /** Where it is made. */
  readonly path: Path;
  /** Where the same part stands afterwards: another place when its key was changed. */
  readonly after: Path;
  /** The rule, the measure or the limit that it is made in; null outside of these. */
  readonly owner: string | null;
  /** Only for a change of a score over an observation. */
  readonly within: Within | null;
  readonly document: Document;
}
