/** One figure, what is aimed at, and whether it is reached. */
export interface Figure {
  readonly what: string;
  readonly found: string;
  /** Empty where nothing is aimed at. */
  readonly aim: string;
  /** Null where nothing is aimed at. */
  readonly reached: boolean | null;
}
