/** A part of a text. */
export interface Span {
  /** Offset of the first character. */
  readonly start: number;
  /** Offset after the last character. */
  readonly end: number;
}

/** The keys and positions that lead from a document's root to a part of it. `['rules', 0, 'when']` is `/rules/0/when`. */
export type Path = readonly (string | number)[];
