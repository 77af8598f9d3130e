import Fraction from 'fraction.js';
import { isNever, same, type Exact } from '../../outcome/exact.ts';
import type { Amount } from '../../outcome/amounts.ts';
import type { Answered } from './answered.ts';

/** A measure's value; null when it has none. */
function valueOf(name: string, { compiled, answers }: Answered): Amount | null {
  if (compiled.amounts.maybe(name)(answers.narrow.result) === 0) return null;
  return compiled.amounts.of({ kind: 'measure', name }).amount(answers.narrow);
}

/** Whether a measure is the same in both as far as a case can say: at six decimals, and no range that ends at never. */
export const sameMeasure = (name: string, before: Answered, after: Answered): boolean => {
  const [first, second] = [valueOf(name, before), valueOf(name, after)];
  if (!first || !second) return first === second;
  if (isNever(first.high) && !isNever(first.low)) return true;
  return (
    (same(first.low, second.low) && same(first.high, second.high)) ||
    measureWords(name, before) === measureWords(name, after)
  );
};

/** As a case expects it: `7`, `missing`, `never`, or `{ low: 1, high: 4 }`. */
export function measureWords(name: string, answered: Answered): string {
  const value = valueOf(name, answered);
  if (!value) return 'missing';
  const [low, high] = [words(value.low), words(value.high)];
  return low === high ? low : `{ low: ${low}, high: ${high} }`;
}

function words(value: Exact): string {
  if (isNever(value)) return 'never';
  return new Fraction(value.n).div(new Fraction(value.d)).round(6).toString();
}
