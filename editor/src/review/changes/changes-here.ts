import type { RegionParts } from '../../../../src/index.ts';

/** What changes from one side to the other, in words and as plain data. */
export interface ChangesHere {
  readonly verdict: 'nothing_changes' | 'changes' | 'not_settled';
  /** The verdict in a sentence. */
  readonly says: string;
  readonly over: readonly string[];
  readonly notSettled: readonly string[];
  readonly levels: readonly LevelChange[];
  /** That the levels told are not all; null when they are. */
  readonly notWhole: string | null;
  /** Of a ward policy: each of its protocols by itself. */
  readonly byProtocol: readonly {
    readonly protocol: string;
    readonly levels: readonly LevelChange[];
    readonly notWhole: string | null;
    readonly others: Others | null;
  }[];
  /** Changes of level of which no region is told, each by an example; null where that is too much to work out. */
  readonly others: Others | null;
  readonly rules: readonly RuleChange[];
  readonly renamed: readonly string[];
  readonly limits: readonly string[];
  readonly words: readonly WordChange[];
  readonly cases: readonly CaseChange[];
  /** How many cases were read on both sides. */
  readonly casesRead: number;
  /** Every set that shows a change, with the change that it shows: they can be walked through. */
  readonly witnesses: readonly { readonly of: string }[];
  readonly caution: string;
}

/** Sets that are told of alike: how many there are, which, and one of them. */
interface Region {
  readonly ground: string;
  readonly sets: RegionParts;
  /** Its example, by its place among `witnesses`. */
  readonly witness: number;
}

/** Changes of level that are told by an example alone. */
export interface Others {
  readonly complete: readonly LevelByExample[];
  /** Of sets in which something is missing, or could not be obtained. */
  readonly incomplete: readonly LevelByExample[];
  /** That these, and those of which regions are told, are proven to be all; null when they are not. */
  readonly whole: string | null;
  /** What is said before either list. */
  readonly says: { readonly complete: string; readonly incomplete: string };
}

export type LevelByExample = Pick<LevelChange, 'before' | 'after' | 'direction' | 'witness'>;

export interface LevelChange extends Region {
  readonly before: string;
  readonly after: string;
  readonly direction: 'higher' | 'lower' | 'otherwise';
  /** The rungs of the ladder, the lowest 0, where both sides have the same one; null where there is no level, or no same ladder. */
  readonly rungs: { readonly of: number; readonly from: number; readonly to: number } | null;
  readonly because: readonly string[];
  /** What happens on the day of the change to a patient in the middle of a series. */
  readonly course: readonly string[];
}

export interface RuleChange {
  readonly title: string;
  readonly rule: string;
  readonly protocol: string;
  /** What happened to it: `met by other sets`. */
  readonly is: string;
  readonly differences: readonly string[];
  readonly stands: readonly (Region & { readonly before: string; readonly after: string })[];
}

/** Something that changes no outcome. */
export interface WordChange {
  readonly kind: 'words' | 'advice' | 'response';
  readonly where: string;
  readonly before: string | null;
  readonly after: string | null;
}

export interface CaseChange {
  readonly name: string;
  readonly before: string;
  readonly after: string;
  readonly rules: readonly string[];
}
