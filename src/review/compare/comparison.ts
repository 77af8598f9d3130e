/** One side of a comparison, as it is told. */
export interface ComparedSide {
  readonly kind: 'protocol' | 'ward';
  readonly name: string;
  readonly edition: number;
  readonly title: string;
  readonly digest: string;
  readonly logic_digest: string;
}

/** How much ground some sets cover. */
export interface Ground {
  /** Sets, as a whole number in digits; null when it was too much to work out. */
  readonly sets: string | null;
  /** Of all complete sets; null without `sets`. */
  readonly share: number | null;
}

/** One set, and what the evaluator says of it. */
export interface Witness {
  /** By observation, as a set in JSON gives it. */
  readonly set: Readonly<Record<string, unknown>>;
  readonly in_words: string;
  readonly before: string;
  readonly after: string;
  /** Whether the whole way of a set, from its text on, comes out as the comparison says. */
  readonly confirmed: boolean;
}

/** Sets that get another level. */
export interface ChangedLevel {
  /** The name of the level; null where no protocol is for these patients, or nothing is settled. */
  readonly from: string | null;
  readonly to: string | null;
  /** The same in words. */
  readonly before: string;
  readonly after: string;
  readonly direction: 'higher' | 'lower' | 'otherwise';
  /** What all of these sets have in common; then regions, in words. A set may be in several. Together with `more` they are all. */
  readonly in_common: readonly string[];
  readonly regions: readonly (readonly string[])[];
  /** How many further regions there are that are not told. */
  readonly more: number;
  /** Whether some of it holds only where earlier sets give the value that is named. */
  readonly earlier_sets: boolean;
  readonly ground: Ground;
  readonly witness: Witness;
  readonly because: readonly string[];
  readonly course: readonly string[];
}

/** Sets that meet a rule otherwise. */
export interface ChangedStand {
  readonly before: string;
  readonly after: string;
  readonly in_common: readonly string[];
  readonly regions: readonly (readonly string[])[];
  readonly more: number;
  readonly earlier_sets: boolean;
  readonly ground: Ground;
  readonly witness: Witness;
}

/** A change of level that some set has, told by an example. */
export type LevelByExample = Pick<ChangedLevel, 'before' | 'after' | 'direction' | 'witness'>;

/** The changes of level that no region tells. */
export interface OtherLevels {
  /** Of complete sets, where the search for regions grew too large to come upon them. */
  readonly complete: readonly LevelByExample[];
  /** Of sets in which something is missing, or could not be obtained. */
  readonly incomplete: readonly LevelByExample[];
  /** Whether these, and those of which regions are told, are proven to be all. */
  readonly whole: boolean;
}

export interface ChangedRule {
  readonly protocol: string;
  /** Its name after the change; before it, where it is gone. */
  readonly rule: string;
  readonly title: string;
  readonly renamed_from: string | null;
  readonly is: 'added' | 'removed' | 'asks_otherwise' | 'calls_otherwise';
  /** What is different about it, in words. */
  readonly differences: readonly string[];
  readonly stands: readonly ChangedStand[];
}

/** Something that changes no outcome: words, what is advised, or how a level is answered. */
export interface ChangedWords {
  readonly kind: 'words' | 'advice' | 'response';
  readonly where: string;
  readonly before: string | null;
  readonly after: string | null;
}

export interface ChangedCase {
  readonly case: string;
  readonly before: string;
  readonly after: string;
  readonly rules: readonly string[];
}

/**
 * What changes from one protocol, or ward policy, to another. `nothing_changes` is a proof about all that `over` names; it is true of the
 * rules as written, not of patients.
 */
export interface Comparison {
  readonly before: ComparedSide;
  readonly after: ComparedSide;
  readonly verdict: 'nothing_changes' | 'changes' | 'not_settled';
  /** The verdict in a sentence. */
  readonly says: string;
  readonly over: readonly string[];
  readonly not_settled: readonly string[];
  readonly all_sets: string | null;
  readonly levels: readonly ChangedLevel[];
  /** Whether these are all. Where not, the search grew too large: each is true, and there may be more sets. */
  readonly levels_whole: boolean;
  /** Null where both sides are built alike, or that is too much to work out. */
  readonly other_levels: OtherLevels | null;
  /** Of a ward policy: what each of its protocols by itself calls for otherwise. The level of the ward is the highest of theirs. */
  readonly by_protocol: readonly {
    readonly protocol: string;
    readonly levels: readonly ChangedLevel[];
    readonly levels_whole: boolean;
    readonly other_levels: OtherLevels | null;
  }[];
  readonly rules: readonly ChangedRule[];
  readonly renamed: readonly { readonly protocol: string; readonly from: string; readonly to: string }[];
  readonly limits: readonly {
    readonly limit: string;
    readonly before: string | null;
    readonly after: string | null;
  }[];
  readonly words: readonly ChangedWords[];
  readonly cases: readonly ChangedCase[];
  /** How many cases were read on both sides. */
  readonly cases_read: number;
  readonly caution: string;
}
