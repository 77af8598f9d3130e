import Fraction from 'fraction.js';
import type { Condition, Limit, NumberComparison } from '../protocol/protocol.ts';
import { convert } from '../vocabulary/units.ts';
import type { Span } from './ranges.ts';
import type { ReadObservation, Value } from './read-observation.ts';
import type { SetAt } from './slot.ts';

/** How a condition stands for one set: it does not hold, it may, it surely does. */
export type Verdict = 0 | 1 | 2;

/** Asks a condition of one set, with the values of that set and the standing facts that hold at its time. */
export type Judge = (set: SetAt, world: SetWorld) => Verdict;

/** What a set can be asked. */
export interface SetWorld {
  /** Null when missing. */
  valueIn(set: SetAt, read: ReadObservation): Value | null;
  isKnownIn(set: SetAt, read: ReadObservation): boolean;
  /** The whole possible range. */
  rangeIn(set: SetAt, read: ReadObservation): Span;
  /** Steps of the limits that are in force, in the reader's order. */
  readonly limits: readonly number[];
}

/** The names that a condition on a set can hold. */
export interface JudgeNames {
  observation(name: string): ReadObservation;
  limit(name: string): { readonly limit: Limit; readonly index: number };
}

/** Prepares a condition on one set. Only observations against numbers, choices and limits are asked of a set. */
export function judgeOf(condition: Condition, names: JudgeNames): Judge {
  switch (condition.kind) {
    case 'all':
    case 'any':
    case 'none':
    case 'at_least_of':
      return combined(
        condition,
        condition.of.map((each) => judgeOf(each, names)),
      );
    case 'rule':
      throw new TypeError('a rule cannot be asked of one set');
    case 'compare':
      return comparison(condition, names);
    case 'one_of':
      return choiceJudge(names.observation(condition.observation), condition.choices);
    case 'known': {
      const read = names.observation(condition.observation);
      return (set, world) => (world.isKnownIn(set, read) === condition.is ? 2 : 0);
    }
    case 'unobtainable': {
      const { index } = names.observation(condition.observation);
      return (set) => ((set.slots[index]?.unobtainable ?? false) === condition.is ? 2 : 0);
    }
  }
}

type Combination = Extract<Condition, { of: readonly Condition[] }>;

function combined(condition: Combination, judges: readonly Judge[]): Judge {
  const count =
    condition.kind === 'at_least_of' ? condition.count : condition.kind === 'all' ? judges.length : 1;
  const reached: Judge = (set, world) => {
    let [sure, maybe] = [0, 0];
    for (const judge of judges) {
      const verdict = judge(set, world);
      if (verdict === 2) sure += 1;
      if (verdict > 0) maybe += 1;
    }
    return sure >= count ? 2 : maybe >= count ? 1 : 0;
  };
  return condition.kind === 'none' ? (set, world) => (2 - reached(set, world)) as Verdict : reached;
}

function choiceJudge(read: ReadObservation, choices: readonly string[]): Judge {
  const asked = new Set(choices.map((choice) => read.choices.get(choice)));
  const several = read.entry.kind === 'several';
  return (set, world) => {
    const value = world.valueIn(set, read);
    if (!value) return several ? 1 : read.everyChoice.every((each) => asked.has(each)) ? 2 : 1;
    return value.picked.some((each) => asked.has(each)) ? 2 : 0;
  };
}

function comparison(condition: NumberComparison, names: JudgeNames): Judge {
  const { subject, how, to } = condition;
  if (subject.kind !== 'observation') throw new TypeError('a measure cannot be asked of one set');
  const read = names.observation(subject.name);
  const test = how === 'at_least' || how === 'above' ? atLeast : atMost;
  if (to.kind === 'number') {
    const edge = edgeOf(how, inStepsOf(read, to.value, to.unit));
    return (set, world) => test(world.valueIn(set, read) ?? world.rangeIn(set, read), edge);
  }
  if (to.kind !== 'limit') throw new TypeError('a set is compared with numbers and limits only');
  const { limit, index } = names.limit(to.name);
  let [steps, edge] = [Number.NaN, 0];
  return (set, world) => {
    const now = world.limits[index] ?? limit.value;
    if (now !== steps) {
      edge = edgeOf(how, inStepsOf(read, new Fraction(now).div(limit.stepsPerUnit), limit.unit));
      steps = now;
    }
    return test(world.valueIn(set, read) ?? world.rangeIn(set, read), edge);
  };
}

const atLeast = ({ low, high }: Span, edge: number): Verdict => (low >= edge ? 2 : high >= edge ? 1 : 0);
const atMost = ({ low, high }: Span, edge: number): Verdict => (high <= edge ? 2 : low <= edge ? 1 : 0);

function inStepsOf({ entry }: ReadObservation, value: Fraction, unit: Limit['unit']): Fraction {
  const own = unit && entry.unit && unit !== entry.unit ? convert(value, unit, entry.unit) : value;
  return own.mul(entry.stepsPerUnit);
}

/** The last whole step for which the comparison holds: below 90.5 is at most 90; below 90 is at most 89. */
function edgeOf(how: NumberComparison['how'], bound: Fraction): number {
  switch (how) {
    case 'at_least':
      return bound.ceil().valueOf();
    case 'above':
      return bound.floor().valueOf() + 1;
    case 'at_most':
      return bound.floor().valueOf();
    case 'below':
      return bound.ceil().valueOf() - 1;
  }
}
