import { valueIn, type ListNode, type MapEntry, type MapNode, type Node } from '../../document/document.ts';
import { inheritEntry, type Places } from './inherit.ts';

/** What stands in a protocol's own file alone. */
const own: ReadonlySet<string> = new Set([
  'protocol',
  'edition',
  'title',
  'about',
  'based_on',
  'ladder',
  'review_by',
  'owners',
]);

/** The root of a protocol with its parent's parts worked in: the parent's come first, then those of the file itself. */
export function mergedRoot(parent: MapNode, child: MapNode, places: Places): MapNode {
  const shared = (root: MapNode): MapNode => ({
    ...root,
    entries: root.entries.filter(({ key }) => !own.has(key)),
  });
  const mine = child.entries.filter(({ key }) => own.has(key));
  const changes = mapIn(child, 'based_on');
  const below = changed(shared(parent), changes, places);
  return { ...child, entries: [...mine, ...together(below, shared(child)).entries] };
}

/** The parent's parts in their new places: without the rules that are withdrawn, with the other values of limits. */
function changed(parent: MapNode, changes: MapNode | null, places: Places): MapNode {
  const withdrawn = new Set((listIn(changes, 'withdraws')?.items ?? []).map((each) => wordIn(each, 'rule')));
  const values = mapIn(changes, 'limits');
  const entries = parent.entries.map((entry): MapEntry => {
    const { key, keySpan, value } = inheritEntry(entry, places);
    if (key === 'rules' && value.kind === 'list') {
      const items = value.items.filter((rule) => !withdrawn.has(wordIn(rule, 'rule')));
      return { key, keySpan, value: { ...value, items } };
    }
    if (key !== 'limits' || value.kind !== 'map' || !values) return { key, keySpan, value };
    return {
      key,
      keySpan,
      value: { ...value, entries: value.entries.map((limit) => revalued(limit, values)) },
    };
  });
  return { ...parent, entries };
}

/** A limit with the value, and the sources, that the changes state for it; then it stands where they state them. */
function revalued(limit: MapEntry, values: MapNode): MapEntry {
  const change = values.entries.find(({ key }) => key === limit.key);
  if (limit.value.kind !== 'map' || change?.value.kind !== 'map') return limit;
  const stated = change.value.entries.filter(({ key }) => key === 'value' || key === 'source');
  const kept = limit.value.entries.filter(({ key }) => !stated.some((each) => each.key === key));
  const value: MapNode = { kind: 'map', span: change.value.span, entries: [...kept, ...stated] };
  return { key: limit.key, keySpan: change.keySpan, value };
}

/** Two maps as one; what stands in both is put together in turn. */
function together(below: MapNode, above: MapNode): MapNode {
  const rest = above.entries.filter(({ key }) => !below.entries.some((each) => each.key === key));
  const entries = below.entries.map((entry): MapEntry => {
    const over = above.entries.find(({ key }) => key === entry.key);
    return over ? { ...over, value: both(entry, over) } : entry;
  });
  return { kind: 'map', span: above.span, entries: [...entries, ...rest] };
}

function both({ key, value: below }: MapEntry, { keySpan, value: above }: MapEntry): Node {
  const { span } = above;
  if (key === 'applies_when' || key === 'ordinary') {
    const all: ListNode = { kind: 'list', span, items: [below, above] };
    return { kind: 'map', span, entries: [{ key: 'all', keySpan, value: all }] };
  }
  if (below.kind === 'map' && above.kind === 'map') return together(below, above);
  if (below.kind === 'list' && above.kind === 'list')
    return { kind: 'list', span, items: [...below.items, ...above.items] };
  return above;
}

function mapIn(node: Node | null, key: string): MapNode | null {
  const found = valueIn(node, key);
  return found?.kind === 'map' ? found : null;
}

function listIn(node: Node | null, key: string): ListNode | null {
  const found = valueIn(node, key);
  return found?.kind === 'list' ? found : null;
}

function wordIn(node: Node, key: string): string {
  const found = valueIn(node, key);
  return found?.kind === 'scalar' ? String(found.value) : '';
}
