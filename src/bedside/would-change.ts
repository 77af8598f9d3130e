import type { LevelAnswer } from '../outcome/answers.ts';
import type { Observation } from '../protocol/protocol.ts';
import type { Present } from '../series/bounds.ts';
import type { Given, GivenSet, Observed, Series } from '../series/series.ts';
import { possibleRange } from '../vocabulary/possible-range.ts';

/** The nearest value of one observation, all else as it is, with which the level would be another. */
export interface Change {
  readonly observation: Observation;
  /** Of a number: the value in steps, and how many steps it is away (below zero: lower). Null for a choice. */
  readonly number: { readonly steps: number; readonly away: number } | null;
  /** Of what is no number: any one of these. Empty for a number. */
  readonly choices: readonly string[];
  /** The level that it would then be. */
  readonly level: LevelAnswer;
}

/** What is asked whether it would change: a protocol, or several as one. */
export interface Changeable {
  readonly series: Series;
  readonly observations: readonly Observation[];
  /** What the present set says of an observation. */
  present(name: string): Present | undefined;
  /** Where answers about an observation can change, when they change nowhere else; null: at any step. */
  cuts(observation: Observation): readonly number[] | null;
  /** The level of another series; `refused` when what it says of the observation would not be used. Null: not for this patient. */
  levelWith(series: Series, name: string): LevelAnswer | null | 'refused';
}

/** Which change is looked for. */
export interface Wanted {
  /** Whether a level is one. */
  holds(level: LevelAnswer): boolean;
  /** Whether a level that is known of a whole range of values rules out that one of them is. */
  rulesOut(level: LevelAnswer): boolean;
}

/** What would raise the level above one on the ladder. A range can be ruled out only while nothing that is missing could raise it. */
export function above(now: LevelAnswer): Wanted {
  const reached = now.atLeast ?? 0;
  const whole = now.couldBe <= reached;
  return {
    holds: ({ atLeast }) => (atLeast ?? 0) > reached,
    rulesOut: ({ couldBe }) => whole && couldBe <= reached,
  };
}

/** What would lower the level below one on the ladder; nothing is below the lowest. */
export function below(now: LevelAnswer): Wanted {
  const reached = now.atLeast ?? 0;
  return {
    holds: ({ atLeast }) => (atLeast ?? 0) < reached,
    rulesOut: ({ atLeast, settled }) => settled && (atLeast ?? 0) >= reached,
  };
}

/**
 * For each observation of the present set, the nearest value down and up, and each choice, that makes the wanted change: asked of the
 * evaluator itself, exact to the step.
 *
 * Values that would be refused change nothing. Standing facts are left out: nobody measures them again.
 */
export function wouldChange(asked: Changeable, wanted: Wanted): readonly Change[] {
  const asking: Asking = { ...asked, wanted };
  return asked.observations.flatMap((observation): Change[] => {
    const present = asked.present(observation.name);
    if (observation.standing || present?.state !== 'given') return [];
    if (!present.range) return choicesOf(observation, present.choices ?? [], asking);
    const [low, high] = present.range;
    if (low !== high) return [];
    const cuts = asked.cuts(observation);
    return ([-1, 1] as const).flatMap((way) => nearest(observation, low, { way, cuts }, asking) ?? []);
  });
}

interface Asking extends Changeable {
  readonly wanted: Wanted;
}

interface Direction {
  readonly way: -1 | 1;
  readonly cuts: readonly number[] | null;
}

/** The nearest step one way that makes the change; null when none does. */
function nearest(
  observation: Observation,
  from: number,
  { way, cuts }: Direction,
  asking: Asking,
): Change | null {
  const { low, high } = possibleRange(observation);
  const end = way === -1 ? low : high;
  if ((end - from) * way < 1) return null;
  if (cuts) {
    // Between two cut points all values are answered alike: the nearest of each piece speaks for it.
    const firsts = cuts.map((at) => (way === -1 ? at - 1 : at)).filter((at) => (at - from) * way > 0);
    const inOrder = firsts.sort((left, right) => (left - right) * way);
    return (
      inOrder.map((steps) => changeAt(observation, from, steps, asking)).find((each) => each !== null) ?? null
    );
  }
  return search(observation, from, { near: from + way, far: end, way }, asking);
}

interface Stretch {
  readonly near: number;
  readonly far: number;
  readonly way: -1 | 1;
}

/** Looks through a stretch of steps, the nearest first, and leaves out what a question about all of it rules out. */
function search(observation: Observation, from: number, stretch: Stretch, asking: Asking): Change | null {
  const { near, far, way } = stretch;
  if (near === far) return changeAt(observation, from, near, asking);
  if (observation.role === 'needs' && isRuledOut(observation, stretch, asking)) return null;
  const middle = near + way * Math.floor(Math.abs(far - near) / 2);
  return (
    search(observation, from, { near, far: middle, way }, asking) ??
    search(observation, from, { near: middle + way, far, way }, asking)
  );
}

function isRuledOut(observation: Observation, { near, far }: Stretch, asking: Asking): boolean {
  const [low, high] = [Math.min(near, far), Math.max(near, far)];
  const found = levelWith(observation, { kind: 'number', low, high, value: null, given }, asking);
  // A stretch that is refused as a whole tells nothing about its parts.
  return found !== null && asking.wanted.rulesOut(found);
}

function changeAt(observation: Observation, from: number, steps: number, asking: Asking): Change | null {
  const then = levelWith(
    observation,
    { kind: 'number', low: steps, high: steps, value: steps, given },
    asking,
  );
  if (then === null || !asking.wanted.holds(then)) return null;
  return { observation, number: { steps, away: steps - from }, choices: [], level: then };
}

/** The choices that make the change, those that lead to the same answer together. */
function choicesOf(observation: Observation, present: readonly string[], asking: Asking): Change[] {
  const found: Change[] = [];
  for (const { choice } of observation.choices) {
    if (present.includes(choice)) continue;
    const then = levelWith(observation, chosen(observation, present, choice), asking);
    if (then === null || !asking.wanted.holds(then)) continue;
    const same = found.findIndex(
      (each) => each.level.atLeast === then.atLeast && each.level.couldBe === then.couldBe,
    );
    const choices = [...(found[same]?.choices ?? []), choice];
    const change: Change = { observation, number: null, choices, level: then };
    found.splice(same === -1 ? found.length : same, 1, change);
  }
  return found;
}

function chosen({ kind }: Observation, present: readonly string[], choice: string): Observed {
  return kind === 'several'
    ? { kind: 'several', choices: [...present, choice], given }
    : { kind: 'choice', choice, given };
}

const given: Given = { text: '', moved: false };

/** The level if the present set said something else of an observation; null when that would not be used, or there is none. */
function levelWith({ name }: Observation, observed: Observed, asking: Asking): LevelAnswer | null {
  const found = asking.levelWith(saying(asking.series, name, observed), name);
  return found === 'refused' ? null : found;
}

function saying(series: Series, name: string, observed: Observed): Series {
  const latest = Math.max(...series.sets.map(({ at }) => at ?? 0));
  const sets = series.sets.map((set): GivenSet => {
    const isPresent = (set.at ?? 0) === latest && set.observed.has(name);
    return isPresent ? { ...set, observed: new Map(set.observed).set(name, observed) } : set;
  });
  return { ...series, sets };
}
