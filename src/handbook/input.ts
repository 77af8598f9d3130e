import type { Compiled } from '../outcome/compile.ts';
import type { ApprovedEntry, EditionFile, NeededRole } from '../shape/generated/types.ts';
import type { Comparison } from '../review/compare/comparison.ts';
import type { Proof } from '../review/requirements/proof.ts';
import type { Teacher } from '../teach/teacher.ts';
import type { Ward } from '../ward/ward.ts';

/** What a handbook is made of. */
export interface HandbookInput {
  /** A checked protocol, or a ward policy with all that it reads with. */
  readonly reads: Compiled | Ward;
  /** What its cases tell. */
  readonly teacher: Teacher;
  readonly accepted: readonly AcceptedRisk[];
  /** What became of each requirement that it states, in the order of the file. */
  readonly proofs: readonly Proof[];
  /** What changes since the last sealed edition; null where there is none. */
  readonly changes: Comparison | null;
  /** Null: a draft, that nobody has sealed. */
  readonly edition: SealedState | null;
}

/** A sealed edition, with what the record says of it. */
export interface SealedState {
  readonly file: EditionFile;
  /** Null when there is no record that holds, or nobody may approve. */
  readonly approvals: {
    readonly counted: readonly Pick<ApprovedEntry, 'by' | 'role' | 'minute' | 'on'>[];
    readonly lacking: readonly Pick<NeededRole, 'role' | 'people'>[];
  } | null;
  /** In sentences: since when it is in force, or that it is not. */
  readonly inForce: string;
}

/** A risk that stays, with the reason for which it was accepted in the file itself. */
export interface AcceptedRisk {
  /** The title of the protocol. */
  readonly of: string;
  /** The rule, the case file or the part that it is about, in words. */
  readonly what: string;
  readonly because: string;
}
