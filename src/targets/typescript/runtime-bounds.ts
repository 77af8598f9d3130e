import { code, type Code } from './code.ts';

/** What writes the values of a set as bounds, by the name of the function. */
export const toBounds: readonly (readonly [name: string, text: Code])[] = [
  [
    'writeNumber',
    code`function writeNumber(
  b: Float64Array,
  index: number,
  lowAt: number,
  highAt: number,
  knownAt: number,
  unobtainableAt: number,
  missingAt: number,
  assumed: number,
): void {
  const isGiven = state[index] === 1;
  const isAssumed = !isGiven && state[index] !== 3 && assumed !== Infinity;
  if (!isGiven && !isAssumed) possibleAt(index);
  b[lowAt] = isGiven ? (low[index] as number) : isAssumed ? assumed : least;
  b[highAt] = isGiven ? (high[index] as number) : isAssumed ? assumed : most;
  b[knownAt] = isGiven ? 1 : 0;
  b[unobtainableAt] = state[index] === 2 ? 1 : 0;
  if (missingAt >= 0) b[missingAt] = isGiven || isAssumed ? 0 : 1;
}`,
  ],
  [
    'writeChoice',
    code`function writeChoice(
  b: Float64Array,
  index: number,
  first: number,
  count: number,
  knownAt: number,
  unobtainableAt: number,
  missingAt: number,
  assumed: number,
): void {
  const isGiven = state[index] === 1;
  const one = isGiven ? (low[index] as number) : state[index] === 3 ? Infinity : assumed;
  for (let place = 0; place < count; place += 1) b[first + place] = one === Infinity || one === place ? 1 : 0;
  b[knownAt] = isGiven ? 1 : 0;
  b[unobtainableAt] = state[index] === 2 ? 1 : 0;
  if (missingAt >= 0) b[missingAt] = one === Infinity ? 1 : 0;
}`,
  ],
  [
    'writeSeveral',
    code`function writeSeveral(
  b: Float64Array,
  index: number,
  first: number,
  sure: number,
  count: number,
  knownAt: number,
  unobtainableAt: number,
  missingAt: number,
): void {
  const isGiven = state[index] === 1;
  for (let place = 0; place < count; place += 1) {
    const isIn = isGiven && ((low[index] as number) & (1 << place)) !== 0;
    b[first + place] = isIn || !isGiven ? 1 : 0;
    b[sure + place] = isIn ? 1 : 0;
  }
  b[knownAt] = isGiven ? 1 : 0;
  b[unobtainableAt] = state[index] === 2 ? 1 : 0;
  if (missingAt >= 0) b[missingAt] = isGiven ? 0 : 1;
}`,
  ],
  [
    'limitOf',
    code`/** A limit in steps. Throws outside what the protocol allows. */
function limitOf(
  name: string,
  value: number | undefined,
  own: number,
  from: number,
  to: number,
  by: number,
  over: number,
): number {
  if (value === undefined) return own;
  const changed = steps(value, by, over);
  if (!(changed >= from && changed <= to)) throw new RangeError(name + ' is outside what the protocol allows');
  return changed;
}`,
  ],
  [
    'writeLookBack',
    code`function writeLookBack(
  b: Float64Array,
  value: number | LookedBack | null,
  lowAt: number,
  sureAt: number,
  maybeAt: number,
  openAt: number,
  countAt: number,
): void {
  const found = typeof value === 'object' ? value : { low: value, high: value, sure: true, maybe: true };
  b[lowAt] = found?.low ?? 0;
  b[lowAt + 1] = found?.high ?? 0;
  b[sureAt] = found?.sure ? 1 : 0;
  b[maybeAt] = found?.maybe ? 1 : 0;
  if (openAt >= 0) b[openAt] = found !== null && 'open' in found && found.open ? 1 : 0;
  if (countAt >= 0) b[countAt] = (found !== null && 'count' in found ? found.count : 1) ?? 1;
}`,
  ],
];
