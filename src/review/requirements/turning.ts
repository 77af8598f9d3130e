import type { Box } from './box.ts';
import type { Second } from './enter.ts';
import type { Node, Program } from './program.ts';
import type { Known } from './twin.ts';

/** What would have to be known of a node: its value, that it does not fall, or that it does not rise. */
export type Wanted = 'value' | 'rises' | 'falls';

const bits: Readonly<Record<Wanted, number>> = { value: 1, rises: 2, falls: 4 };

/** How often each variable stands where something is open that is wanted of some nodes. */
export function turning(
  goals: readonly (readonly [number, Wanted])[],
  { nodes }: Program,
  known: Known,
  { box, seconds }: { readonly box: Box; readonly seconds: ReadonlyMap<number, Second> },
): ReadonlyMap<number, number> {
  const wants = new Uint8Array(nodes.length);
  for (const [place, wanted] of goals) wants[place] = (wants[place] as number) | bits[wanted];
  const hits = new Map<number, number>();
  const hit = (variable: number): void => {
    if (box.low[variable] !== box.high[variable]) hits.set(variable, (hits.get(variable) ?? 0) + 1);
  };
  for (let place = nodes.length - 1; place >= 0; place -= 1) {
    const want = wants[place] as number;
    const node = nodes[place] as Node;
    if (want === 0 || node.constant !== null) continue;
    const want2 = still(want, place, known);
    if (want2 === 0) continue;
    if (node.leaf) {
      const { variable, blank } = node.leaf;
      hit(variable);
      const second = seconds.get(variable);
      if (second?.kind === 'as') hit(second.variable);
      if (blank) hit(blank.by);
      continue;
    }
    for (const wanted of ['value', 'rises', 'falls'] as const)
      if (want2 & bits[wanted])
        for (const [part, of] of wantedOf(node, place, wanted, known))
          wants[part] = (wants[part] as number) | bits[of];
  }
  return hits;
}

/** What of this is not known yet. */
function still(
  want: number,
  place: number,
  { low, high, secondLow, secondHigh, rises, falls }: Known,
): number {
  const fixed = low[place] === high[place] && secondLow[place] === secondHigh[place];
  return (
    (fixed ? 0 : want & bits.value) |
    (rises[place] ? 0 : want & bits.rises) |
    (falls[place] ? 0 : want & bits.falls)
  );
}

type Want = readonly [number, Wanted];

const other: Readonly<Record<Wanted, Wanted>> = { value: 'value', rises: 'falls', falls: 'rises' };

function wantedOf({ kind, parts }: Node, place: number, wanted: Wanted, known: Known): readonly Want[] {
  const [x, y] = parts as [number, number];
  switch (kind) {
    case 'add':
      return parts.map((part) => [part, wanted]);
    case 'less':
      return [
        [x, wanted],
        [y, other[wanted]],
      ];
    case 'below':
    case 'at_most':
      return [
        [x, other[wanted]],
        [y, wanted],
      ];
    case 'not':
      return [[x, other[wanted]]];
    case 'times':
      return [
        [x, 'value'],
        [y, 'value'],
      ];
    case 'min':
    case 'max':
      return parts.filter((part) => mayDecide(kind, part, place, known)).map((part) => [part, wanted]);
    case 'if':
      return branches(parts as [number, number, number], wanted, known);
    case 'leaf':
      return [];
  }
}

/** Whether a part may be the lowest, or the highest, of all in one of the two sets. */
function mayDecide(kind: 'min' | 'max', part: number, place: number, known: Known): boolean {
  const { low, high, secondLow, secondHigh } = known;
  const at = (list: Float64Array, where: number): number => list[where] as number;
  return kind === 'max'
    ? at(high, part) > at(low, place) || at(secondHigh, part) > at(secondLow, place)
    : at(low, part) < at(high, place) || at(secondLow, part) < at(secondHigh, place);
}

function branches(
  [truth, x, y]: readonly [number, number, number],
  wanted: Wanted,
  known: Known,
): readonly Want[] {
  const { low, high, secondLow, secondHigh } = known;
  const mayHold = high[truth] === 1 || secondHigh[truth] === 1;
  const mayFail = low[truth] === 0 || secondLow[truth] === 0;
  return [
    ...(mayHold && mayFail ? [[truth, 'value'] as const] : []),
    ...(mayHold ? [[x, wanted] as const] : []),
    ...(mayFail ? [[y, wanted] as const] : []),
  ];
}
