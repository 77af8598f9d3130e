import { partAt, type Document } from '../document/document.ts';

/** The reason for which something that was found is meant so. */
export interface Accepted {
  readonly accepted: string;
  /** Which of the list, from 0. */
  readonly at: number;
  /** Whether it is the answer of the protocol that this one is based on. */
  readonly inherited: boolean;
}

/** The reasons that stand in a list of a file, by what each is for: `reasonsUnder(cases, 'unguarded', 'change')`. */
export function reasonsUnder(document: Document, list: string, name: string): ReadonlyMap<string, Accepted> {
  const { node, keySpan } = partAt(document, [list]);
  const items = keySpan && node.kind === 'list' ? node.items : [];
  return new Map(
    items.flatMap((item, at) => {
      if (item.kind !== 'map') return [];
      const text = (key: string): string => {
        const value = item.entries.find((entry) => entry.key === key)?.value;
        return value?.kind === 'scalar' ? String(value.value) : '';
      };
      return [[text(name), { accepted: text('accepted'), at, inherited: item.inherited === true }] as const];
    }),
  );
}
