import type { Protocol } from '../protocol/protocol.ts';
import type { Box } from './box.ts';

/** Whether every set of the box is contradictory, none is, or some are. */
export function contradicts({ ranges, absent }: Box, { contradictions }: Protocol): 'yes' | 'no' | 'open' {
  let open = false;
  for (const { lower, higher, mayBeEqual } of contradictions) {
    const [low, high] = [ranges.get(lower), ranges.get(higher)];
    // What is missing never contradicts.
    if (!low || !high || absent?.has(lower) || absent?.has(higher)) continue;
    const gap = mayBeEqual ? 0 : 1;
    if (low[0] + gap > high[1]) return 'yes';
    if (low[1] + gap > high[0]) open = true;
  }
  return open ? 'open' : 'no';
}

/** The observations that a contradiction reads: they alone tell a set that is one from a set that is none. */
export const paired = ({ contradictions }: Protocol): ReadonlySet<string> =>
  new Set(contradictions.flatMap(({ lower, higher }) => [lower, higher]));

/** Two halves of a box, the more ordinary one last, cut where one of `reads` varies; null when none does. */
export function halve(
  box: Box,
  protocol: Protocol,
  cuts: ReadonlyMap<string, readonly number[]>,
  reads: ReadonlySet<string>,
): [Box, Box] | null {
  const widest = pickRange(box, cuts, reads);
  const choice = [...box.choices].find(([name, values]) => values.length > 1 && reads.has(ownerOf(name)));
  if (choice && !widest?.cut) return halveChoice(box, choice[0], choice[1], protocol);
  return widest && halveRange(box, widest.name, widest.at, protocol);
}

/** The observation of a choice, or of one choice of a several. */
const ownerOf = (name: string): string => name.split(':')[0] as string;

interface Cut {
  readonly name: string;
  /** The first step of the upper half. */
  readonly at: number;
  /** Whether a rule tells the two halves apart directly. */
  readonly cut: boolean;
}

function pickRange(
  box: Box,
  cuts: ReadonlyMap<string, readonly number[]>,
  reads: ReadonlySet<string>,
): Cut | null {
  let best: (Cut & { weight: number }) | null = null;
  for (const [name, [low, high]] of box.ranges) {
    if (low === high || !reads.has(name)) continue;
    const inside = (cuts.get(name) ?? []).filter((at) => at > low && at <= high);
    const at = inside[inside.length >> 1] ?? low + Math.ceil((high - low) / 2);
    const weight = inside.length > 0 ? 1e9 + inside.length : high - low;
    if (!best || weight > best.weight) best = { name, at, cut: inside.length > 0, weight };
  }
  return best;
}

function halveRange(box: Box, name: string, at: number, { observations }: Protocol): [Box, Box] {
  const [low, high] = box.ranges.get(name) as readonly [number, number];
  const lower = { ...box, ranges: new Map(box.ranges).set(name, [low, at - 1]) };
  const upper = { ...box, ranges: new Map(box.ranges).set(name, [at, high]) };
  const ordinary = observations.get(name)?.ordinary;
  return typeof ordinary === 'number' && ordinary < at ? [upper, lower] : [lower, upper];
}

function halveChoice(box: Box, name: string, values: readonly string[], protocol: Protocol): [Box, Box] {
  const [near] = usualOf(name, values, protocol);
  const having = (chosen: readonly string[]): Box => ({
    ...box,
    choices: new Map(box.choices).set(name, chosen),
  });
  return [having(values.filter((value) => value !== near)), having([near])];
}

/** The set of a box that is nearest to ordinary. Good only for a box without contradictions. */
export function ordinaryPoint(box: Box, protocol: Protocol): Box {
  const ranges = new Map<string, readonly [number, number]>();
  for (const [name, [low, high]] of box.ranges) {
    if (box.absent?.has(name)) {
      ranges.set(name, [low, high]);
      continue;
    }
    const ordinary = protocol.observations.get(name)?.ordinary;
    const value = Math.min(high, Math.max(low, typeof ordinary === 'number' ? ordinary : low));
    ranges.set(name, [value, value]);
  }
  const choices = new Map(
    [...box.choices].map(([name, values]): [string, readonly string[]] => [
      name,
      box.absent?.has(ownerOf(name)) ? values : usualOf(name, values, protocol),
    ]),
  );
  return { ...box, ranges, choices };
}

/** The ordinary one of some values, or the first. */
function usualOf(name: string, values: readonly string[], { observations }: Protocol): [string] {
  const [owner, member] = name.split(':') as [string, string?];
  const ordinary = observations.get(owner)?.ordinary;
  const listed = Array.isArray(ordinary) ? (ordinary as readonly string[]) : [];
  const usual = member === undefined ? listed : [listed.includes(member) ? 'yes' : 'no'];
  return [values.find((value) => usual.includes(value)) ?? (values[0] as string)];
}
