import type { PerOperator } from '../../targets/target.ts';

/**
 * A walk along one direction: each number of logic with how much it changes at each step of the walk, and how many steps every
 * truth that was asked stays as it is.
 */
export interface Trace {
  /** Inputs, then steps: whole numbers; truths are 1 and 0. */
  readonly values: Float64Array;
  /** The change of each of them at one step. */
  readonly slopes: Float64Array;
  /** The change of the expression that was worked out last. */
  slope: number;
  /** For so many steps, this one included, all that was asked is answered alike; 1 or more. */
  reach: number;
}

/** Works one expression out: gives its value, and leaves its change in `slope`. */
export type Traced = (trace: Trace) => number;

/** Whether `gap >= 0`, strictly `gap > 0`; shortens the reach to the step at which that turns. */
function holds(trace: Trace, gap: number, change: number, strict: boolean): boolean {
  const is = strict ? gap > 0 : gap >= 0;
  if (change === 0 || is === change > 0) return is;
  const far = Math.abs(gap);
  const by = Math.abs(change);
  // Whole numbers below 2^53 are divided so exactly that floor and ceiling are right; beyond that each step is asked anew.
  const exact = Number.isSafeInteger(far) && Number.isSafeInteger(by);
  const staysAtZero = is !== strict;
  const steps = exact ? (staysAtZero ? Math.floor(far / by) + 1 : Math.ceil(far / by)) : 1;
  if (steps < trace.reach) trace.reach = steps;
  return is;
}

function compared(parts: readonly Traced[], strict: boolean): Traced {
  const [a, b] = parts as readonly [Traced, Traced];
  return (trace) => {
    const left = a(trace);
    const leftSlope = trace.slope;
    const gap = b(trace) - left;
    const is = holds(trace, gap, trace.slope - leftSlope, strict);
    trace.slope = 0;
    return is ? 1 : 0;
  };
}

/** The lowest, or with −1 the highest: that one is followed until another overtakes it. */
function least(parts: readonly Traced[], sign: 1 | -1): Traced {
  const [first, ...rest] = parts as [Traced, ...Traced[]];
  return (trace) => {
    let best = first(trace);
    let slope = trace.slope;
    for (const part of rest) {
      const value = part(trace);
      const change = trace.slope;
      const stays = value === best ? (change - slope) * sign >= 0 : (value - best) * sign > 0;
      holds(trace, Math.abs(value - best), (stays ? change - slope : slope - change) * sign, false);
      if (!stays) [best, slope] = [value, change];
    }
    trace.slope = slope;
    return best;
  };
}

function product(parts: readonly Traced[]): Traced {
  const [a, b] = parts as readonly [Traced, Traced];
  return (trace) => {
    const left = a(trace);
    const leftSlope = trace.slope;
    const right = b(trace);
    const slope = leftSlope * right + left * trace.slope;
    // A square is no straight line: it is asked anew at each step.
    const straight = (leftSlope === 0 || trace.slope === 0) && Number.isSafeInteger(slope);
    if (!straight) trace.reach = 1;
    trace.slope = straight ? slope : 0;
    return left * right;
  };
}

/** Truths are asked in order until one decides: it goes on deciding for as long as it stays. */
function until(parts: readonly Traced[], decides: boolean): Traced {
  return (trace) => {
    let found = !decides;
    for (const part of parts) {
      if ((part(trace) !== 0) !== decides) continue;
      found = decides;
      break;
    }
    trace.slope = 0;
    return found ? 1 : 0;
  };
}

export const tracedOperators: PerOperator<Traced> = {
  '+': (parts) => (trace) => {
    let [total, slope] = [0, 0];
    for (const part of parts) {
      total += part(trace);
      slope += trace.slope;
    }
    trace.slope = slope;
    return total;
  },
  '-': (parts) => {
    const [a, b] = parts as readonly [Traced, Traced?];
    return (trace) => {
      const left = a(trace);
      const leftSlope = trace.slope;
      const right = b ? b(trace) : 2 * left;
      trace.slope = b ? leftSlope - trace.slope : -leftSlope;
      return left - right;
    };
  },
  '*': product,
  min: (parts) => least(parts, 1),
  max: (parts) => least(parts, -1),
  '<': (parts) => compared(parts, true),
  '<=': (parts) => compared(parts, false),
  and: (parts) => until(parts, false),
  or: (parts) => until(parts, true),
  '!': (parts) => {
    const [a] = parts as readonly [Traced];
    return (trace) => {
      const is = a(trace) === 0;
      trace.slope = 0;
      return is ? 1 : 0;
    };
  },
  if: (parts) => {
    const last = parts.length - 1;
    return (trace) => {
      for (let at = 0; at < last; at += 2) {
        if ((parts[at] as Traced)(trace) !== 0) return (parts[at + 1] as Traced)(trace);
      }
      return (parts[last] as Traced)(trace);
    };
  },
};
