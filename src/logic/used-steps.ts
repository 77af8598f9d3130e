import type { Logic, Step } from './logic.ts';
import { operation, type Logical } from './operators.ts';

/** The steps that an answer depends on; the others are left out. */
export const usedSteps = (steps: readonly Step[], logic: Omit<Logic, 'steps'>): readonly Step[] =>
  stepsFor(steps, answers(logic));

/** The steps that these depend on, directly or through others. */
export function stepsFor(steps: readonly Step[], asked: Iterable<Logical>): readonly Step[] {
  const used = new Set<string>();
  const use = (logical: Logical): void => {
    const open: Logical[] = [logical];
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      const inner = operation(next);
      if (inner) open.push(...inner[1]);
      else if (typeof next === 'object' && 'var' in next) used.add(next.var);
    }
  };
  for (const logical of asked) use(logical);
  const kept: Step[] = [];
  for (let index = steps.length - 1; index >= 0; index -= 1) {
    const step = steps[index] as Step;
    if (!used.has(step.name)) continue;
    use(step.is);
    kept.push(step);
  }
  return kept.reverse();
}

/** The same logic with the steps of its answers alone: without those that only an explanation or a check reads. */
export function answersAlone(logic: Logic): Logic {
  const bare = { ...logic, conditions: new Map(), partitions: [], divisors: [] };
  return { ...bare, steps: usedSteps(logic.steps, bare) };
}

function* answers({
  applies,
  rules,
  measures,
  levels,
  conditions,
  partitions,
  divisors,
}: Omit<Logic, 'steps'>): Generator<Logical> {
  yield* Object.values(applies);
  for (const { certain, possible, counts, could, explained, notReliable } of rules) {
    yield* [certain, possible, counts, could, notReliable, ...Object.values(explained)];
  }
  for (const { low, high, bottomLow, bottomHigh, sure, maybe } of measures) {
    yield* [low, high, bottomLow, bottomHigh, sure, maybe];
  }
  yield* Object.values(levels);
  for (const { certain, possible } of [
    ...conditions.values(),
    ...divisors,
    ...partitions.flatMap(({ of }) => of),
  ]) {
    yield* [certain, possible];
  }
}
