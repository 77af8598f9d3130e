import { partAt, type Node } from '../../document/document.ts';
import { withEntry } from '../../document/edit.ts';
import type { Path } from '../../problems/place.ts';
import type { Comparison } from '../../protocol/protocol.ts';
import { comparisonsIn, conditionsOf } from '../../protocol/walk.ts';
import type { Change, ChangeKind } from './change.ts';
import { made, type Original } from './making.ts';

type NumberKey = 'below' | 'at_most' | 'above' | 'at_least';

/** The other side of the same number: whether the number itself counts. */
const boundary: Readonly<Record<NumberKey, NumberKey>> = {
  below: 'at_most',
  at_most: 'below',
  above: 'at_least',
  at_least: 'above',
};
/** What holds exactly when the first does not; and, where that key stands there already, what looks the same way as it. */
const direction: Readonly<Record<NumberKey, readonly [NumberKey, NumberKey]>> = {
  below: ['at_least', 'above'],
  at_most: ['above', 'at_least'],
  above: ['at_most', 'below'],
  at_least: ['below', 'at_most'],
};

/**
 * Each comparison flipped: of numbers, whether the number itself counts (below and at_most, above and at_least), and which way
 * it looks (below and at_least, at_most and above); of choices, the other choices; of known and unobtainable, the other
 * answer. The ends of between only move: both belong to it, and a step beyond an end is the end left out. Of several, each
 * choice is left out in turn instead, because it may be in together with its others.
 */
export function* flipChanges(original: Original): Generator<Change> {
  const { protocol } = original;
  for (const condition of conditionsOf(protocol)) {
    for (const each of comparisonsIn(condition)) {
      if (each.kind === 'compare') yield* ofNumber(each.path, original);
      else if (each.kind === 'one_of') yield* ofChoice(each, original);
      else yield* flipped('direction', each.path, String(each.path.at(-1)), text(yesNo(!each.is)), original);
    }
  }
  for (const { how } of protocol.measures.values()) {
    for (const part of how.kind === 'score' ? how.parts : []) {
      if (part.kind !== 'bands') continue;
      for (const [index, { to, included }] of part.bands.entries()) {
        const key = included ? 'at_most' : 'below';
        if (to) yield* renamed('boundary', [...part.path, index, key], boundary[key], original);
      }
    }
  }
}

function* ofNumber(path: Path, original: Original): Generator<Change> {
  const key = path.at(-1);
  if (typeof key !== 'string') return;
  const beside = partAt(original.document, path.slice(0, -1)).node;
  const free = (wanted: NumberKey): boolean =>
    beside.kind === 'map' && beside.entries.every((entry) => entry.key !== wanted);
  const turned = direction[key as NumberKey].find(free);
  if (free(boundary[key as NumberKey]))
    yield* renamed('boundary', path, boundary[key as NumberKey], original);
  if (turned) yield* renamed('direction', path, turned, original);
}

function renamed(kind: ChangeKind, path: Path, key: string, original: Original): Generator<Change> {
  return flipped(kind, path, key, partAt(original.document, path).node, original);
}

function* ofChoice(
  { observation: name, choices, path }: Extract<Comparison, { kind: 'one_of' }>,
  original: Original,
): Generator<Change> {
  const observation = original.protocol.observations.get(name);
  if (!observation || observation.kind === 'several') return;
  const others = observation.choices
    .map(({ choice }) => choice)
    .filter((choice) => !choices.includes(choice));
  const [only] = others;
  if (only === undefined) return;
  const key = others.length === 1 ? 'is' : 'one_of';
  const span = { start: 0, end: 0 };
  const value: Node =
    others.length === 1 ? text(only) : { kind: 'list', span, items: others.map((choice) => text(choice)) };
  yield* flipped('direction', path, key, value, original);
}

function* flipped(
  kind: ChangeKind,
  path: Path,
  key: string,
  value: Node,
  original: Original,
): Generator<Change> {
  const sameKey = key === path.at(-1);
  const from = wordsOf(partAt(original.document, path).node);
  const what = sameKey ? `${from} to ${wordsOf(value)}` : `${from} to ${key} ${wordsOf(value)}`;
  yield made(original, {
    kind,
    path,
    what,
    document: withEntry(original.document, path, key, value),
    after: [...path.slice(0, -1), key],
  });
}

const text = (value: string): Node => ({ kind: 'scalar', span: { start: 0, end: 0 }, value });
const yesNo = (is: boolean): string => (is ? 'yes' : 'no');

/** `90`, or `[voice, pain]`. */
function wordsOf(node: Node): string {
  if (node.kind === 'list') return `[${node.items.map(wordsOf).join(', ')}]`;
  if (node.kind !== 'scalar') return '';
  return typeof node.value === 'boolean' ? yesNo(node.value) : String(node.value);
}
