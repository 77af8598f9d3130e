import type { Expression, MeasureHow, Operand, Protocol } from '../protocol.ts';
import { operandsIn } from '../walk.ts';
import type { Check } from './check.ts';

/** A curve is read at a number that is no quotient: between whole numbers its place would not be exact. */
export const curveOfQuotient: Check = ({ protocol }, report) => {
  const quotients = quotientsOf(protocol);
  for (const { how, path } of protocol.measures.values()) {
    if (how.kind !== 'curve' || how.of.kind !== 'measure' || !quotients.has(how.of.name)) continue;
    report('curve_of_quotient', [...path, 'curve', 'of'], { name: how.of.name });
  }
};

function quotientsOf({ measures }: Protocol): Set<string> {
  const found = new Set<string>();
  const isQuotient = (operand: Operand): boolean => operand.kind === 'measure' && found.has(operand.name);
  for (const { name, how } of measures.values()) if (divides(how, isQuotient)) found.add(name);
  return found;
}

function divides(how: MeasureHow, isQuotient: (operand: Operand) => boolean): boolean {
  switch (how.kind) {
    case 'formula':
      return [...operandsIn(how.formula)].some(isQuotient) || dividesByNamed(how.formula);
    case 'choose':
      return how.entries.some(({ use }) => isQuotient(use));
    case 'first_known':
      return how.of.some(isQuotient);
    default:
      return how.kind === 'average';
  }
}

function dividesByNamed(expression: Expression): boolean {
  if (expression.kind === 'negative') return dividesByNamed(expression.of);
  if (!('left' in expression)) return false;
  const named = [...operandsIn(expression.right)].some(({ kind }) => kind !== 'number');
  if (expression.kind === 'divided_by' && named) return true;
  return dividesByNamed(expression.left) || dividesByNamed(expression.right);
}
