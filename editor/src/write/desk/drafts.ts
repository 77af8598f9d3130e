import type { Part, Texts } from '../parts.ts';

/**
 * A draft as this browser keeps it: texts that somebody writes, with what stood on disk when they were begun. What is observed is never
 * in it: a case is written for a made-up patient.
 */
export interface Draft {
  readonly texts: Texts;
  /** The texts that were opened; null where there was no file yet. */
  readonly from: Readonly<Record<Part, string | null>>;
}

const prefix = 'vitalwright.draft.';

/** The draft of a protocol; null when there is none, or none that can be read. */
export function readDraft(id: string): Draft | null {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(prefix + id) ?? 'null');
    return isDraft(kept) ? kept : null;
  } catch {
    return null;
  }
}

/** Keeps a draft. False when the browser does not let the page keep it: that must be told. */
export function keepDraft(id: string, draft: Draft): boolean {
  try {
    localStorage.setItem(prefix + id, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

export function dropDraft(id: string): void {
  try {
    localStorage.removeItem(prefix + id);
  } catch {
    // A browser that keeps nothing has nothing to drop.
  }
}

/** The protocols of which there is a draft in this browser, by their ids. */
export function draftIds(): string[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix))
      .map((key) => key.slice(prefix.length))
      .toSorted();
  } catch {
    return [];
  }
}

function isDraft(kept: unknown): kept is Draft {
  if (typeof kept !== 'object' || kept === null) return false;
  const { texts, from } = kept as Partial<Record<'texts' | 'from', Partial<Record<Part, unknown>>>>;
  const isText = (text: unknown): boolean => typeof text === 'string';
  return (
    isText(texts?.protocol) &&
    isText(texts?.cases) &&
    [from?.protocol, from?.cases].every((text) => text === null || isText(text))
  );
}
