import type { SiteEdition, SiteRecord } from '../../../src/index.ts';

/** A text under the name that its problems cite. */
export interface SiteText {
  readonly file: string;
  readonly text: string;
}

/** The text of a sealed edition. */
export interface SealedText extends SiteText {
  readonly edition: number;
}

/** A protocol, or a ward policy, as protocols.json holds it: text, which the worker checks. */
export interface SiteProtocol {
  readonly kind: 'protocol' | 'ward';
  readonly id: string;
  readonly title: string;
  readonly file: string;
  readonly text: string;
  readonly ladder: SiteText | null;
  /** The cases.yaml beside it; null when there is none. */
  readonly cases: SiteText | null;
  /** Of a ward policy with a record: what is in force, which a patient is read with in place of the text. */
  readonly in_force?: SiteInForce;
  /** Its sealed editions, the oldest first; absent when there is none. */
  readonly editions?: readonly SiteEdition[];
  /** The texts of some of them, which the page has fetched because a ward policy that is open names them. */
  readonly sealed?: readonly SealedText[];
  /** What its record says of this moment, and every entry; absent when it has none. */
  readonly record?: SiteRecord;
}

/** What is in force for a ward: a sealed edition, with what must be said of it; or nothing, and what applies instead. */
export type SiteInForce =
  | {
      readonly kind: 'policy';
      readonly file: string;
      readonly text: string;
      readonly says: string;
      readonly warnings: readonly string[];
    }
  | { readonly kind: 'none'; readonly says: readonly string[] };

/** All that protocols.json holds. */
export interface Site {
  /** Whether what is written here can be saved where it came from; else it can only be downloaded. */
  readonly saves: boolean;
  /** Whether what was worked out about the drafts stands beside them, in a site of files. */
  readonly stored?: boolean;
  readonly protocols: readonly SiteProtocol[];
  /** Every ladder that a new protocol could call on. */
  readonly ladders: readonly SiteText[];
}
