import type { Input } from '../../logic/inputs.ts';
import type { Logic } from '../../logic/logic.ts';
import { operation, type Logical } from '../../logic/operators.ts';

/** What a name of logic stands for. */
export type Named =
  { readonly kind: 'step'; readonly is: Logical } | { readonly kind: 'input'; readonly input: Input };

/** Every name of a logic. A step of the name of an input takes its place. */
export const stepsOfLogic = ({ inputs, steps }: Logic): ReadonlyMap<string, Named> =>
  new Map<string, Named>([
    ...inputs.map((input): [string, Named] => [input.name, { kind: 'input', input }]),
    ...steps.map(({ name, is }): [string, Named] => [name, { kind: 'step', is }]),
  ]);

/** The inputs that enter some numbers as numbers; those that only truths inside them ask are left out. */
export function numbersBehind(numbers: readonly Logical[], named: ReadonlyMap<string, Named>): Input[] {
  const found = new Set<Input>();
  const seen = new Set<string>();
  const open = [...numbers];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const inner = operation(next);
    if (inner) open.push(...numbersIn(inner));
    else if (typeof next === 'object' && 'var' in next && !seen.has(next.var)) {
      seen.add(next.var);
      const of = named.get(next.var);
      if (of?.kind === 'step') open.push(of.is);
      else if (of) found.add(of.input);
    }
  }
  return [...found];
}

function numbersIn([operator, parts]: NonNullable<ReturnType<typeof operation>>): readonly Logical[] {
  switch (operator) {
    case 'if':
      return parts.filter((_, index) => index % 2 === 1 || index === parts.length - 1);
    case '+':
    case '-':
    case '*':
    case 'min':
    case 'max':
      return parts;
    default:
      return [];
  }
}
