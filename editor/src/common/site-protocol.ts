/** A protocol, or a ward policy, as protocols.json holds it: text, which the worker checks. */
export interface SiteProtocol {
  readonly kind: 'protocol' | 'ward';
  readonly id: string;
  readonly title: string;
  readonly file: string;
  readonly text: string;
  readonly ladder: { readonly file: string; readonly text: string } | null;
}
