import type { Logic } from '../logic/logic.ts';
import { cutPoints } from '../logic/cut-points.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Evaluator } from '../targets/evaluator/logic-to-evaluator.ts';
import { boxToInputs, everySet, type Box } from './box.ts';

/** What is looked for, answered for many sets at once: yes for every one of them, no for every one, or open. */
export type Goal = (result: Float64Array) => 'yes' | 'no' | 'open';

/** A set that was found; or that there is none; or that the search was too large to finish. */
export type Found =
  { readonly kind: 'found'; readonly set: Box } | { readonly kind: 'none' } | { readonly kind: 'too_large' };

export interface Searchable {
  readonly protocol: Protocol;
  readonly logic: Logic;
  readonly evaluator: Evaluator;
}

/** The most boxes that one search looks into. */
const mostBoxes = 20_000;

/**
 * Looks for a set by halving: a box of sets for which the goal is open is cut in two, the half nearer to ordinary values
 * first. Exact, because an answer about a box holds for every set in it. Contradictory sets are no sets. `reads` are the
 * observations that the answer can depend on.
 */
export function findSet(
  { protocol, logic, evaluator }: Searchable,
  reads: readonly string[],
  goal: Goal,
): Found {
  const cuts = cutPoints(protocol);
  const read = new Set(reads);
  const open: Box[] = [everySet(protocol)];
  for (let looked = 0; looked < mostBoxes; looked += 1) {
    const box = open.pop();
    if (!box) return { kind: 'none' };
    const contradiction = contradicts(box, protocol);
    if (contradiction === 'yes') continue;
    const answer = goal(evaluator.run(boxToInputs(box, protocol, logic.inputs)));
    if (answer === 'no') continue;
    if (answer === 'yes' && contradiction === 'no')
      return { kind: 'found', set: ordinaryPoint(box, protocol) };
    const halves = halve(box, protocol, cuts, answer === 'yes' ? paired(protocol) : read);
    // A single set that is still open lacks a value (a curve beyond its points): it is no example of anything.
    if (halves) open.push(...halves);
    else if (answer === 'yes') return { kind: 'found', set: box };
  }
  return { kind: 'too_large' };
}

/** Whether every set of the box is contradictory, none is, or some are. */
function contradicts({ ranges }: Box, { contradictions }: Protocol): 'yes' | 'no' | 'open' {
  let open = false;
  for (const { lower, higher, mayBeEqual } of contradictions) {
    const [low, high] = [ranges.get(lower), ranges.get(higher)];
    if (!low || !high) continue;
    const gap = mayBeEqual ? 0 : 1;
    if (low[0] + gap > high[1]) return 'yes';
    if (low[1] + gap > high[0]) open = true;
  }
  return open ? 'open' : 'no';
}

/** The observations that a contradiction reads: they alone tell a set that is one from a set that is none. */
const paired = ({ contradictions }: Protocol): ReadonlySet<string> =>
  new Set(contradictions.flatMap(({ lower, higher }) => [lower, higher]));

/** Two halves of a box, the more ordinary one last, cut where one of `reads` varies; null when none does. */
function halve(
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
function ordinaryPoint(box: Box, protocol: Protocol): Box {
  const ranges = new Map<string, readonly [number, number]>();
  for (const [name, [low, high]] of box.ranges) {
    const ordinary = protocol.observations.get(name)?.ordinary;
    const value = Math.min(high, Math.max(low, typeof ordinary === 'number' ? ordinary : low));
    ranges.set(name, [value, value]);
  }
  const choices = new Map([...box.choices].map(([name, values]) => [name, usualOf(name, values, protocol)]));
  return { ranges, choices };
}

/** The ordinary one of some values, or the first. */
function usualOf(name: string, values: readonly string[], { observations }: Protocol): [string] {
  const [owner, member] = name.split(':') as [string, string?];
  const ordinary = observations.get(owner)?.ordinary;
  const listed = Array.isArray(ordinary) ? (ordinary as readonly string[]) : [];
  const usual = member === undefined ? listed : [listed.includes(member) ? 'yes' : 'no'];
  return [values.find((value) => usual.includes(value)) ?? (values[0] as string)];
}
