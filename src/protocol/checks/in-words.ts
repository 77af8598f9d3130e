import type Fraction from 'fraction.js';
import type { Unit } from '../../vocabulary/units.ts';
import type { NumberComparison, Operand } from '../protocol.ts';

/** A number with its unit: `38.3 °C`. Fractions that are no short decimal have six decimals. */
export function quantityWords(value: Fraction, unit: Unit | null): string {
  const text = value.round(6).equals(value) ? value.toString() : value.round(6).toString();
  return unit ? `${text} ${unit.word}` : text;
}

const hows = { below: 'below', above: 'above', at_most: 'at most', at_least: 'at least' } as const;

/** What a comparison asks for: `systolic below 90 mmHg`. */
export function askedWords({ subject, how, to }: NumberComparison): string {
  return `${subject.name} ${hows[how]} ${operandWords(to)}`;
}

const operandWords = (operand: Operand): string =>
  operand.kind === 'number' ? quantityWords(operand.value, operand.unit) : operand.name;
