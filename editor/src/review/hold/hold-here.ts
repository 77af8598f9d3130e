import type { StatedRequirement } from '../../../../src/index.ts';

export type { StatedRequirement };

/** What became of one requirement, in words. */
export interface ProofHere {
  readonly requirement: string;
  readonly verdict: 'proven' | 'refuted' | 'not_settled';
  /** Sentences, the first of which says it. */
  readonly says: readonly string[];
  /** Cases that show it, ready to be put below `cases:`; null where there is nothing to show. */
  readonly yaml: string | null;
  /** How many groups of sets were looked into. */
  readonly looked: number;
}

/** What a worker tells while it proves. */
export type ProvingSoFar =
  | {
      readonly kind: 'looking';
      readonly requirement: string;
      /** Groups of sets that were looked into, and how many are looked into at most. */
      readonly looked: number;
      readonly most: number;
    }
  | { readonly kind: 'proof'; readonly proof: ProofHere };
