/**
 * A sealed edition as the rooms are told of it. Its head is read off the lines of its text and not checked: a room shows an edition as
 * sealed once it has read the text itself.
 */
export interface SiteEdition {
  readonly edition: number;
  /** `sha256:…`; empty where its head says none. */
  readonly digest: string;
  readonly logic_digest: string;
  /** Year-month-day; empty where its head says none. */
  readonly sealed_on: string;
  readonly authors: readonly string[];
  /** The name under which problems cite it: `alder_wing/editions/1.yaml`. */
  readonly file: string;
  /** Where the page gets its text, byte for byte: `editions/alder_wing/1.yaml`. */
  readonly address: string;
}

/** The record of a protocol or ward policy as the rooms get it: what it says of this moment, and every entry in words. */
export interface SiteRecord {
  /** False: it does not hold, and nothing can be decided; `problems` say why. */
  readonly holds: boolean;
  readonly problems: readonly string[];
  /** The digest of its last entry, which a decision names: what was decided was decided on this record. Null: it has none yet. */
  readonly head: string | null;
  readonly in_force: SitePut | null;
  readonly withdrawn: SiteWithdrawn | null;
  /** Put in force from a later time on. */
  readonly planned: readonly SitePut[];
  /** A withdrawal from a later time on, the first of them. */
  readonly ends: SiteWithdrawn | null;
  /** Who may approve now; null: nobody is entered. */
  readonly approvers: SiteApprovers | null;
  /** How far each sealed edition is approved, the oldest first. */
  readonly editions: readonly SiteApprovals[];
  /** From the first. */
  readonly entries: readonly SiteEntry[];
}

export interface SitePut {
  readonly edition: number;
  readonly digest: string;
  /** RFC 3339. */
  readonly from: string;
  /** The same in words. */
  readonly since: string;
  readonly by: string;
  readonly because: string;
}

export interface SiteWithdrawn {
  readonly from: string;
  readonly since: string;
  readonly by: string;
  readonly because: string;
  readonly instead: string;
}

export interface SiteApprovers {
  /** Whether every entry is signed by those who make it. */
  readonly signing: boolean;
  readonly needs: readonly { readonly role: string; readonly people: number }[];
  /** `key`: the public part; null where none is stated. */
  readonly people: readonly {
    readonly name: string;
    readonly roles: readonly string[];
    readonly key: string | null;
  }[];
}

export interface SiteApprovals {
  readonly edition: number;
  /** Null: it is not as it was sealed, or this kit reads it otherwise. */
  readonly kind: 'protocol' | 'ward' | null;
  readonly approved: readonly {
    readonly by: string;
    readonly role: string;
    readonly minute: string;
    /** Year-month-day. */
    readonly on: string;
  }[];
  readonly lacking: readonly { readonly role: string; readonly people: number }[];
  readonly is_approved: boolean;
  /** How it stands, in a sentence. */
  readonly says: string;
}

export interface SiteEntry {
  readonly entry: number;
  readonly at: string;
  readonly says: string;
  readonly reasons: readonly string[];
  readonly signed_by: readonly string[];
}
