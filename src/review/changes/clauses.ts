import { partAt, type Document, type MapEntry } from '../../document/document.ts';
import { withoutPart } from '../../document/edit.ts';
import type { Path } from '../../problems/place.ts';
import type { Condition } from '../../protocol/protocol.ts';
import { conditionsIn, conditionsOf } from '../../protocol/walk.ts';
import type { Change } from './change.ts';
import { made, type Original } from './making.ts';
import { withoutUnreadNames } from './unread-names.ts';

/**
 * Each clause left out while others stay: items of a list of conditions, names and comparisons that stand side by side, choices
 * of one_of, entries of choose. What a protocol applies to, where it has one clause only, is left out whole.
 */
export function* clauseChanges(original: Original): Generator<Change> {
  const { document, protocol } = original;
  const paths = conditionsOf(protocol).flatMap((condition) =>
    [...conditionsIn(condition)].flatMap((each) => clausesOf(each, document)),
  );
  if (protocol.applies && !paths.some(([first]) => first === 'applies_when')) paths.push(['applies_when']);
  for (const { path, how } of protocol.measures.values()) {
    if (how.kind !== 'choose') continue;
    how.entries.forEach(({ when }, index) => {
      if (when) paths.push([...path, 'choose', index]);
    });
  }
  for (const path of paths) yield leftOut('clause', path, original);
}

/** Each exception left out: unless, explained_by, and what makes a rule or a measure not reliable. */
export function* exceptionChanges(original: Original): Generator<Change> {
  const { rules, measures } = original.protocol;
  const paths = [
    ...rules.flatMap(({ path, unless, explainedBy, notReliableWhen }) => [
      ...(unless ? [[...path, 'unless']] : []),
      ...(explainedBy ? [[...path, 'explained_by']] : []),
      ...(notReliableWhen ? [[...path, 'not_reliable_when']] : []),
    ]),
    ...[...measures.values()].flatMap(({ path, notReliableWhen }) =>
      notReliableWhen ? [[...path, 'not_reliable_when']] : [],
    ),
  ];
  for (const path of paths) yield leftOut('exception', path, original);
}

function leftOut(kind: 'clause' | 'exception', path: Path, original: Original): Change {
  const said = partAt(original.document, path).node;
  const which = kind === 'clause' && said.kind === 'scalar' ? `${String(said.value)} left out` : 'left out';
  const document = withoutUnreadNames(withoutPart(original.document, path));
  return made(original, { kind, path, what: which, document });
}

/** The parts of a condition that can be left out while others stay. */
function clausesOf(condition: Condition, document: Document): Path[] {
  if (condition.kind === 'one_of' && condition.path.at(-1) === 'one_of' && condition.choices.length > 1)
    return condition.choices.map((_, index) => [...condition.path, index]);
  if (!('of' in condition)) return [];
  const path = condition.kind === 'at_least_of' ? [...condition.path, 'of'] : condition.path;
  const { node } = partAt(document, path);
  if (node.kind === 'list')
    return node.items.length > 1 ? node.items.map((_, index) => [...path, index]) : [];
  if (node.kind !== 'map') return [];
  const whole = node.entries.length > 1 ? node.entries.map(({ key }) => [...path, key]) : [];
  return [...whole, ...node.entries.flatMap((entry) => comparisonsBeside(entry, path))];
}

const nested: ReadonlySet<string> = new Set(['all', 'any', 'none', 'at_least_of', 'rule']);

/** `{ systolic: { above: 100, below: 140 } }` is two clauses. */
function comparisonsBeside({ key, value }: MapEntry, path: Path): Path[] {
  if (nested.has(key) || value.kind !== 'map') return [];
  const keys = value.entries.map((entry) => entry.key).filter((each) => each !== 'accepted');
  return keys.length > 1 ? keys.map((each) => [...path, key, each]) : [];
}
