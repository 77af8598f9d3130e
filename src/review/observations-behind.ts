import type { Input } from '../logic/inputs.ts';
import type { Logic } from '../logic/logic.ts';
import { operation, type Logical } from '../logic/operators.ts';

/** The observations that some answers depend on, through whatever steps, in the order of the inputs. */
export function observationsBehind(logic: Logic, answers: readonly Logical[]): string[] {
  const owners = inputsBehind(logic, answers)
    .filter(({ of }) => of === 'observation')
    .map(({ owner }) => owner);
  return [...new Set(owners)];
}

/** The inputs that some answers depend on. */
export function inputsBehind(logic: Logic, answers: readonly Logical[]): Input[] {
  const steps = new Map(logic.steps.map(({ name, is }) => [name, is]));
  const seen = new Set<string>();
  const open = [...answers];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const inner = operation(next);
    if (inner) open.push(...inner[1]);
    else if (typeof next === 'object' && 'var' in next && !seen.has(next.var)) {
      seen.add(next.var);
      const step = steps.get(next.var);
      if (step !== undefined) open.push(step);
    }
  }
  return logic.inputs.filter(({ name }) => seen.has(name));
}
