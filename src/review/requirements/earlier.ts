import { never } from '../../logic/inputs.ts';
import type { LookBack, Observation } from '../../protocol/protocol.ts';

/** Something observed in an earlier set. */
export interface Event {
  /** How long before the present set, in milliseconds. */
  readonly back: number;
  /** An observation with its value in steps; null where the whole set was as the present one is. */
  readonly was: { readonly observation: Observation; readonly steps: number } | null;
}

/** What a look back looks at, and what it is to come out as. */
export interface Sought {
  readonly how: LookBack;
  /** Null for `held`. */
  readonly observation: Observation | null;
  /** In the steps of the look back. */
  readonly value: number;
  /** What the present set gives, in steps; null where it is no number. */
  readonly present: number | null;
}

/** More earlier sets than these make nothing plainer. */
const most = 24;

/** What earlier sets would have to show for a look back to come out as it should. Whether they do is for the evaluator to say. */
export function earlierFor({ how, observation, value, present }: Sought): readonly Event[] {
  const at = (eighths: number): number => minutes((how.over * eighths) / 8);
  const like = (backs: readonly number[]): Event[] => backs.map((back) => ({ back, was: null }));
  const was = (eighths: number, steps: number): Event[] =>
    observation ? [{ back: at(eighths), was: { observation, steps } }] : [];
  const included = how.presentSet === 'included';
  switch (how.kind) {
    case 'count': {
      const count = value - (included ? 1 : 0);
      if (count > most) return [];
      return like(spread(Math.max(count, 0)).map((part) => minutes(how.over * part)));
    }
    case 'minutes_since':
      return value === 0 || value >= never ? [] : like([value]);
    case 'held':
      return like(runBack(value, how.longestGap ?? how.over));
    case 'change': {
      if (included) return was(7, (present ?? 0) - value);
      const { low, high } = hullOf(observation);
      const first = Math.min(high, high - value, Math.max(low, low - value, present ?? low));
      return [...was(7, first), ...was(1, first + value)];
    }
    default:
      return included && value === present ? [] : was(places[how.kind], value);
  }
}

/** Where in its window each kind has its set, in eighths: so that several look backs over one observation do not meet. */
const places = { earliest: 7, highest: 5, lowest: 4, average: 3, latest: 1 } as const;

/** A whole minute where that leaves anything, never past the window. */
const minutes = (milliseconds: number): number =>
  milliseconds < 60_000 ? Math.floor(milliseconds) : Math.floor(milliseconds / 60_000) * 60_000;

const spread = (count: number): number[] =>
  Array.from({ length: count }, (_, index) => (index + 1) / (count + 1));

/** From now back to a time, with no gap that would break the run. */
function runBack(back: number, longestGap: number): number[] {
  const sets = Math.ceil(back / longestGap);
  if (sets > most) return [];
  return Array.from({ length: sets }, (_, index) => Math.min(back, (index + 1) * longestGap));
}

function hullOf(observation: Observation | null): { low: number; high: number } {
  const possible = observation?.possible ?? [];
  return {
    low: Math.min(...possible.map(({ low }) => low)),
    high: Math.max(...possible.map(({ high }) => high)),
  };
}
