import type { ObservationEntry } from './observation.ts';

/** The lowest and the highest value of any age that is possible, in steps. `{ low: 0, high: 0 }` for what is no number. */
export function possibleRange({ possible }: ObservationEntry): { low: number; high: number } {
  if (possible.length === 0) return { low: 0, high: 0 };
  return {
    low: Math.min(...possible.map(({ low }) => low)),
    high: Math.max(...possible.map(({ high }) => high)),
  };
}
