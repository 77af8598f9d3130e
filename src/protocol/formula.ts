import { parseExpressionAt, type Expression as Parsed } from 'acorn';
import Fraction from 'fraction.js';
import type { Expression, Operand } from './protocol.ts';

/** What is wrong with a formula, in the facts of its problem. */
export type FormulaFault =
  | { readonly kind: 'unreadable'; readonly near: string }
  | { readonly kind: 'not_arithmetic'; readonly part: string }
  | { readonly kind: 'unknown_name'; readonly name: string };

/** What a name in a formula stands for; null when nothing is called so. */
export type ResolveName = (name: string) => Operand | null;

const arithmetic = { '+': 'plus', '-': 'minus', '*': 'times', '/': 'divided_by' } as const;

/**
 * Reads a formula: numbers, names, + - * / and brackets.
 *
 * `(systolic + 2 * diastolic) / 3` is a quotient of a sum. Faults come all at once; with any, there is no expression.
 */
export function readFormula(
  text: string,
  resolve: ResolveName,
): { expression: Expression | null; faults: FormulaFault[] } {
  const faults: FormulaFault[] = [];
  const parsed = parse(text, faults);
  if (!parsed) return { expression: null, faults };
  const expression = read(parsed);
  return { expression: faults.length > 0 ? null : expression, faults };

  function read(node: Parsed): Expression | null {
    switch (node.type) {
      case 'Literal':
        return readNumber(text.slice(node.start, node.end), faults);
      case 'Identifier': {
        const operand = resolve(node.name);
        if (!operand) faults.push({ kind: 'unknown_name', name: node.name });
        return operand;
      }
      case 'UnaryExpression':
        if (node.operator === '-') {
          const of = read(node.argument);
          return of && { kind: 'negative', of };
        }
        return refuse(node);
      case 'BinaryExpression':
        if (node.operator in arithmetic && node.left.type !== 'PrivateIdentifier') {
          const left = read(node.left);
          const right = read(node.right);
          return left && right && { kind: arithmetic[node.operator as keyof typeof arithmetic], left, right };
        }
        return refuse(node);
      default:
        return refuse(node);
    }
  }

  function refuse(node: Parsed): null {
    faults.push({ kind: 'not_arithmetic', part: text.slice(node.start, node.end) });
    return null;
  }
}

function parse(text: string, faults: FormulaFault[]): Parsed | null {
  let commented = false;
  try {
    const onComment = (): void => {
      commented = true;
    };
    const parsed = parseExpressionAt(text, 0, { ecmaVersion: 2022, sourceType: 'module', onComment });
    const rest = text.slice(parsed.end).trim();
    if (rest === '' && !commented) return parsed;
    faults.push({ kind: 'unreadable', near: commented ? text : rest });
  } catch (error) {
    const position = error instanceof SyntaxError && 'pos' in error ? Number(error.pos) : 0;
    faults.push({
      kind: 'unreadable',
      near: text.slice(Math.max(0, position - 5), position + 15).trim() || text.trim(),
    });
  }
  return null;
}

function readNumber(written: string, faults: FormulaFault[]): Operand | null {
  if (!/^\d{1,15}(\.\d{1,14})?$/.test(written)) {
    faults.push({ kind: 'not_arithmetic', part: written });
    return null;
  }
  return { kind: 'number', value: new Fraction(written), unit: null };
}
