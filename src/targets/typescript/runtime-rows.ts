import { code, type Code } from './code.ts';

/** What makes one row of a set, by the name of the function: whole numbers, and what stands for nothing. */
export const toRows: readonly (readonly [name: string, text: Code])[] = [
  [
    'stepsInRow',
    code`/** A number in its unit as steps of a row; what is far outside of what is possible stays so, at two above \`nothing\`. */
function stepsInRow(value: number, by: number, over: number, nothing: number): number {
  const whole = by === over && (value | 0) === value ? value : steps(value, by, over);
  return Math.abs(whole) < -nothing - 2 ? whole : nothing + 2;
}`,
  ],
  [
    'noneInRow',
    code`/** What is not there; a word that is no choice is refused. A range, or what was tried and not obtained, does not fit into a row. */
function noneInRow(value: unknown, nothing: number): number {
  if (value === null || value === undefined) return nothing;
  if (typeof value === 'object') isRow = false;
  return nothing + 2;
}`,
  ],
  [
    'severalInRow',
    code`function severalInRow(value: unknown, choices: readonly string[], nothing: number): number {
  const mask = maskOf(value, choices);
  if (mask >= 0) return mask;
  return Array.isArray(value) ? nothing + 2 : noneInRow(value, nothing);
}`,
  ],
  [
    'lookedBackInRow',
    code`function lookedBackInRow(value: number | LookedBack | null): number {
  if (typeof value === 'object' && value !== null) isRow = false;
  return typeof value === 'number' ? value : NaN;
}`,
  ],
];
