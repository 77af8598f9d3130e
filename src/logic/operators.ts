/**
 * The operators of logic: a closed list, all of JSON Logic. Each takes whole numbers or truths; none ever sees a null.
 *
 * Truths are true and false; a flag that enters logic as 0 or 1 counts as one. Every target answers every operator: it is
 * written as a record over `Operator`, so that one that forgets an operator does not compile.
 */
export const operators = {
  '+': { takes: 'numbers', gives: 'number', least: 1, most: null, meaning: 'the sum' },
  '-': {
    takes: 'numbers',
    gives: 'number',
    least: 1,
    most: 2,
    meaning: 'the first less the second; of one, its negative',
  },
  '*': { takes: 'numbers', gives: 'number', least: 2, most: 2, meaning: 'the product' },
  min: { takes: 'numbers', gives: 'number', least: 1, most: null, meaning: 'the lowest' },
  max: { takes: 'numbers', gives: 'number', least: 1, most: null, meaning: 'the highest' },
  '<': { takes: 'numbers', gives: 'truth', least: 2, most: 2, meaning: 'the first is lower than the second' },
  '<=': {
    takes: 'numbers',
    gives: 'truth',
    least: 2,
    most: 2,
    meaning: 'the first is lower than the second, or the same',
  },
  and: { takes: 'truths', gives: 'truth', least: 1, most: null, meaning: 'every one holds' },
  or: { takes: 'truths', gives: 'truth', least: 1, most: null, meaning: 'at least one holds' },
  '!': { takes: 'truths', gives: 'truth', least: 1, most: 1, meaning: 'it does not hold' },
  if: {
    takes: 'truth, number, …, number',
    gives: 'number',
    least: 3,
    most: null,
    meaning: 'the number after the first truth that holds; else the last',
  },
} as const;

export type Operator = keyof typeof operators;

/** An expression of logic, in JSON Logic. `{ var: 'systolic:low' }` is an input or an earlier step. */
export type Logical =
  number | boolean | { readonly var: string } | { readonly [O in Operator]?: readonly Logical[] };

export const variable = (name: string): Logical => ({ var: name });

/** Whether an expression is an operation, and which: `[operator, arguments]`; null for a number, a truth or a variable. */
export function operation(logical: Logical): readonly [Operator, readonly Logical[]] | null {
  if (typeof logical !== 'object' || 'var' in logical) return null;
  const [entry] = Object.entries(logical);
  return entry as [Operator, readonly Logical[]];
}

/** Every one holds; without any, true. Truths that are known are folded. */
export function and(...parts: readonly Logical[]): Logical {
  const open = distinct(parts.filter((part) => part !== true));
  if (open.includes(false)) return false;
  if (open.length === 0) return true;
  return open.length === 1 ? (open[0] as Logical) : { and: open };
}

/** At least one holds; without any, false. */
export function or(...parts: readonly Logical[]): Logical {
  const open = distinct(parts.filter((part) => part !== false));
  if (open.includes(true)) return true;
  if (open.length === 0) return false;
  return open.length === 1 ? (open[0] as Logical) : { or: open };
}

export function not(part: Logical): Logical {
  if (typeof part === 'boolean') return !part;
  const inner = operation(part);
  return inner?.[0] === '!' ? (inner[1][0] as Logical) : { '!': [part] };
}

/** The first when the truth holds, else the second. */
export function either(truth: Logical, first: Logical, second: Logical): Logical {
  if (typeof truth === 'boolean') return truth ? first : second;
  return { if: [truth, first, second] };
}

export function sum(parts: readonly Logical[]): Logical {
  const constant = parts.reduce<number>((total, part) => total + (typeof part === 'number' ? part : 0), 0);
  const open = parts.filter((part) => typeof part !== 'number');
  if (open.length === 0) return constant;
  const all = constant === 0 ? open : [...open, constant];
  return all.length === 1 ? (all[0] as Logical) : { '+': all };
}

export function times(factor: number, part: Logical): Logical {
  if (factor === 1) return part;
  return typeof part === 'number' ? factor * part : { '*': [factor, part] };
}

export const lowest = (parts: readonly Logical[]): Logical =>
  parts.length === 1 ? (parts[0] as Logical) : { min: parts };
export const highest = (parts: readonly Logical[]): Logical =>
  parts.length === 1 ? (parts[0] as Logical) : { max: parts };

export function lessOrSame(left: Logical, right: Logical): Logical {
  return typeof left === 'number' && typeof right === 'number' ? left <= right : { '<=': [left, right] };
}

export function less(left: Logical, right: Logical): Logical {
  return typeof left === 'number' && typeof right === 'number' ? left < right : { '<': [left, right] };
}

function distinct(parts: readonly Logical[]): Logical[] {
  const seen = new Set<string>();
  return parts.filter((part) => {
    const key = typeof part === 'object' && 'var' in part ? part.var : null;
    if (key === null || !seen.has(key)) {
      if (key !== null) seen.add(key);
      return true;
    }
    return false;
  });
}
