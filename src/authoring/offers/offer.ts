/** What sort of thing a name or word is. */
export type OfferKind =
  | 'key'
  | 'comparison'
  | 'observation'
  | 'measure'
  | 'limit'
  | 'rule'
  | 'level'
  | 'choice'
  | 'unit'
  | 'source'
  | 'action'
  | 'fault'
  | 'protocol'
  | 'ladder'
  | 'word';

/** Something that can stand at a place. */
export interface Offer {
  readonly label: string;
  readonly what: OfferKind;
  /** What it is, sentence by sentence. */
  readonly says: readonly string[];
  /** What else people write for it, and its title: they find it too. */
  readonly alsoCalled?: readonly string[];
}
