import { code, type Code } from './code.ts';

/**
 * What modules share, by the name of the function: only what a module calls is written into it. Values of a set stand in three
 * lists: `low`, `high` and `state` (0 nothing, 1 a value, 2 unobtainable, 3 refused).
 */
export const reading: readonly (readonly [name: string, text: Code])[] = [
  [
    'exactSteps',
    code`/** From the decimal text, ties away from zero; NaN for what is no plain number. */
function exactSteps(value: number, by: number, over: number): number {
  const digits = /^(-?)([0-9]+)[.]?([0-9]*)$/.exec(String(value));
  if (!digits) return NaN;
  const [, minus = '', whole = '', part = ''] = digits;
  const unit = 10n ** BigInt(part.length) * BigInt(over);
  const rounded = Number((2n * BigInt(whole + part) * BigInt(by) + unit) / (2n * unit));
  return minus === '' ? rounded : -rounded;
}`,
  ],
  [
    'steps',
    code`/** A number in its unit as whole steps. Near the middle between two steps binary fractions do not tell which one is nearer. */
function steps(value: number, by: number, over: number): number {
  const exact = (value * by) / over;
  const whole = Math.round(exact);
  return Math.abs(exact - whole) < 0.49 ? whole : exactSteps(value, by, over);
}`,
  ],
  [
    'take',
    code`function take(index: number, from: number, to: number): void {
  low[index] = from;
  high[index] = to;
  state[index] = from <= to ? 1 : 3;
}`,
  ],
  [
    'takeNothing',
    code`function takeNothing(index: number, value: unknown): void {
  const isObject = typeof value === 'object' && value !== null;
  if (value === null || value === undefined || (isObject && 'declined' in value)) state[index] = 0;
  else state[index] = isObject && 'unobtainable' in value ? 2 : 3;
}`,
  ],
  [
    'takeNumber',
    code`function takeNumber(index: number, value: GivenSet[ObservationId], by: number, over: number): void {
  if (typeof value === 'number') take(index, steps(value, by, over), steps(value, by, over));
  else if (typeof value === 'object' && value !== null && 'low' in value)
    take(index, steps(value.low, by, over), steps(value.high, by, over));
  else takeNothing(index, value);
}`,
  ],
  [
    'takeChoice',
    code`function takeChoice(index: number, value: GivenSet[ObservationId], choices: readonly string[]): void {
  const place = typeof value === 'string' ? choices.indexOf(value) : -1;
  if (place >= 0) take(index, place, place);
  else takeNothing(index, value);
}`,
  ],
  [
    'maskOf',
    code`/** One bit for each choice; -1 where there is no list, or one with a choice that is not known. */
function maskOf(value: unknown, choices: readonly string[]): number {
  if (!Array.isArray(value)) return -1;
  let mask = 0;
  for (const each of value as readonly unknown[]) {
    const place = choices.indexOf(String(each));
    if (place < 0) return -1;
    mask |= 1 << place;
  }
  return mask;
}`,
  ],
  [
    'takeSeveral',
    code`function takeSeveral(index: number, value: GivenSet[ObservationId], choices: readonly string[]): void {
  const mask = maskOf(value, choices);
  if (mask >= 0) take(index, mask, mask);
  else if (Array.isArray(value)) state[index] = 3;
  else takeNothing(index, value);
}`,
  ],
  [
    'takeColumn',
    code`function takeColumn(index: number, value: number, nothing: number, width: number): void {
  if (value === nothing) state[index] = 0;
  else if (value === nothing + 1) state[index] = 2;
  else if (width > 0 && (value < 0 || value >= width)) state[index] = 3;
  else take(index, value, value);
}`,
  ],
  [
    'possibleAt',
    code`/** Into \`least\` and \`most\`: what is possible at this age, over every band that it touches. */
function possibleAt(index: number): void {
  const all = bands[index] ?? [];
  if (all.length === 3) {
    least = all[1] as number;
    most = all[2] as number;
    return;
  }
  const known = ageAt >= 0 && ageAt !== index && state[ageAt] === 1;
  let begins = -Infinity;
  least = Infinity;
  most = -Infinity;
  for (let band = 0; band < all.length; band += 3) {
    const ageBelow = all[band] as number;
    if (!known || ((low[ageAt] as number) < ageBelow && (high[ageAt] as number) >= begins)) {
      least = Math.min(least, all[band + 1] as number);
      most = Math.max(most, all[band + 2] as number);
    }
    begins = ageBelow;
  }
}`,
  ],
  [
    'refuseImpossible',
    code`function refuseImpossible(index: number): void {
  if (state[index] !== 1) return;
  possibleAt(index);
  if (!((low[index] as number) >= least && (high[index] as number) <= most)) state[index] = 3;
}`,
  ],
  [
    'contradict',
    code`/** Marks both of a pair, when no values inside their ranges could both be right. */
function contradict(
  lower: number,
  higher: number,
  mayBeEqual: boolean,
  scale: number,
  factor: number,
  shift: number,
): void {
  if (state[lower] !== 1 || state[higher] !== 1) return;
  const gap = factor * (high[higher] as number) + shift - scale * (low[lower] as number);
  if (mayBeEqual ? gap >= 0 : gap > 0) return;
  clashes[lower] = 1;
  clashes[higher] = 1;
}`,
  ],
  [
    'widen',
    code`/** Makes room for the truth around what was read, inside what is possible. */
function widen(index: number, above: number, below: number): void {
  if (state[index] !== 1) return;
  possibleAt(index);
  low[index] = Math.max(least, (low[index] as number) - above);
  high[index] = Math.min(most, (high[index] as number) + below);
}`,
  ],
  [
    'summaryOfOne',
    code`/** The summary where nothing is open. */
function summaryOfOne(yes: number, level: number): number {
  const shown = Math.max(level, 0);
  return -yes & (6 | ((shown + 1) << 3) | (shown << 11));
}`,
  ],
];
