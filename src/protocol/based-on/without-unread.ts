import { valueIn, type Document, type Node } from '../../document/document.ts';
import { withoutPart } from '../../document/edit.ts';
import type { Path } from '../../problems/place.ts';
import type { WholeDocument } from './basis.ts';

/**
 * The same document without the parent's observations that nothing reads any more, because the rules that read them were withdrawn.
 * Nobody is asked to take what decides nothing. The same object when there are none.
 */
export function withoutUnread(whole: WholeDocument, read: ReadonlySet<string>): WholeDocument {
  if (!whole.basis) return whole;
  const unread = inheritedNames(whole).filter(({ name }) => !read.has(name));
  if (unread.length === 0) return whole;
  const rest = unread.reduceRight((each: Document, { path }) => withoutPart(each, path), whole as Document);
  return { ...whole, root: rest.root };
}

function inheritedNames({ root }: WholeDocument): { name: string; path: Path }[] {
  const observations = valueIn(root, 'observations');
  const at = (node: Node | null, path: Path): { name: string; path: Path }[] =>
    (node ? names(node) : []).map(({ name, step }) => ({ name, path: [...path, step] }));
  return [
    ...['needs', 'helps', 'declares'].flatMap((key) => at(valueIn(observations, key), ['observations', key])),
    ...at(valueIn(root, 'standing'), ['standing']),
  ];
}

function names(node: Node): { name: string; step: string | number }[] {
  if (node.kind === 'scalar') return [];
  if (node.kind === 'map')
    return node.entries.flatMap(({ key, value }) => (value.inherited ? [{ name: key, step: key }] : []));
  return node.items.flatMap((item, step) =>
    item.kind === 'scalar' && item.inherited ? [{ name: String(item.value), step }] : [],
  );
}
