import type { Step } from '../../logic/logic.ts';
import { and, less, lessOrSame, not, operation, or, type Logical } from '../../logic/operators.ts';

/**
 * A truth in which each comparison of a number with a highest, a lowest or a choice among numbers is spread over them: at least 3 of
 * the highest of `if(a, 3, -1)` and `if(b, 4, -1)` is *a or b*.
 *
 * It says the same. Solvers take seconds over the number (a level is the highest of all rules) and milliseconds over the truths.
 */
export function spread(logical: Logical, steps: ReadonlyMap<string, Step>): Logical {
  const inner = operation(logical);
  if (!inner) return logical;
  const [operator, parts] = inner;
  const [left, right] = parts;
  if ((operator === '<' || operator === '<=') && left !== undefined && right !== undefined) {
    const compare = operator === '<' ? less : lessOrSame;
    if (typeof left === 'number') {
      const made = over(right, { holds: (value) => compare(left, value), highest: or, lowest: and }, steps);
      if (made !== null) return made;
    } else if (typeof right === 'number') {
      const made = over(left, { holds: (value) => compare(value, right), highest: and, lowest: or }, steps);
      if (made !== null) return made;
    }
  }
  return { [operator]: parts.map((part) => spread(part, steps)) };
}

interface Comparison {
  /** Of a plain number. */
  readonly holds: (value: number) => Logical;
  /** How it holds of the highest and of the lowest of several: of one of them, or of all. */
  readonly highest: typeof and;
  readonly lowest: typeof and;
}

/** The comparison spread over a number; null where its ends are not all plain numbers. */
function over(logical: Logical, comparison: Comparison, steps: ReadonlyMap<string, Step>): Logical | null {
  if (typeof logical === 'number') return comparison.holds(logical);
  if (typeof logical !== 'object') return null;
  const inner = operation(logical);
  if (!inner) {
    const step = steps.get((logical as { readonly var: string }).var);
    return step ? over(step.is, comparison, steps) : null;
  }
  const [operator, parts] = inner;
  if (operator === 'if') return overChoice(parts, comparison, steps);
  if (operator !== 'max' && operator !== 'min') return null;
  const made = parts.map((part) => over(part, comparison, steps));
  if (made.includes(null)) return null;
  return comparison[operator === 'max' ? 'highest' : 'lowest'](...(made as Logical[]));
}

function overChoice(
  [when, then, ...rest]: readonly Logical[],
  comparison: Comparison,
  steps: ReadonlyMap<string, Step>,
): Logical | null {
  if (when === undefined || then === undefined) return null;
  const otherwise =
    rest.length === 1 ? over(rest[0] as Logical, comparison, steps) : overChoice(rest, comparison, steps);
  const made = over(then, comparison, steps);
  if (made === null || otherwise === null) return null;
  if (made === otherwise) return made;
  return or(and(when, made), and(not(when), otherwise));
}
