/** A published figure: what goes in, which measure it is about, and what was printed. */
export interface Figure {
  readonly id: string;
  /** Observations in the words and units of the dictionary. */
  readonly inputs: Readonly<Record<string, number | string | boolean>>;
  readonly measure: string;
  readonly expected: number;
  /** How far off a result may be: half of the last place that was printed; 0 for whole points. */
  readonly tolerance: number;
  /** The primary source, or the work in which the figure was read. */
  readonly source: string;
  /** Set while nobody has looked the figure up in the work itself. */
  readonly from_memory?: true;
}
