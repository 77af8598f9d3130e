import { stepsInJson } from '../outcome/steps-in-json.ts';
import type { Expectation } from './case.ts';
import type { Asked, Difference } from './case-result.ts';

/** What of the ranges in which the truth may lie is otherwise than expected. */
export function truthDifferences({ truth }: Expectation, { compiled, bounds, path }: Asked): Difference[] {
  return [...truth].flatMap(([name, { low, high }]): Difference[] => {
    const observation = compiled.protocol.observations.get(name);
    const range = bounds.facts.present.get(name)?.range;
    if (!observation || !range) return [];
    const [from, to] = range.map((steps) => stepsInJson(steps, observation)) as [number, number];
    if (from === low && to === high) return [];
    return [
      {
        what: `the truth of "${name}"`,
        expected: `${low} to ${high}`,
        found: `${from} to ${to}`,
        path: [...path, 'truth', name],
      },
    ];
  });
}
