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

/** A text under the name that its problems cite. */
export interface SiteText {
  readonly file: string;
  readonly text: string;
}
