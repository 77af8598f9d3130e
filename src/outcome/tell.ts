import type { Asker } from './sentences.ts';
import type { View } from './view.ts';

/** How a sentence about a comparison is put. */
export interface Telling {
  /** Whether the comparison holds here, or fails; null: nobody knows yet. */
  readonly holds: boolean | null;
  /** Whether it is asked to hold, or, inside `none`, to fail. */
  readonly wanted: boolean;
  /** Null leaves out what is asked for. */
  readonly asker: Asker | null;
}

/** Says one comparison in a view. */
export type Tell = (view: View, telling: Telling) => string;
