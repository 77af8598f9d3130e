import { cutPoints } from '../../logic/cut-points.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import { everySet, type Box } from '../box.ts';
import type { Within } from '../changes/change.ts';
import { searchBoxes, type Asked, type Searched } from '../search-boxes.ts';
import { absences } from './absences.ts';
import { askPair } from './ask-pair.ts';
import type { Pair } from './pair.ts';

/**
 * A set on which a protocol and the changed one differ; or that there is none, whatever is known and whatever is missing; or
 * that nobody knows: the search was too large, or something depends on earlier sets.
 */
export type Difference =
  | { readonly kind: 'found'; readonly box: Box }
  | { readonly kind: 'none' }
  | { readonly kind: 'open' }
  | { readonly kind: 'too_large' };

/** The same where something depends on earlier sets: one set alone then seldom settles anything. */
const mostWithEarlierSets = 1000;

/** The most boxes that the searches for one change look into together. */
const mostBoxes = 8000;

/**
 * Looks for a set that tells a protocol and the changed one apart: among whole sets of patients whom the protocol is for;
 * then of all patients; then among sets that lack something, every combination of it. `accept` says whether a set that was
 * found can be given as it is; one that cannot (an age that its values do not fit) is passed by, and settles nothing.
 */
export function findDifference(pair: Pair, within: Within | null, accept: (box: Box) => boolean): Difference {
  const cuts = cutsOf(pair);
  let left = pair.looksBack ? mostWithEarlierSets : mostBoxes;
  let [unsettled, tooMany] = [false, false];
  const look = (start: Box, loud: boolean): Searched => {
    const open = (names: readonly string[]): ReadonlySet<string> =>
      new Set(names.filter((name) => !start.absent?.has(name)));
    const [near, all] = [open(pair.near), open(pair.reads)];
    const ask = (box: Box): Asked => askPair(pair, box, { loud, reads: all });
    const { protocol } = pair.before;
    const searched = searchBoxes({ protocol, start, cuts, reads: [near, all], ask, most: left });
    left -= searched.looked;
    if (searched.kind === 'open' || (searched.kind === 'found' && !accept(searched.set))) unsettled = true;
    if (searched.kind === 'too_large') tooMany = true;
    return searched;
  };
  const whole = narrowed(everySet(pair.before.protocol), within);
  for (const loud of [true, false]) {
    const searched = look(whole, loud);
    if (searched.kind === 'found' && accept(searched.set)) return { kind: 'found', box: searched.set };
  }
  for (const box of absences(pair.before.protocol, pair.reads)) {
    if (left <= 0) return { kind: 'too_large' };
    const searched = look(box, false);
    if (searched.kind === 'found' && accept(searched.set)) return { kind: 'found', box: searched.set };
  }
  return { kind: tooMany ? 'too_large' : unsettled || pair.beyondSets ? 'open' : 'none' };
}

/** Where the answers of either protocol can change. */
export function cutsOf({
  before,
  after,
}: Pick<Pair, 'before' | 'after'>): ReadonlyMap<string, readonly number[]> {
  const [first, second] = [cutPoints(before.protocol), cutPoints(after.protocol)];
  const names = new Set([...first.keys(), ...second.keys()]);
  return new Map(
    [...names].map((name) => {
      const all = new Set([...(first.get(name) ?? []), ...(second.get(name) ?? [])]);
      return [name, [...all].sort((left, right) => left - right)];
    }),
  );
}

/** Of a box only the part in which a change of a score can matter. */
function narrowed(box: Box, within: Within | null): Box {
  if (!within) return box;
  if ('choice' in within) {
    const { observation, choice } = within;
    const [name, value] = box.choices.has(observation)
      ? [observation, choice]
      : [`${observation}:${choice}`, 'yes'];
    return { ...box, choices: new Map(box.choices).set(name, [value]) };
  }
  const [low, high] = box.ranges.get(within.observation) ?? [0, 0];
  const range = [Math.max(low, within.low), Math.min(high, within.high)] as const;
  return { ...box, ranges: new Map(box.ranges).set(within.observation, range) };
}

/** One ordinary set inside a box. */
export function ordinarySet(protocol: Protocol, within: Within | null): Box {
  const start = narrowed(everySet(protocol), within);
  const all = { protocol, start, cuts: new Map(), reads: [], most: 10_000 };
  const searched = searchBoxes({ ...all, ask: () => 'yes' });
  return searched.kind === 'found' ? searched.set : start;
}
