import type { Compiled } from '../outcome/compile.ts';
import type { Ladder, Level, Protocol, Source } from '../protocol/protocol.ts';
import type { Requirements } from '../protocol/requirements/read-requirements.ts';
import type { Path } from '../problems/place.ts';
import type { SetVocabulary } from '../series/set-reading.ts';

/** A checked ward policy: several protocols that are read together, on one ladder. */
export interface Ward {
  readonly name: string;
  readonly edition: number;
  readonly title: string;
  readonly about: string | null;
  readonly ladder: Ladder;
  /** A name of the time zone database; null: the hours of the ladder are told as they stand. */
  readonly timeZone: string | null;
  readonly owners: readonly string[];
  readonly sources: ReadonlyMap<string, Source>;
  /**
   * In the order of the file. Each protocol as this ward reads with it: for the patients whom the ward's own condition leaves, and
   * with the faults of technique of all of them.
   */
  readonly members: readonly Compiled[];
  /** By the choice of escalation_plan. */
  readonly plans: ReadonlyMap<string, Plan>;
  /** Pairs of actions that must never be advised together, each with its place. */
  readonly neverTogether: readonly { readonly pair: readonly [string, string]; readonly path: Path }[];
  readonly hazards: Requirements['hazards'];
  /** What must hold for every possible set of every patient whom one of the protocols is for. */
  readonly requirements: Requirements['requirements'];
  /** What a set for this ward may name. */
  readonly vocabulary: SetVocabulary;
  /** What the ward itself reads: the escalation plan. It has no rules. */
  readonly own: Protocol;
  /** `sha256:` and 64 hexadecimal digits: of the policy, and of every protocol and the ladder that it reads with. */
  readonly digest: string;
  /** The same without the wording. */
  readonly logicDigest: string;
}

/** What an escalation plan changes: whom to tell and how soon, never the level that is shown. */
export interface Plan {
  readonly plan: string;
  readonly title: string;
  readonly says: string;
  readonly sources: readonly string[];
  /** By the name of the level; only what the plan puts in place of the ladder's own. */
  readonly levels: ReadonlyMap<
    string,
    Partial<Pick<Level, 'says' | 'tell' | 'respond' | 'reassess' | 'ifNoAnswer'>>
  >;
}
