import type { Body } from '../../editions/entry.ts';
import type { Ledger } from '../../editions/record.ts';
import type { Problem } from '../../problems/problem.ts';

/** What somebody decided, ready to be entered; or why it cannot be. Nothing is entered yet either way. */
export type Meant = MeantEntry | NotMeant;

export interface MeantEntry {
  readonly kind: 'meant';
  readonly body: Body;
  /** What is said once it is entered, and holds. */
  readonly said: (after: Ledger) => string;
}

export interface NotMeant {
  readonly kind: 'refused';
  /** Each at its place in the entry that would have been made; none where `why` says all. */
  readonly problems: readonly Problem[];
  readonly why: string;
}

/** Nothing is entered, for a reason that has no place in an entry. */
export const notMeant = (why: string): NotMeant => ({ kind: 'refused', problems: [], why });
