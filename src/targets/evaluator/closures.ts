import type { PerOperator } from '../target.ts';

/** Works one expression out from the slots of inputs and steps; a truth is 1 or 0. */
export type Work = (slots: Float64Array) => number;

type Two = readonly [Work, Work];

/** Each operator as a closure. The common counts of parts are spelt out, because loops over parts cost most of the time. */
export const closures: PerOperator<Work> = {
  '+': (parts) => {
    const [a, b] = parts as Two;
    if (parts.length === 1) return a;
    if (parts.length === 2) return (slots) => a(slots) + b(slots);
    return (slots) => {
      let total = 0;
      for (const part of parts) total += part(slots);
      return total;
    };
  },
  '-': (parts) => {
    const [a, b] = parts as Two;
    return parts.length === 1 ? (slots) => -a(slots) : (slots) => a(slots) - b(slots);
  },
  '*': (parts) => {
    const [a, b] = parts as Two;
    return (slots) => a(slots) * b(slots);
  },
  min: (parts) => {
    const [first, ...rest] = parts as [Work, ...Work[]];
    return (slots) => {
      let least = first(slots);
      for (const part of rest) {
        const value = part(slots);
        if (value < least) least = value;
      }
      return least;
    };
  },
  max: (parts) => {
    const [first, ...rest] = parts as [Work, ...Work[]];
    return (slots) => {
      let most = first(slots);
      for (const part of rest) {
        const value = part(slots);
        if (value > most) most = value;
      }
      return most;
    };
  },
  '<': (parts) => {
    const [a, b] = parts as Two;
    return (slots) => (a(slots) < b(slots) ? 1 : 0);
  },
  '<=': (parts) => {
    const [a, b] = parts as Two;
    return (slots) => (a(slots) <= b(slots) ? 1 : 0);
  },
  and: (parts) => {
    const [a, b] = parts as Two;
    if (parts.length === 2) return (slots) => (a(slots) !== 0 && b(slots) !== 0 ? 1 : 0);
    return (slots) => {
      for (const part of parts) if (part(slots) === 0) return 0;
      return 1;
    };
  },
  or: (parts) => {
    const [a, b] = parts as Two;
    if (parts.length === 2) return (slots) => (a(slots) !== 0 || b(slots) !== 0 ? 1 : 0);
    return (slots) => {
      for (const part of parts) if (part(slots) !== 0) return 1;
      return 0;
    };
  },
  '!': (parts) => {
    const [a] = parts as readonly [Work];
    return (slots) => (a(slots) === 0 ? 1 : 0);
  },
  if: (parts) => {
    const last = parts.length - 1;
    return (slots) => {
      for (let at = 0; at < last; at += 2) {
        if ((parts[at] as Work)(slots) !== 0) return (parts[at + 1] as Work)(slots);
      }
      return (parts[last] as Work)(slots);
    };
  },
};
