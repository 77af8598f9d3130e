/** Something of the draft that somebody should look at, with the line that it stands in. */
export interface LooseEnd {
  readonly key: string;
  readonly kind: 'finding' | 'open' | 'unguarded';
  /** What it is counted among: `Cliffs: …`. */
  readonly heading: string;
  readonly line: number;
  readonly says: string;
  /** What shows it: sets in words, or why there is none. */
  readonly shown: readonly string[];
  /** A case that would settle or notice it; null where there is none. */
  readonly yaml: string | null;
  /** The reason that the files give for leaving it so; null without one. */
  readonly accepted: string | null;
  /** Whether somebody has to answer it, and nobody has. */
  readonly isOpen: boolean;
}

/** What was found, and sentences about what could not be asked. */
export interface LooseEnds {
  readonly ends: readonly LooseEnd[];
  readonly problems: readonly string[];
}

/** What a worker tells while it looks for unguarded changes. */
export interface LookedSoFar {
  readonly looked: number;
  readonly of: number;
  readonly ends: readonly LooseEnd[];
}
