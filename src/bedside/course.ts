import type { Protocol } from '../protocol/protocol.ts';
import type { Series } from '../series/series.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import { inTakingOrder } from './taking-order.ts';
import { stepsInWords } from './words.ts';

/** How one number went over the sets of a series, earliest first. */
export interface Course {
  readonly observation: string;
  readonly title: string;
  readonly unit: string;
  readonly points: readonly CoursePoint[];
}

export interface CoursePoint {
  /** In milliseconds since 1970. */
  readonly at: number;
  readonly time: string;
  /** In the observation's own unit, for drawing; the words say it exactly. */
  readonly value: number;
  readonly words: string;
  readonly isPresent: boolean;
}

/** The numbers that a protocol reads and that more than one set gives. Values known only as a range are not drawn. */
export function coursesOf(series: Series, { observations }: Protocol): readonly Course[] {
  const latest = Math.max(...series.sets.map(({ at }) => at ?? 0));
  const sets = series.sets
    .filter(({ at }) => at !== null)
    .toSorted((left, right) => (left.at ?? 0) - (right.at ?? 0));
  const numbers = [...observations.values()].filter(({ kind, standing }) => kind === 'number' && !standing);
  return inTakingOrder(numbers)
    .flatMap(({ entries }) => entries)
    .flatMap((entry): Course[] => {
      const points = sets.flatMap((set): CoursePoint[] => {
        const observed = set.observed.get(entry.name);
        if (observed?.kind !== 'number' || observed.value === null) return [];
        return [
          {
            at: set.at ?? 0,
            time: timeInWords(set.atText ?? ''),
            value: observed.value / entry.stepsPerUnit.valueOf(),
            words: stepsInWords(observed.value, entry),
            isPresent: set.at === latest,
          },
        ];
      });
      if (points.length < 2) return [];
      return [{ observation: entry.name, title: entry.title, unit: entry.unit?.word ?? '', points }];
    });
}
