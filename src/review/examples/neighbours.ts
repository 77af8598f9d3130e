import { partAt, type Document, type Node } from '../../document/document.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import type { Given } from './given.ts';
import { numberNode } from './box-to-given.ts';
import { list, map, scalar, withKey } from './nodes.ts';

/**
 * What lies next to the cases of a file: each of them with one of some observations left out, not obtained, or moved to a value at which
 * an answer can change. In a series any of its sets is changed so. Then nothing at all.
 */
export function* neighbours(
  cases: Document,
  names: readonly string[],
  protocol: Protocol,
  cuts: ReadonlyMap<string, readonly number[]>,
): Generator<Given> {
  yield { key: 'given', node: map([]) };
  const variants = new Map(names.map((name) => [name, variantsOf(name, protocol, cuts)]));
  // First what is left out, of every case; values only after that: there are many of them.
  for (const way of ['lacks', 'values'] as const) {
    for (const given of givenIn(cases)) {
      for (const [name, { [way]: nodes }] of variants) yield* changed(given, name, nodes);
    }
  }
}

interface Variants {
  /** Null: left out. */
  readonly lacks: readonly (Node | null)[];
  readonly values: readonly Node[];
}

function variantsOf(
  name: string,
  { observations }: Protocol,
  cuts: ReadonlyMap<string, readonly number[]>,
): Variants {
  const lacks = [null, map([['unobtainable', scalar('yes')]])];
  const observation = observations.get(name);
  if (!observation || observation.kind === 'several') return { lacks, values: [] };
  if (observation.kind !== 'number')
    return { lacks, values: observation.choices.map(({ choice }) => scalar(choice)) };
  const steps = new Set((cuts.get(name) ?? []).flatMap((at) => [at - 1, at]));
  return { lacks, values: [...steps].map((each) => numberNode(each, observation)) };
}

/** What each case of a file gives. */
function givenIn(cases: Document): Given[] {
  const { node } = partAt(cases, ['cases']);
  const items = node.kind === 'list' ? node.items : [];
  return items.flatMap((item) =>
    item.kind === 'map'
      ? item.entries.flatMap(({ key, value }): Given[] =>
          (key === 'given' || key === 'series') && value.kind === 'map' ? [{ key, node: value }] : [],
        )
      : [],
  );
}

function* changed(given: Given, name: string, values: readonly (Node | null)[]): Generator<Given> {
  const sets = given.node.entries.find(({ key }) => key === 'sets')?.value;
  for (const value of values) {
    if (sets?.kind !== 'list') {
      yield { ...given, node: withKey(given.node, name, value) };
      continue;
    }
    for (const [index, set] of sets.items.entries()) {
      if (set.kind !== 'map') continue;
      const others: Node[] = sets.items.map((each, at) => (at === index ? withKey(set, name, value) : each));
      yield { ...given, node: withKey(given.node, 'sets', list(others)) };
    }
  }
}
