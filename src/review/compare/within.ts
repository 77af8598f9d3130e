import type { Reach } from '../diagrams/reach.ts';
import type { Space as Functions } from '../diagrams/space.ts';
import { stepsOf } from '../diagrams/variables.ts';
import type { Section, Space } from './space.ts';

/** The parts of a space of complete sets that lie within a reach; none when it is null. */
export function sectionsWithin(space: Space, reach: Reach | null, functions: Functions): readonly Section[] {
  if (!reach) return [];
  const ranges = rangesOf(reach, functions);
  return space.sections.flatMap((section) => {
    const [lows, highs] = [section.lows.slice(), section.highs.slice()];
    for (const [key, [low, high]] of ranges) {
      const place = space.places.get(key);
      if (place === undefined) continue;
      const [from, to] = [Math.max(lows[place] as number, low), Math.min(highs[place] as number, high)];
      if (from > to) return [];
      [lows[place], highs[place]] = [from, to];
    }
    return [{ lows, highs }];
  });
}

/** By the key of a dimension, in its steps. Whether a several is known is no dimension. */
function rangesOf(
  reach: Reach,
  { variables }: Functions,
): ReadonlyMap<string, readonly [low: number, high: number]> {
  return new Map(
    variables.flatMap((variable, place) => {
      const { observation, member, values } = variable;
      const [first, last] = reach[place] as Reach[number];
      const to = Math.min(last, values - 1);
      if (member !== null) return [[`${observation.name}:${member}`, [first, to]] as const];
      if (observation.kind === 'several') return [];
      if (observation.kind !== 'number') return [[observation.name, [first, to]] as const];
      return [[observation.name, [stepsOf(variable, first).low, stepsOf(variable, to).high]] as const];
    }),
  );
}
