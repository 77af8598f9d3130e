/** A text under the name that its problems cite. */
export interface SiteText {
  readonly file: string;
  readonly text: string;
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
}

/** All that protocols.json holds. */
export interface Site {
  /** Whether what is written here can be saved where it came from; else it can only be downloaded. */
  readonly saves: boolean;
  readonly protocols: readonly SiteProtocol[];
  /** Every ladder that a new protocol could call on. */
  readonly ladders: readonly SiteText[];
}
