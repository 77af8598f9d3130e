import { partAt, type Document } from '../../document/document.ts';

/** The reason for which a finding is meant so. */
export interface Accepted {
  readonly accepted: string;
  /** Which of the list, from 0. */
  readonly at: number;
  /** Whether it is the answer of the protocol that this one is based on. */
  readonly inherited: boolean;
}

/** The findings that a protocol answers, by their names. */
export function acceptedIn(document: Document): ReadonlyMap<string, Accepted> {
  const { node, keySpan } = partAt(document, ['findings']);
  const items = keySpan && node.kind === 'list' ? node.items : [];
  return new Map(
    items.flatMap((item, at) => {
      if (item.kind !== 'map') return [];
      const text = (key: string): string => {
        const value = item.entries.find((entry) => entry.key === key)?.value;
        return value?.kind === 'scalar' ? String(value.value) : '';
      };
      return [
        [text('finding'), { accepted: text('accepted'), at, inherited: item.inherited === true }] as const,
      ];
    }),
  );
}
