import { toPlain, type Document } from '../document/document.ts';

/** The protocols that a ward policy names, each with the edition that it states; what is no name or no number stands as it is written. */
export function askedEditions(document: Document): ReadonlyMap<unknown, unknown> {
  const { reads_with: all } = toPlain(document.root) as { reads_with?: unknown };
  const list = (Array.isArray(all) ? all : []) as ({ protocol?: unknown; edition?: unknown } | null)[];
  return new Map(list.map((each) => [each?.protocol, each?.edition]));
}
