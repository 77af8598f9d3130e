import type { Document } from '../document/document.ts';
import { textToDocument } from '../document/text-to-document.ts';
import type { Problem } from '../problems/problem.ts';
import { checkShape } from './check-shape.ts';
import type { Files, Kind } from './files.ts';

/** A file whose text and shape are right, or null with every problem of both. */
export interface ReadFile<K extends Kind> {
  readonly value: Files[K] | null;
  readonly document: Document | null;
  readonly problems: readonly Problem[];
}

/**
 * Reads a text as a kind of file. Where the text has faults after which the rest can still be looked at, the problems of its
 * shape come with them; the value is null all the same.
 */
export function textToFile<K extends Kind>(kind: K, file: string, text: string): ReadFile<K> {
  const read = textToDocument(file, text);
  if (!read.draft) return { value: null, document: null, problems: read.problems };
  const shape = checkShape(kind, read.draft);
  const told = new Set(read.problems.map(place));
  const problems = [...read.problems, ...shape.problems.filter((problem) => !told.has(place(problem)))].sort(
    (left, right) => left.line - right.line || left.column - right.column,
  );
  return { value: problems.length === 0 ? shape.value : null, document: read.document, problems };
}

/** What is wrong with the text at a place is reason enough for what is wrong with its shape there. */
const place = ({ line, column }: Problem): string => `${line}:${column}`;
