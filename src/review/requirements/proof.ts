import type { Requirement } from '../../protocol/requirements/requirement.ts';

/** What became of a requirement. It is true of the rules as written, not of patients. */
export type Proof = {
  readonly requirement: Requirement;
  /** How many groups of sets were looked into. */
  readonly looked: number;
} & (
  | {
      readonly verdict: 'proven';
      /** What was not left blank, with the worst set of each. */ readonly excepted: readonly Excepted[];
    }
  | { readonly verdict: 'refuted'; readonly example: Example }
  | { readonly verdict: 'not_settled'; readonly because: Because }
);

/** Why nobody knows. */
export type Because =
  /** No set is as it says where; so nothing is said of any. */
  | 'about_no_set'
  /** More groups of sets would have to be looked into than a question may take. */
  | 'too_large'
  /** It depends on earlier sets, and no series was found that shows it. */
  | 'earlier_sets'
  /** It reads an average over earlier sets, which may lie between two steps. */
  | 'average'
  /** Numbers could grow past what is exact. */
  | 'numbers_too_large'
  | 'cancelled';

/** A set or a series that breaks a requirement, or a pair of them, confirmed by the evaluator. */
export interface Example {
  /** Cases for `cases.yaml`, which expect what is said now. */
  readonly yaml: string;
  /** In a sentence. */
  readonly says: string;
}

/** An observation that was excepted by name. Null when nothing hides behind it either. */
export interface Excepted {
  readonly observation: string;
  readonly worst: Example | null;
}
