import type { Path } from '../../problems/place.ts';

/** What a protocol does not tell by itself. */
export type FindingKind =
  | 'rule_never_met'
  | 'rules_always_together'
  | 'rule_inside_another'
  | 'level_never_reached'
  | 'threshold_changes_nothing'
  | 'cliff'
  | 'nothing_said'
  | 'advice_excluded'
  | 'ordinary_not_settled';

/** A set that shows a finding. */
export interface Witness {
  /** Its values: `systolic 90 mmHg and heart rate 80 /min`. */
  readonly words: string;
  /** A case, to be reviewed and pasted below `cases:`. It expects what the protocol says as it stands. */
  readonly yaml: string;
}

/** What one question came to, before it is known where the file stands on it. */
export type Found = {
  readonly kind: FindingKind;
  /** By which the file answers it; the same for as long as it says the same. */
  readonly name: string;
  /** The part of the protocol that it is about. */
  readonly path: Path;
} & (
  | {
      readonly is: 'found';
      /** For a nurse to judge. */
      readonly sentence: string;
      /** Empty where there is nothing to show: no set does it. Of a step, the sets on both sides. */
      readonly witnesses: readonly Witness[];
      /** Whether the author has to say that it is meant so. Without: it is told, and that is all. */
      readonly needsAnswer: boolean;
    }
  | { readonly is: 'not_settled'; readonly because: WhyOpen }
);

/** Why a question stays open: it takes earlier sets; or it has more parts than can be held. */
export type WhyOpen = 'earlier_sets' | 'too_large';

/** Something true of the rules as written, and where the file stands on it. */
export interface Finding {
  readonly kind: FindingKind;
  readonly name: string;
  readonly path: Path;
  /** Where it stands in the file, from 1. */
  readonly line: number;
  readonly sentence: string;
  readonly witnesses: readonly Witness[];
  readonly needsAnswer: boolean;
  /** The reason that the file gives; null when it gives none. */
  readonly accepted: string | null;
}

/** A question that was not settled, and the limit that it met. */
export interface OpenQuestion {
  readonly kind: FindingKind;
  readonly name: string;
  readonly path: Path;
  readonly line: number;
  readonly because: WhyOpen;
  /** The same in a sentence. */
  readonly sentence: string;
}
