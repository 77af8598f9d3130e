import { cutsOf } from '../outcome/pieces.ts';
import { answersOf, levelOf, type LevelAnswer } from '../outcome/answers.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Observation, Operand, Protocol } from '../protocol/protocol.ts';
import { comparisonsIn, conditionsOf, operandsOfMeasure } from '../protocol/walk.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Given, GivenSet, Observed, Series } from '../series/series.ts';
import { possibleRange } from '../vocabulary/possible-range.ts';

/** The nearest value of one observation, all else as it is, with which the level would be higher. */
export interface Raise {
  readonly observation: Observation;
  /** Of a number: the value in steps, and how many steps it is away (below zero: lower). Null for a choice. */
  readonly number: { readonly steps: number; readonly away: number } | null;
  /** Of what is no number: any one of these. Empty for a number. */
  readonly choices: readonly string[];
  /** The level that it would then be, as an index on the ladder. */
  readonly level: number;
  readonly couldBe: number;
  readonly settled: boolean;
}

/**
 * For each observation of the present set, the nearest value down and up, and each choice, that would raise the level: asked of
 * the evaluator itself, exact to the step. What would lower it is not said: at the bedside that invites measuring again until it passes.
 *
 * Values that would be refused raise nothing. Standing facts are left out: nobody measures them again.
 */
export function wouldRaise(compiled: Compiled, series: Series): readonly Raise[] {
  const bounds = seriesToBounds(compiled.protocol, series);
  const now = levelOf(compiled, bounds);
  if (!now) return [];
  const asking: Asking = {
    compiled,
    series,
    now: now.atLeast ?? 0,
    whole: now.couldBe <= (now.atLeast ?? 0),
  };
  const apart = readApart(compiled.protocol);
  const situation = { compiled, bounds, answers: answersOf(compiled, bounds) };
  return [...compiled.protocol.observations.values()].flatMap((observation): Raise[] => {
    const present = bounds.facts.present.get(observation.name);
    if (observation.standing || present?.state !== 'given') return [];
    if (!present.range) return choicesOf(observation, present.choices ?? [], asking);
    const [low, high] = present.range;
    if (low !== high) return [];
    const cuts = apart.has(observation.name) ? null : cutsOf(observation, situation);
    return ([-1, 1] as const).flatMap((way) => nearest(observation, low, { way, cuts }, asking) ?? []);
  });
}

interface Asking {
  readonly compiled: Compiled;
  readonly series: Series;
  /** The level now. */
  readonly now: number;
  /** Whether nothing that is missing could raise it, so that asking about a whole range can rule the range out. */
  readonly whole: boolean;
}

interface Direction {
  readonly way: -1 | 1;
  /** Where answers change, when they change nowhere else; null: they may change at each step. */
  readonly cuts: readonly number[] | null;
}

/** The nearest step one way that raises the level; null when none does. */
function nearest(
  observation: Observation,
  from: number,
  { way, cuts }: Direction,
  asking: Asking,
): Raise | null {
  const { low, high } = possibleRange(observation);
  const end = way === -1 ? low : high;
  if ((end - from) * way < 1) return null;
  if (cuts) {
    // Between two cut points all values are answered alike: the nearest of each piece speaks for it.
    const firsts = cuts.map((at) => (way === -1 ? at - 1 : at)).filter((at) => (at - from) * way > 0);
    const inOrder = firsts.sort((left, right) => (left - right) * way);
    return (
      inOrder.map((steps) => raiseAt(observation, from, steps, asking)).find((each) => each !== null) ?? null
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
function search(observation: Observation, from: number, stretch: Stretch, asking: Asking): Raise | null {
  const { near, far, way } = stretch;
  if (near === far) return raiseAt(observation, from, near, asking);
  if (asking.whole && observation.role === 'needs' && !couldRaise(observation, stretch, asking)) return null;
  const middle = near + way * Math.floor(Math.abs(far - near) / 2);
  return (
    search(observation, from, { near, far: middle, way }, asking) ??
    search(observation, from, { near: middle + way, far, way }, asking)
  );
}

function couldRaise(observation: Observation, { near, far }: Stretch, asking: Asking): boolean {
  const [low, high] = [Math.min(near, far), Math.max(near, far)];
  const found = levelWith(observation, { kind: 'number', low, high, value: null, given }, asking);
  // A stretch that is refused as a whole tells nothing about its parts.
  return found === 'refused' || found.couldBe > asking.now;
}

function raiseAt(observation: Observation, from: number, steps: number, asking: Asking): Raise | null {
  const found = levelWith(
    observation,
    { kind: 'number', low: steps, high: steps, value: steps, given },
    asking,
  );
  if (found === 'refused' || (found.atLeast ?? 0) <= asking.now) return null;
  return raise(observation, found, { number: { steps, away: steps - from }, choices: [] });
}

function raise(
  observation: Observation,
  { atLeast, couldBe, settled }: LevelAnswer,
  to: Pick<Raise, 'number' | 'choices'>,
): Raise {
  return { observation, ...to, level: atLeast ?? 0, couldBe, settled };
}

/** The choices that would raise the level, those that lead to the same answer together. */
function choicesOf(observation: Observation, present: readonly string[], asking: Asking): Raise[] {
  const found: Raise[] = [];
  for (const { choice } of observation.choices) {
    if (present.includes(choice)) continue;
    const level = levelWith(observation, chosen(observation, present, choice), asking);
    if (level === 'refused' || (level.atLeast ?? 0) <= asking.now) continue;
    const same = found.findIndex((each) => each.level === level.atLeast && each.couldBe === level.couldBe);
    const choices = [...(found[same]?.choices ?? []), choice];
    found.splice(same === -1 ? found.length : same, 1, raise(observation, level, { number: null, choices }));
  }
  return found;
}

function chosen({ kind }: Observation, present: readonly string[], choice: string): Observed {
  return kind === 'several'
    ? { kind: 'several', choices: [...present, choice], given }
    : { kind: 'choice', choice, given };
}

const given: Given = { text: '', moved: false };

/** The level if the present set said something else of an observation; `refused` when that would not be used. */
function levelWith(
  observation: Observation,
  observed: Observed,
  { compiled, series }: Asking,
): LevelAnswer | 'refused' {
  const bounds = seriesToBounds(compiled.protocol, saying(series, observation.name, observed));
  if (bounds.facts.present.get(observation.name)?.state !== 'given') return 'refused';
  return levelOf(compiled, bounds) ?? 'refused';
}

function saying(series: Series, name: string, observed: Observed): Series {
  const latest = Math.max(...series.sets.map(({ at }) => at ?? 0));
  const sets = series.sets.map((set): GivenSet => {
    const isPresent = (set.at ?? 0) === latest && set.observed.has(name);
    return isPresent ? { ...set, observed: new Map(set.observed).set(name, observed) } : set;
  });
  return { ...series, sets };
}

/** Observations that are read otherwise than by comparing them with numbers and limits: their answers may change at any step. */
function readApart(protocol: Protocol): ReadonlySet<string> {
  const measures = [...protocol.measures.values()]
    .map(({ how }) => how)
    .filter(({ kind }) => kind !== 'score');
  const compared = conditionsOf(protocol).flatMap((condition) =>
    [...comparisonsIn(condition)].flatMap((each): readonly Operand[] =>
      each.kind === 'compare' && each.to.kind !== 'number' && each.to.kind !== 'limit'
        ? [each.subject, each.to]
        : [],
    ),
  );
  const operands = [...measures.flatMap(operandsOfMeasure), ...compared];
  return new Set([
    ...protocol.contradictions.flatMap(({ lower, higher }) => [lower, higher]),
    ...operands.flatMap((each) => (each.kind === 'observation' ? [each.name] : [])),
    ...measures.flatMap((how) => ('over' in how && how.observation !== null ? [how.observation] : [])),
  ]);
}
