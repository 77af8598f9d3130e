import type { Allowed } from '../diagrams/preferred.ts';
import type { Variable } from '../diagrams/variables.ts';

/** Everything that is needed has a value; what only helps may be left out. */
export function needsKnown({ observation, values }: Variable): Allowed {
  const mayLack = observation.role === 'helps' || observation.ifNotStated !== null;
  return { values: [0, values - 1], lacks: () => mayLack };
}
