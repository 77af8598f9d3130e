import type { Series } from '../series/series.ts';
import { Timeline } from '../series/timeline.ts';
import { levelOf } from './answers.ts';
import type { Compiled } from './compile.ts';
import type { LevelAt } from './in-force.ts';

/** The level at each time at which a set was taken, up to the evaluation time, in the order of time. One pass over the series. */
export function levelsOverTime(compiled: Compiled, series: Series): LevelAt[] {
  const { at } = series;
  const sets = series.sets
    .filter((set) => set.at !== null && at !== null && set.at <= at)
    .toSorted((left, right) => (left.at ?? 0) - (right.at ?? 0));
  const timeline = new Timeline(compiled.protocol, series);
  return sets.flatMap((set, index): LevelAt[] => {
    timeline.push(set);
    if (sets[index + 1]?.at === set.at) return [];
    const bounds = timeline.boundsAt(set.at, set.atText);
    return [{ at: set.at, atText: set.atText, level: levelOf(compiled, bounds) }];
  });
}
