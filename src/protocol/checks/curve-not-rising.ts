import type { Check } from './check.ts';

/** The points of a curve stand one after the other, each further on than the one before. */
export const curveNotRising: Check = ({ protocol }, report) => {
  for (const { how, path } of protocol.measures.values()) {
    if (how.kind !== 'curve') continue;
    how.points.forEach(({ at }, index) => {
      const before = how.points[index - 1];
      if (!before || at.compare(before.at) > 0) return;
      report('curve_not_rising', [...path, 'curve', 'points', index], {
        before: before.at.toString(),
        at: at.toString(),
      });
    });
  }
};
