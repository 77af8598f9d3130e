import type { Logic } from '../../logic/logic.ts';
import { operation, type Logical } from '../../logic/operators.ts';

/** Whether an expression names something of which `is` holds. */
export function reads(logical: Logical, is: (name: string) => boolean): boolean {
  if (typeof logical !== 'object') return false;
  const inner = operation(logical);
  return inner ? inner[1].some((part) => reads(part, is)) : is((logical as { readonly var: string }).var);
}

/** For each step the needed steps that read it. */
export function readersOf({ steps }: Logic, needed: ReadonlySet<string>): readonly (readonly number[])[] {
  const found = new Map(steps.map(({ name }) => [name, [] as number[]]));
  steps.forEach(({ name, is }, index) => {
    if (!needed.has(name)) return;
    reads(is, (read) => {
      found.get(read)?.push(index);
      return false;
    });
  });
  return [...found.values()];
}

/** The names that answers depend on: steps and inputs. */
export function neededSteps({ steps }: Logic, wanted: readonly Logical[]): ReadonlySet<string> {
  const needed = new Set<string>();
  const note = (name: string): boolean => {
    needed.add(name);
    return false;
  };
  for (const each of wanted) reads(each, note);
  for (const { name, is } of steps.toReversed()) if (needed.has(name)) reads(is, note);
  return needed;
}

/** Which kinds of inputs a number is made of, as bits; a truth is made of none. Notes where two kinds are compared. */
export function numberKinds(
  logical: Logical,
  kindOf: (name: string) => number,
  found: { coupled: boolean },
): number {
  if (typeof logical !== 'object') return 0;
  const inner = operation(logical);
  if (!inner) return kindOf((logical as { readonly var: string }).var);
  const [operator, parts] = inner;
  const kinds = parts.map((part) => numberKinds(part, kindOf, found));
  const all = kinds.reduce((left, right) => left | right, 0);
  const compares = operator === '<' || operator === '<=' || operator === 'min' || operator === 'max';
  if (compares && all === 3) found.coupled = true;
  const isNumber = operator === '+' || operator === '-' || operator === '*' || operator === 'if';
  return isNumber || operator === 'min' || operator === 'max' ? all : 0;
}
