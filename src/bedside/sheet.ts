/** An outcome as a clinician reads it, part by part, in words, as plain data: the page and the command line show the same. */
export interface Sheet {
  /** What was read with: the title, and its edition with enough of its digest to tell two editions apart. */
  readonly title: string;
  readonly edition: string;
  /** The time that was asked about, in words; null without one. */
  readonly at: string | null;
  /** Before everything: what is not used, and what is used and questioned. */
  readonly refused: readonly Said[];
  readonly questioned: readonly Said[];
  /** What limits what is done for this patient; told before the level. */
  readonly plan: { readonly title: string; readonly says: string } | null;
  readonly level: SheetLevel;
  /** On a ward: what each of its protocols calls for. Empty for one protocol. */
  readonly reads: readonly { readonly says: string; readonly otherwise: string | null }[];
  /** Faults of technique; null without any. */
  readonly faults: SheetFaults | null;
  readonly gaps: SheetGaps;
  readonly why: readonly SheetWhy[];
  /** Not met, but that reassures nobody; taken back by an exception. */
  readonly notReassuring: readonly string[];
  readonly takenBack: readonly string[];
  readonly measures: readonly SheetMeasure[];
  /** What else is to be known of the values, under headings. */
  readonly facts: readonly { readonly heading: string; readonly items: readonly string[] }[];
  readonly caution: string;
}

/** With what only the series itself can tell. */
export interface BedsideSheet extends Sheet {
  /** What would raise the level, the nearest first; null where that cannot be asked. */
  readonly raises: readonly SheetRaise[] | null;
  /** What the present set says, in the order in which it is taken. */
  readonly observed: readonly SheetObserved[];
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
  /** What it could be, wherever it is not settled: `It could be as high as …`. */
  readonly couldBe: string | null;
  /** What whoever is worried does, where there is no result. */
  readonly worried: string | null;
  /** Sentences that belong to the heading. */
  readonly notes: readonly string[];
  /** Why it is not settled, or not for this patient, each a point of a list. */
  readonly reasons: readonly string[];
  /** What to take and to ask, in short: `Take first`, `temperature and heart rate`. */
  readonly toGet: readonly { readonly label: string; readonly names: string }[];
  readonly says: string | null;
  readonly tell: readonly string[];
  readonly byWhen: string | null;
  readonly noAnswer: string | null;
  /** `Until they come`, and what to do until then. */
  readonly doHeading: string;
  readonly doFirst: readonly string[];
  readonly nextSet: string | null;
  readonly stepDown: string | null;
  /** How far a settled answer reaches; null when it is not settled. */
  readonly settledBy: string | null;
  /** What only helps and could still take it higher, each with its values and the level. */
  readonly mayRaise: readonly string[];
  /** That this is one reading alone; null on a ward. */
  readonly alone: string | null;
  /** Of a level of earlier sets that holds until it is agreed to step down: since when, and how far the sets have come. */
  readonly inForce: readonly string[];
  /** What the latest set calls for by itself, where a level of earlier sets still holds. */
  readonly latest: SheetLevel | null;
}

export interface SheetFaults {
  readonly heading: string;
  readonly faults: readonly {
    readonly title: string;
    readonly says: string;
    readonly do: readonly string[];
  }[];
  readonly openHeading: string;
  /** What was read, and where the truth may lie: `systolic pressure was read as 112 mmHg; the truth may be 96 to 112 mmHg`. */
  readonly open: readonly string[];
  /** Whether that could change what rules answer. */
  readonly matters: string;
}

/** What is open, in the order in which to ask and take. */
export interface SheetGaps {
  readonly heading: string;
  /** Only lists that hold something. */
  readonly lists: readonly GapList[];
  /** Numbers without a value, and why. */
  readonly noValueHeading: string;
  readonly noValue: readonly string[];
}

export interface GapList {
  readonly kind: 'ask' | 'take' | 'missing' | 'unobtainable' | 'declined' | 'rough' | 'more';
  readonly heading: string;
  readonly gaps: readonly Gap[];
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
  /** On a ward: the protocol that it stands in. */
  readonly of: string | null;
  /** Where it stands in a protocol that this one is based on. */
  readonly from: string | null;
  readonly says: string | null;
  readonly because: string | null;
  readonly decidedBy: readonly string[];
  readonly notes: readonly string[];
  readonly ask: readonly string[];
}

export interface SheetMeasure {
  readonly title: string;
  readonly value: string;
  /** False: it has no value, or none yet, and `value` says why; the title may then be a list. */
  readonly isKnown: boolean;
  /** On a ward: the protocol that works it out. */
  readonly of: string | null;
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
