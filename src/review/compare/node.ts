import { stands, type Atom, type Stand } from './atoms.ts';

/** Many sets at once: a box in which, besides, some askew comparisons are known to hold, to fail, or to have no number. */
export interface Node {
  readonly lows: Float64Array;
  readonly highs: Float64Array;
  /** Of askew comparisons, by the index of the atom. */
  readonly stands: Uint8Array;
  /** What the box alone was found to say, by the index of the atom; kept so that nothing is asked twice. */
  readonly seen: Uint8Array;
}

/** That it is open, in what a node has seen. */
const seenOpen = 4;

/** How a comparison stands in a node, for all its sets. */
export function standIn({ lows, highs, stands: settled, seen }: Node, atom: Atom): Stand {
  const { index } = atom;
  if (settled[index] !== stands.open) return settled[index] as Stand;
  if (seen[index] === 0) seen[index] = atom.stand(lows, highs) || seenOpen;
  return seen[index] === seenOpen ? stands.open : (seen[index] as Stand);
}

/** A node with a range of one dimension cut down. What was settled stays so; what was open and reads it is to be asked again. */
export function narrowed(node: Node, place: number, low: number, high: number, atoms: readonly Atom[]): Node {
  const [lows, highs, seen] = [node.lows.slice(), node.highs.slice(), node.seen.slice()];
  [lows[place], highs[place]] = [low, high];
  for (const { index, reads } of atoms)
    if (seen[index] === seenOpen && reads.includes(place)) seen[index] = stands.open;
  return { ...node, lows, highs, seen };
}

/** A node with one askew comparison settled. */
export function settledAs(node: Node, { index }: Atom, stand: Stand): Node {
  const settled = node.stands.slice();
  settled[index] = stand;
  return { ...node, stands: settled, seen: node.seen.slice() };
}

/** A single set. */
export const pointNode = (node: Node, point: Float64Array): Node => ({
  ...node,
  lows: point,
  highs: point,
  seen: new Uint8Array(node.seen.length),
});
