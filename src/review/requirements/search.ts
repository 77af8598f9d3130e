import { assumed, type Assumed } from './assume.ts';
import { distanceOf, halves, type Box } from './box.ts';
import { enterOf } from './enter.ts';
import { Heap } from './heap.ts';
import type { Impossible } from './impossible.ts';
import type { Question } from './question.ts';
import type { Variable } from './space.ts';
import { startOf } from './start-of.ts';
import { turning, type Wanted } from './turning.ts';
import { Twin } from './twin.ts';

/** What came of a search: how many boxes it looked into, and the nearest set, or pair, that breaks the requirement. */
export type Searched = { readonly looked: number } & (
  | { readonly kind: 'none' }
  | { readonly kind: 'found'; readonly box: Box }
  /** Single sets stayed open: what they say depends on more than one set shows. The first of them. */
  | { readonly kind: 'open'; readonly box: Box }
  | { readonly kind: 'too_large' }
  | { readonly kind: 'cancelled' }
);

export interface Watched {
  /** Asked now and then; when it says so, the search ends. */
  readonly cancelled: () => boolean;
  readonly progress: (looked: number) => void;
  /** So many boxes are looked into, and no more. */
  readonly most: number;
  /** Whether the plainest is wanted, or any. */
  readonly wanted: 'plainest' | 'any';
  /** Whether a set that was found is one; one that is not is passed by, and settles nothing. */
  readonly accept: (box: Box) => boolean;
}

/**
 * Looks for a set that breaks a requirement, the plainest first: boxes whose sets can be nearest to ordinary are looked into before others. A
 * box of which it is open is cut in two. Exact, because what is said of a box holds for every set in it.
 */
export function search(question: Question, impossible: Impossible, watched: Watched): Searched {
  const asker = askerOf(question);
  const heap = new Heap<Box>();
  const push = (box: Box): void => {
    if (watched.wanted === 'any') return heap.push(box, 0);
    const { away, steps } = distanceOf(box, question.space);
    heap.push(box, away * 1e15 + Math.min(steps, 1e14));
  };
  push(startOf(question));
  let left: Box | null = null;
  for (let looked = 0; looked < watched.most; looked += 1) {
    const box = heap.pop();
    if (!box) return left ? { kind: 'open', box: left, looked } : { kind: 'none', looked };
    if (looked % 256 === 0) {
      if (watched.cancelled()) return { kind: 'cancelled', looked };
      watched.progress(looked);
    }
    const unfit = impossible(box);
    if (unfit.answer === 'yes') continue;
    const parts = asker(box, unfit.by);
    if (parts === 'no') continue;
    if (parts !== 'one') parts.forEach(push);
    else if (watched.accept(box)) return { kind: 'found', box, looked };
    else left ??= box;
  }
  return { kind: 'too_large', looked: watched.most };
}

/** Asks a box: no pair of it breaks the requirement; or all do, or it is one pair; or the two parts of it that are to be asked. */
type Asker = (box: Box, unfit: readonly number[]) => 'no' | 'one' | readonly [Box, Box];

const nothing: Assumed = new Map();

function askerOf(question: Question): Asker {
  const { program, about, breaks, space, seconds } = question;
  const ends =
    breaks.kind === 'hides' ? [breaks.raised, breaks.could, breaks.alone ?? breaks.could] : [breaks.node];
  const twin = new Twin(program, [about.first, about.second, ...ends]);
  const holds = breaks.kind === 'set' ? breaks.node : about.first;
  const [first, second] = [
    assumed(program, holds),
    assumed(program, breaks.kind === 'set' ? holds : about.second),
  ];
  const whom = new Twin(program, [question.whom]);
  return (box, unfit) => {
    const enter = enterOf(box, space, seconds);
    // For whom it is, is told by few variables, and settles much.
    whom.run(enter, nothing, nothing);
    const byWhom = cut(box, [wanted(question.whom)], question, whom);
    if (byWhom) return byWhom;
    const taken = twin.run(enter, first, second);
    if (taken === 'none') return 'no';
    const answer = answerOf(question, twin);
    if (answer === 'no') return 'no';
    const cutBy = (goals: readonly Goals[]): readonly [Box, Box] | null => cut(box, goals, question, twin);
    const parts = answer === 'yes' ? null : cutBy(goalsOf(question));
    if (parts) return parts;
    if (taken === 'assumed') {
      twin.run(enter, nothing, nothing);
      const byAbout = cutBy([wanted(holds, about.second)]);
      if (byAbout) return byAbout;
    }
    const open = unfit.find((index) => box.low[index] !== box.high[index]);
    return (open === undefined ? null : halves(box, open, space.variables[open] as Variable)) ?? 'one';
  };
}

/** Whether every pair of the box that matters breaks the requirement, none does, or that is open. */
function answerOf({ breaks }: Question, { known }: Twin): 'yes' | 'no' | 'open' {
  const { low, high, secondLow, secondHigh, rises } = known;
  const at = (list: Float64Array, place: number): number => list[place] as number;
  switch (breaks.kind) {
    case 'set':
      return at(high, breaks.node) === 0 ? 'no' : at(low, breaks.node) === 1 ? 'yes' : 'open';
    case 'falls':
      if (rises[breaks.node]) return 'no';
      return at(secondHigh, breaks.node) < at(low, breaks.node) ? 'yes' : 'open';
    case 'hides': {
      const { raised, could, alone, by } = breaks;
      if (rises[raised] || (alone !== null && rises[alone])) return 'no';
      if (at(secondLow, could) > at(high, raised) - by) return 'no';
      return at(secondHigh, could) <= at(low, raised) - by ? 'yes' : 'open';
    }
  }
}

/** Two parts of a box, cut at the variable that tells most; null when none tells anything. */
function cut(box: Box, all: readonly Goals[], question: Question, twin: Twin): readonly [Box, Box] | null {
  const { program, seconds, space } = question;
  for (const goals of all) {
    const hits = turning(goals, program, twin.known, { box, seconds });
    const chosen = mostTelling(box, hits, question);
    if (chosen !== null) return halves(box, chosen, space.variables[chosen] as Variable);
  }
  return null;
}

type Goals = readonly (readonly [number, Wanted])[];

const wanted = (...nodes: readonly number[]): Goals => nodes.map((node) => [node, 'value']);

/** What would settle it, first by how two sets differ, then by what they are. */
function goalsOf({ program, breaks }: Question): readonly Goals[] {
  switch (breaks.kind) {
    case 'set':
      // What is taken for granted is no longer open; what is left of it is.
      return [
        wanted(
          ...[...assumed(program, breaks.node).keys()].flatMap((node) => program.nodes[node]?.parts ?? []),
        ),
      ];
    case 'falls':
      return [[[breaks.node, 'rises']], wanted(breaks.node)];
    case 'hides':
      return [[[breaks.alone ?? breaks.could, 'rises']], wanted(breaks.raised, breaks.could)];
  }
}

/** The variable that stands most often where something is open; one at whose values answers change before others. */
function mostTelling(box: Box, hits: ReadonlyMap<number, number>, { space }: Question): number | null {
  let [best, most] = [null as number | null, -1];
  for (const [index, count] of hits) {
    const { cuts, of } = space.variables[index] as (typeof space.variables)[number];
    const isCut =
      (of !== 'number' && of !== 'look_back') ||
      cuts.some((at) => at > (box.low[index] as number) && at <= (box.high[index] as number));
    // Whether something is blank at all settles the most.
    const weight = count + (of === 'lack' ? 1_000_000 : isCut ? 1000 : 0);
    if (weight > most) [best, most] = [index, weight];
  }
  return best;
}
