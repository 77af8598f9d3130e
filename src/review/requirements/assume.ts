import type { Program } from './program.ts';

/** What must hold in a set for it to matter at all: nodes with the value that they then have, 0 or 1. */
export type Assumed = ReadonlyMap<number, number>;

/** Everything that must hold for a node to hold: of an `and` all its parts, of what does not hold its opposite. */
export function assumed(program: Program, node: number): Assumed {
  const { nodes } = program;
  const found = new Map<number, number>();
  const open: [number, number][] = [[node, 1]];
  for (let next = open.pop(); next; next = open.pop()) {
    const [place, value] = next;
    const { kind, parts, constant } = nodes[place] as Program['nodes'][number];
    if (constant !== null || found.has(place)) continue;
    found.set(place, value);
    if (kind === 'not') open.push([parts[0] as number, 1 - value]);
    // A truth may be the very same as a level that is only ever 0 or 1, whose parts are no truths.
    const ofTruths = parts.every((part) => program.isTruth(part));
    if (ofTruths && ((kind === 'min' && value === 1) || (kind === 'max' && value === 0)))
      open.push(...parts.map((part): [number, number] => [part, value]));
  }
  return found;
}
