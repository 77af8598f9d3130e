/** An outcome as a clinician reads it, part by part, in words, as plain data for a page. */
export interface Sheet {
  /** What was read with: the title, and its edition with enough of its digest to tell two editions apart. */
  readonly title: string;
  readonly edition: string;
  /** The time that was asked about, in words; null without one. */
  readonly at: string | null;
  /** Before everything: what is not used, and what is used and questioned. */
  readonly refused: readonly Said[];
  readonly questioned: readonly Said[];
  readonly level: SheetLevel;
  readonly gaps: SheetGaps;
  readonly why: readonly SheetWhy[];
  /** Not met, but that reassures nobody; taken back by an exception. */
  readonly notReassuring: readonly string[];
  readonly takenBack: readonly string[];
  readonly measures: readonly { readonly title: string; readonly value: string }[];
  /** What else is to be known of the values, under headings. */
  readonly facts: readonly { readonly heading: string; readonly items: readonly string[] }[];
  /** What would raise the level, the nearest first; null where that cannot be asked. */
  readonly raises: readonly SheetRaise[] | null;
  readonly stepDown: string | null;
  /** What the present set says, in the order in which it is taken. */
  readonly observed: readonly SheetObserved[];
  readonly caution: string;
}

/** A sentence about an observation, or about a limit. */
export interface Said {
  readonly observation: string;
  readonly title: string;
  readonly says: string;
}

export interface SheetLevel {
  readonly kind: 'not_for_patient' | 'not_settled' | 'at_least' | 'settled';
  readonly heading: string;
  /** Places on the ladder, lowest 0: what is reached, and what it could be. Null when there is none. */
  readonly reached: number | null;
  readonly could: number | null;
  /** All levels of the ladder by their titles, lowest first. */
  readonly ladder: readonly string[];
  /** `It could be as high as: …`, where it could be higher. */
  readonly couldBe: string | null;
  /** Why it is not settled, or not for this patient. */
  readonly reasons: readonly string[];
  readonly says: string | null;
  readonly doFirst: readonly string[];
  readonly tell: readonly string[];
  readonly byWhen: string | null;
  readonly noAnswer: string | null;
  readonly nextSet: string | null;
  readonly stepDown: string | null;
}

/** What is open, in the order in which to ask and take. */
export interface SheetGaps {
  readonly ask: readonly Gap[];
  readonly take: readonly Gap[];
  readonly missing: readonly Gap[];
  /** Tried without a value, or declined. */
  readonly again: readonly Gap[];
  readonly rough: readonly Gap[];
  readonly more: readonly Gap[];
  /** Numbers without a value, and why. */
  readonly noValue: readonly string[];
}

export interface Gap {
  readonly observation: string;
  readonly title: string;
  /** What which values would do. */
  readonly lines: readonly string[];
}

export interface SheetWhy {
  readonly rule: string;
  readonly title: string;
  /** The level that it calls for; null for a rule that only says. */
  readonly level: string | null;
  readonly says: string | null;
  readonly because: string | null;
  readonly decidedBy: readonly string[];
  readonly notes: readonly string[];
  readonly ask: readonly string[];
  readonly do: readonly string[];
}

export interface SheetRaise {
  readonly observation: string;
  readonly title: string;
  /** `3 mmHg lower, at 101 mmHg`; `newly confused`. */
  readonly change: string;
  /** `Call the doctor`; with `at least` where it would not be settled. */
  readonly level: string;
}

export interface SheetObserved {
  readonly observation: string;
  readonly title: string;
  readonly words: string;
  /** Whether there is a value. */
  readonly hasValue: boolean;
}
