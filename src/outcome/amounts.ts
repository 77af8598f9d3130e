import type Fraction from 'fraction.js';
import { literalIn } from '../logic/literal.ts';
import type { Logic, MeasureLogic } from '../logic/logic.ts';
import type { Measure, Operand, Protocol } from '../protocol/protocol.ts';
import { quantityOf, type QuantityOrPlain } from '../protocol/quantities.ts';
import { operandsOfMeasure } from '../protocol/walk.ts';
import type { Evaluator } from '../targets/evaluator/logic-to-evaluator.ts';
import type { Unit } from '../vocabulary/units.ts';
import { never as neverInSteps } from '../logic/inputs.ts';
import { never, over, times, type Exact } from './exact.ts';
import type { Read, View } from './view.ts';

/** The lowest and the highest that a number can be; the very same when it is known. */
export interface Amount {
  readonly low: Exact;
  readonly high: Exact;
}

export type ReadAmount = (view: View) => Amount;

/** A number that a comparison or a formula names, ready to be read. */
export interface Quantified {
  readonly unit: Unit | null;
  readonly quantity: QuantityOrPlain;
  /** In its own unit. */
  readonly amount: ReadAmount;
}

/** Reads the numbers of a protocol in a result, each in its own unit. */
export interface Amounts {
  of(operand: Operand): Quantified;
  /** Whether a measure has a value for every set that is still possible, and for some. */
  sure(measure: string): Read;
  maybe(measure: string): Read;
  /** A named number in the unit of another; a plain one takes that unit. */
  inUnitOf(operand: Operand, subject: Quantified): ReadAmount;
}

export function amountsOf(protocol: Protocol, logic: Logic, evaluator: Evaluator): Amounts {
  const place = new Map(logic.inputs.map(({ name }, index) => [name, index]));
  const measures = new Map(logic.measures.map((each) => [each.measure, each]));
  const known = new Map<string, Quantified>();
  const since = timesSince(protocol);

  function of(operand: Operand): Quantified {
    if (operand.kind === 'number') return ofLiteral(operand);
    const before = known.get(operand.name);
    if (before) return before;
    const made = byKind(operand);
    known.set(operand.name, made);
    return made;
  }

  function byKind({ kind, name }: Exclude<Operand, { kind: 'number' }>): Quantified {
    if (kind === 'measure') {
      const measure = found(protocol.measures.get(name), name);
      const amount = ofMeasure(measure, logicOf(name));
      return { unit: measure.unit, quantity: measure.quantity, amount };
    }
    const entry = kind === 'limit' ? protocol.limits.get(name) : protocol.observations.get(name);
    const { unit, stepsPerUnit } = found(entry, name);
    const [low, high] = kind === 'limit' ? ['value', 'value'] : ['low', 'high'];
    const quantity = kind === 'limit' && !unit ? 'plain' : quantityOf(unit);
    return { unit, quantity, amount: ofSteps(slot(`${name}:${low}`), slot(`${name}:${high}`), stepsPerUnit) };
  }

  const slot = (name: string): number => found(place.get(name), name);
  const logicOf = (name: string): MeasureLogic => found(measures.get(name), name);

  function ofMeasure(measure: Measure, value: MeasureLogic): ReadAmount {
    const { name } = measure;
    const amount = ofQuotient(value, evaluator);
    const ends = since.get(name)?.map((each) => slot(`${each}:high`));
    return ends ? withNever(amount, measure, ends) : amount;
  }

  function inUnitOf(operand: Operand, { quantity }: Quantified): ReadAmount {
    if (operand.kind === 'number') {
      const amount = exactlyKnown(exactly(literalIn(operand, quantity).constant));
      return () => amount;
    }
    const own = of(operand);
    if (own.quantity === 'plain' || quantity === 'plain') return own.amount;
    const factor = exactly(own.quantity.factor.div(quantity.factor));
    if (factor.n === factor.d) return own.amount;
    return (view) => {
      const { low, high } = own.amount(view);
      const first = times(low, factor);
      return { low: first, high: low === high ? first : times(high, factor) };
    };
  }

  return {
    of,
    inUnitOf,
    sure: (name) => evaluator.reader(logicOf(name).sure),
    maybe: (name) => evaluator.reader(logicOf(name).maybe),
  };
}

function found<T>(value: T | undefined, name: string): T {
  if (value === undefined) throw new Error(`nothing is called ${name}`);
  return value;
}

export const exactly = ({ s, n, d }: Fraction): Exact => over(s * n, d);

const exactlyKnown = (value: Exact): Amount => ({ low: value, high: value });

function ofLiteral({ value, unit }: Extract<Operand, { kind: 'number' }>): Quantified {
  const amount = exactlyKnown(exactly(value));
  return { unit, quantity: unit ? quantityOf(unit) : 'plain', amount: () => amount };
}

function ofSteps(low: number, high: number, { n, d }: Fraction): ReadAmount {
  const [steps, units] = [Number(n), Number(d)];
  return ({ result }) => {
    const [from, to] = [result[low] as number, result[high] as number];
    const first = over(from * units, steps);
    return { low: first, high: from === to ? first : over(to * units, steps) };
  };
}

function ofQuotient(value: MeasureLogic, evaluator: Evaluator): ReadAmount {
  const [low, high] = [evaluator.reader(value.low), evaluator.reader(value.high)];
  const [bottomLow, bottomHigh] = [evaluator.reader(value.bottomLow), evaluator.reader(value.bottomHigh)];
  const [topScale, bottomScale] = [Number(value.topScale), Number(value.bottomScale)];
  const isWhole = value.bottomLow === 1 && value.bottomHigh === 1;
  const quotient = (top: number, bottom: number): Exact =>
    isWhole ? over(top, topScale) : times(over(top, topScale), over(bottomScale, bottom));
  return ({ result }) => {
    const [from, to, least, most] = [low(result), high(result), bottomLow(result), bottomHigh(result)];
    const first = quotient(from, from < 0 ? least : most);
    return { low: first, high: from === to && least === most ? first : quotient(to, to < 0 ? most : least) };
  };
}

/** The times since something that a measure reads, directly or through others: each may be never. */
function timesSince({ measures }: Protocol): ReadonlyMap<string, readonly string[]> {
  const since = new Map<string, readonly string[]>();
  // Each measure stands after those that it reads.
  for (const { name, how } of measures.values()) {
    const through = operandsOfMeasure(how).flatMap((each) =>
      each.kind === 'measure' ? (since.get(each.name) ?? []) : [],
    );
    const own = how.kind === 'minutes_since' ? [name] : [];
    if (own.length + through.length > 0) since.set(name, [...own, ...through]);
  }
  return since;
}

/** No window is so long, in minutes: a number beyond it was made of what never happened. */
const beyondAnyWindow = 1e5;

/** Brings `never` back to what it is, where a number of minutes stood for it. */
function withNever(amount: ReadAmount, { quantity }: Measure, places: readonly number[]): ReadAmount {
  const perMinute = quantity.factor.valueOf();
  const end = (value: Exact): Exact =>
    (Number(value.n) / Number(value.d)) * perMinute > beyondAnyWindow ? never : value;
  return (view) => {
    const read = amount(view);
    if (!places.some((place) => view.result[place] === neverInSteps)) return read;
    const first = end(read.low);
    return { low: first, high: read.low === read.high ? first : end(read.high) };
  };
}
