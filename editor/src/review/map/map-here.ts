import type { ChangedPlane } from '../../../../src/index.ts';

/** What the map is asked for. */
export interface MapAsked {
  readonly kind: 'map';
  /** The observations across and up; null: those that are looked at first. */
  readonly axes: readonly [string, string] | null;
  /** Of a ward policy: which of its protocols; null: the first that changes. */
  readonly protocol: string | null;
  /** Everything else is held as in this example of the comparison; null: at ordinary values. */
  readonly heldAs: number | null;
}

interface Named {
  readonly name: string;
  readonly title: string;
}

/** Both sides on one plane, laid over each other; or why there is none. */
export type MapHere =
  | {
      readonly kind: 'map';
      readonly plane: ChangedPlane;
      /** Where the example stands that is held, in whole steps; null at ordinary values. */
      readonly example: { readonly x: number; readonly y: number } | null;
      /** The observations that can be an axis on both sides. */
      readonly axes: readonly Named[];
      /** Of a ward policy: those of its protocols that both sides read with. */
      readonly protocols: readonly Named[];
      readonly protocol: string;
    }
  | { readonly kind: 'none'; readonly why: string };
