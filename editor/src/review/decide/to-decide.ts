/** What somebody decided, as the server takes it. */
export interface ToDecide {
  readonly what: 'approve' | 'put_in_force' | 'withdraw';
  readonly id: string;
  /** The digest of the last entry that this page knows of. */
  readonly head: string | null;
  /** The edition that is meant, as this page shows it; null for a withdrawal. */
  readonly edition: { readonly edition: number; readonly digest: string } | null;
  /** By its name in the entry. */
  readonly typed: Readonly<Record<string, string>>;
}
