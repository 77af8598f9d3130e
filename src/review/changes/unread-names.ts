import type { Document, Node } from '../../document/document.ts';
import { partAt } from '../../document/document.ts';
import { withoutPart } from '../../document/edit.ts';
import type { Path } from '../../problems/place.ts';

/**
 * The same protocol without the observations that are listed and that nothing names any more.
 *
 * When a clause is left out, its observation may be listed for nothing: that alone must not hide what the change does.
 */
export function withoutUnreadNames(document: Document): Document {
  const named = new Set<string>();
  if (document.root.kind !== 'map') return document;
  for (const { key, value } of document.root.entries) {
    if (key !== 'observations' && key !== 'standing') gather(value, named);
  }
  const unread = listed(document).filter(({ name }) => !named.has(name));
  // From the last to the first, so that leaving one out does not move the others.
  return unread.reverse().reduce((rest, { path }) => withoutPart(rest, path), document);
}

/** Every word of a part's keys and texts: names in conditions, in lists and in formulas. */
function gather(node: Node, words: Set<string>): void {
  if (node.kind === 'list') for (const item of node.items) gather(item, words);
  else if (node.kind === 'scalar')
    for (const word of String(node.value).match(/[a-z][a-z0-9_]*/g) ?? []) words.add(word);
  else {
    for (const { key, value } of node.entries) {
      words.add(key);
      gather(value, words);
    }
  }
}

function listed(document: Document): { name: string; path: Path }[] {
  const lists = [
    ['observations', 'needs'],
    ['observations', 'helps'],
  ].flatMap((path) => {
    const { node } = partAt(document, path);
    if (node.kind !== 'list') return [];
    return node.items.map((item, index) => ({
      name: item.kind === 'scalar' ? String(item.value) : '',
      path: [...path, index],
    }));
  });
  const standing = partAt(document, ['standing']);
  const facts = standing.keySpan && standing.node.kind === 'map' ? standing.node.entries : [];
  return [...lists, ...facts.map(({ key }) => ({ name: key, path: ['standing', key] }))];
}
