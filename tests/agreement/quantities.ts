import type { Draw } from './draw.ts';
import { decimal, type Subject } from './observations.ts';

/** `own`: in the protocol's unit; `plain`: without a unit; `minutes`. Where the protocol has no unit, everything but minutes is plain. */
export type Dimension = 'own' | 'plain' | 'minutes';

/** A number that conditions and measures can name, and between what it can lie. */
export interface Quantity {
  readonly name: string;
  readonly dimension: Dimension;
  readonly low: number;
  readonly high: number;
  /** As a sum of others: how much of each. What stands for itself is one of itself. */
  readonly sum: ReadonlyMap<string, number>;
  /** What is added to that sum. */
  readonly constant: number;
  /** The observation that it is, when it is one. */
  readonly subject: Subject | null;
}

/** What a generated protocol has to name, while it grows. */
export interface Stock {
  readonly subjects: readonly Subject[];
  readonly unit: string | null;
  readonly series: boolean;
  readonly quantities: Quantity[];
  readonly limits: Record<string, Record<string, unknown>>;
  readonly measures: Record<string, Record<string, unknown>>;
}

export const ownDimension = (stock: Stock): Dimension => (stock.unit ? 'own' : 'plain');

/** A quantity that is no sum of others. */
export function itself(
  name: string,
  dimension: Dimension,
  low: number,
  high: number,
  subject: Subject | null = null,
): Quantity {
  return { name, dimension, low, high, sum: new Map([[name, 1]]), constant: 0, subject };
}

/** The sum of `times` of each, with its bounds; what cancels takes no part in them. */
export function summed(
  stock: Stock,
  name: string,
  dimension: Dimension,
  terms: readonly (readonly [number, Quantity])[],
  constant = 0,
): Quantity {
  const sum = new Map<string, number>();
  let [low, high] = [constant, constant];
  for (const [times, quantity] of terms) {
    for (const [part, amount] of quantity.sum) sum.set(part, (sum.get(part) ?? 0) + times * amount);
    [low, high] = [low + times * quantity.constant, high + times * quantity.constant];
  }
  const added = low;
  for (const [part, amount] of sum) {
    const bounds = stock.quantities.find((each) => each.name === part);
    if (!bounds || Math.abs(amount) < 1e-9) continue;
    const ends = [amount * bounds.low, amount * bounds.high];
    [low, high] = [low + Math.min(...ends), high + Math.max(...ends)];
  }
  return { name, dimension, low, high, sum, constant: added, subject: null };
}

/** Those that can be compared with one another: more than one value, and the dimension asked for. */
export const varied = (stock: Stock, dimension: Dimension): readonly Quantity[] =>
  stock.quantities.filter((each) => each.dimension === dimension && each.high - each.low > 1e-6);

/** The number as a file writes it, sometimes with its unit. */
export function written(draw: Draw, stock: Stock, dimension: Dimension, value: number): number | string {
  const unit = dimension === 'own' ? stock.unit : dimension === 'minutes' ? 'min' : null;
  return unit && draw.chance(25) ? `${value} ${unit}` : value;
}

/** A cut that leaves something on both sides: `low < cut <= high`, or for `upper` `low <= cut < high`. */
export function cutOf(draw: Draw, { subject, low, high, dimension }: Quantity, upper: boolean): number {
  if (subject)
    return decimal(subject, draw.whole(subject.low + (upper ? 0 : 1), subject.high - (upper ? 1 : 0)));
  if (dimension === 'minutes') return 30 * draw.whole(1, 3);
  const top = Math.min(high, low + 12);
  const grid = top - low > 2 ? 2 : 10;
  const inside = [Math.floor(low * grid) + 1, Math.ceil(top * grid) - 1];
  const [first = 0, last = 0] = inside;
  return first > last ? Number(((low + top) / 2).toFixed(3)) : draw.whole(first, last) / grid;
}

/** Declares a limit that an observation can be compared with, and with it a range inside which it may be changed. */
export function drawLimit(draw: Draw, stock: Stock, subject: Subject): void {
  const name = `lim_${Object.keys(stock.limits).length + 1}`;
  const value = draw.whole(subject.low + 1, subject.high - 1);
  const ends = [Math.max(subject.low + 1, value - 1), Math.min(subject.high - 1, value + 1)] as const;
  const changes = draw.chance(50);
  stock.limits[name] = {
    value: decimal(subject, value),
    ...(stock.unit ? { unit: stock.unit } : {}),
    ...(changes ? { between: ends.map((end) => decimal(subject, end)) } : {}),
  };
  const [low, high] = changes ? ends : [value, value];
  stock.quantities.push(itself(name, ownDimension(stock), decimal(subject, low), decimal(subject, high)));
}
