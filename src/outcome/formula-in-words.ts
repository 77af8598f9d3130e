import type { Expression, Operand } from '../protocol/protocol.ts';
import type { Amounts } from './amounts.ts';
import type { NumberWriter } from './number-in-words.ts';
import { hows } from './sentences.ts';
import type { View } from './view.ts';

/** Sums of more parts than this are shown without the parts that are 0. */
const fewParts = 3;

type Words = (view: View) => string;

const signs = { plus: '+', minus: '−', times: '×', divided_by: '/' } as const;
const binding = { plus: 1, minus: 1, times: 2, divided_by: 2 } as const;

/** A formula with its values put in, ready to stand in brackets: `[systolic 104 + 2 × diastolic 48] / 3`. */
export function formulaWriter(formula: Expression, amounts: Amounts, numbers: NumberWriter): Words {
  const parts = sumOf(formula);
  if (parts && parts.length > fewParts) return longSum(parts, amounts, numbers);
  return write(formula, 0, numbers);
}

function write(expression: Expression, outer: number, numbers: NumberWriter): Words {
  if (isOperand(expression)) return numbers.named(expression);
  if (expression.kind === 'negative') {
    const of = write(expression.of, 3, numbers);
    return (view) => `−${of(view)}`;
  }
  const { kind } = expression;
  const own = binding[kind];
  const left = write(expression.left, own, numbers);
  // What is taken away or divided by needs its brackets also where it binds as strongly.
  const right = write(expression.right, kind === 'minus' || kind === 'divided_by' ? own + 1 : own, numbers);
  const text: Words = (view) => `${left(view)} ${signs[kind]} ${right(view)}`;
  return own < outer ? (view) => `[${text(view)}]` : text;
}

const isOperand = (expression: Expression): expression is Operand =>
  !('left' in expression) && expression.kind !== 'negative';

/** The parts of a plain sum; null for any other formula. */
function sumOf(formula: Expression): Operand[] | null {
  if (isOperand(formula)) return [formula];
  if (formula.kind !== 'plus') return null;
  const [left, right] = [sumOf(formula.left), sumOf(formula.right)];
  return left && right && [...left, ...right];
}

function longSum(parts: readonly Operand[], amounts: Amounts, numbers: NumberWriter): Words {
  const each = parts.map((part) => ({ text: numbers.named(part), amount: amounts.of(part).amount }));
  return (view) => {
    const shown = each.filter(({ amount }) => {
      const { low, high } = amount(view);
      return low !== high || low.n !== 0;
    });
    const sum = shown.map(({ text }) => text(view)).join(' + ');
    if (shown.length === each.length) return sum;
    return hows.theRest(sum);
  };
}
