/** What was worked out about the drafts of a folder when a site of files was made of it. By the ids of the drafts. */
export interface StoredResults {
  /** The number of the kit that worked it out. */
  readonly kit: string;
  /** When, in words. */
  readonly made: string;
  readonly drafts: Readonly<Record<string, StoredDraft>>;
}

/** What is stored of one draft. It is true of these texts alone: where one of them differs, nothing of it may be shown as true. */
export interface StoredDraft {
  /** Over the texts that it is of, which `digestOfTexts` makes. */
  readonly digest: string;
  /** Every text that could have made a difference, with its digest. */
  readonly of: readonly StoredText[];
  readonly parts: readonly StoredPart[];
}

export interface StoredText {
  /** The name that problems cite it by. */
  readonly file: string;
  /** `sha256:…` of its UTF-8 bytes. */
  readonly digest: string;
}

/** The answer to one question: what came of it in a sentence, then what was found. */
export interface StoredPart {
  readonly title: string;
  readonly says: string;
  readonly lines: readonly StoredLine[];
}

export interface StoredLine {
  readonly says: string;
  /** The line of the draft that it is about, from 1; null where there is none. */
  readonly line: number | null;
  readonly more: readonly string[];
}
