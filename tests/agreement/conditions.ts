import type { Draw } from './draw.ts';
import type { Subject } from './observations.ts';
import { cutOf, ownDimension, summed, varied, written, type Quantity, type Stock } from './quantities.ts';

export type Condition = Record<string, unknown>;

/** What a condition may read: `set` for `where` and `held`, which read one set; `facts` for what reads observations only. */
export interface Reach {
  readonly measures: boolean;
  readonly rules: readonly string[];
}

export const observationsOnly: Reach = { measures: false, rules: [] };

type Side = 'below' | 'above' | 'at_most' | 'at_least';
const sides: readonly Side[] = ['below', 'above', 'at_most', 'at_least'];

/** Whether the difference of two can be on both sides of zero, so that no comparison of them is always true. */
const straddles = (stock: Stock, left: Quantity, right: Quantity): boolean => {
  const { low, high } = summed(stock, '', left.dimension, [
    [1, left],
    [-1, right],
  ]);
  return low < -1e-6 && high > 1e-6;
};

function numberAsked(draw: Draw, stock: Stock, quantity: Quantity, reach: Reach): Condition {
  const side = draw.one(sides);
  const others = stock.quantities.filter(
    (other) =>
      other.dimension === quantity.dimension &&
      other.name !== quantity.name &&
      (reach.measures || other.name in stock.limits) &&
      straddles(stock, quantity, other),
  );
  if (others.length && draw.chance(25)) return { [side]: draw.one(others).name };
  if (quantity.subject && quantity.subject.size > 3 && draw.chance(20)) {
    const { subject } = quantity;
    const from = draw.whole(subject.low, subject.high - 1);
    const to = draw.whole(from, from === subject.low ? subject.high - 1 : subject.high);
    return { between: [from, to].map((end) => Number((end / subject.perUnit).toFixed(2))) };
  }
  const upper = side === 'above' || side === 'at_most';
  return { [side]: written(draw, stock, quantity.dimension, cutOf(draw, quantity, upper)) };
}

function choiceAsked(draw: Draw, { kind, choices }: Subject): Condition {
  if (kind === 'yes_no') return { is: draw.one<string | boolean>(['yes', 'no', true, 'yes']) };
  if (kind === 'choice' && draw.chance(50)) return { is: draw.one(choices) };
  return { one_of: draw.some(choices, 1, choices.length - 1) };
}

/** One comparison. */
function comparison(draw: Draw, stock: Stock, reach: Reach): Condition {
  if (reach.rules.length && draw.chance(18)) return { rule: draw.one(reach.rules) };
  const measures = [...varied(stock, 'own'), ...varied(stock, 'plain'), ...varied(stock, 'minutes')].filter(
    ({ name }) => name in stock.measures,
  );
  if (reach.measures && measures.length && draw.chance(60)) {
    const measure = draw.one(measures);
    return { [measure.name]: numberAsked(draw, stock, measure, reach) };
  }
  const subject = draw.one(stock.subjects);
  if (draw.chance(7))
    return { [subject.name]: { known: draw.one(['yes', 'no', true]), accepted: 'Agreed.' } };
  if (draw.chance(4)) return { [subject.name]: { unobtainable: draw.one(['yes', 'no']) } };
  const own = stock.quantities.find(({ name }) => name === subject.name);
  return { [subject.name]: own ? numberAsked(draw, stock, own, reach) : choiceAsked(draw, subject) };
}

/** A condition of comparisons, nested at most `depth` deep. */
export function drawCondition(draw: Draw, stock: Stock, reach: Reach, depth: number): Condition {
  if (depth === 0 || draw.chance(45)) return comparison(draw, stock, reach);
  const parts = (least: number): Condition[] =>
    Array.from({ length: draw.whole(least, 3) }, () => drawCondition(draw, stock, reach, depth - 1));
  const how = draw.one(['all', 'any', 'none', 'at_least_of', 'several keys'] as const);
  if (how === 'several keys') return Object.assign({}, ...parts(2)) as Condition;
  if (how !== 'at_least_of') return { [how]: parts(how === 'none' ? 1 : 2) };
  const of = parts(2);
  return { at_least_of: { count: draw.whole(1, of.length), of } };
}

export const ownQuantity = (stock: Stock, draw: Draw): Quantity | null => {
  const found = varied(stock, ownDimension(stock)).filter(({ name }) => !(name in stock.limits));
  return found.length ? draw.one(found) : null;
};
