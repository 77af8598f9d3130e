/**
 * An exact number: `n` over `d`, `d` above zero. Whole numbers stand in plain numbers as long as those hold them exactly,
 * and in large ones otherwise. `never`, which is above every number, is 1 over 0.
 */
export interface Exact {
  readonly n: number | bigint;
  readonly d: number | bigint;
}

export const never: Exact = { n: 1, d: 0 };
export const zero: Exact = { n: 0, d: 1 };

export const isNever = ({ d }: Exact): boolean => Number(d) === 0;

/** A quotient of two whole numbers; the bottom is above zero. */
export function over(top: number | bigint, bottom: number | bigint): Exact {
  if (Number.isSafeInteger(top) && Number.isSafeInteger(bottom)) return { n: top, d: bottom };
  return lowestTerms(BigInt(top), BigInt(bottom));
}

export function times({ n, d }: Exact, by: Exact): Exact {
  if (by.n === 1 && by.d === 1) return { n, d };
  const [top, bottom] = [small(n, by.n), small(d, by.d)];
  if (top !== null && bottom !== null) return { n: top, d: bottom };
  return lowestTerms(BigInt(n) * BigInt(by.n), BigInt(d) * BigInt(by.d));
}

export function minus(left: Exact, right: Exact): Exact {
  const [first, second, bottom] = [small(left.n, right.d), small(right.n, left.d), small(left.d, right.d)];
  if (first !== null && second !== null && bottom !== null && Number.isSafeInteger(first - second)) {
    return { n: first - second, d: bottom };
  }
  return lowestTerms(
    BigInt(left.n) * BigInt(right.d) - BigInt(right.n) * BigInt(left.d),
    BigInt(left.d) * BigInt(right.d),
  );
}

/** Below zero when the first is lower, 0 when both are the same, else above zero. */
export function compare(left: Exact, right: Exact): number {
  const [first, second] = [small(left.n, right.d), small(right.n, left.d)];
  if (first !== null && second !== null) return first - second;
  const [a, b] = [BigInt(left.n) * BigInt(right.d), BigInt(right.n) * BigInt(left.d)];
  return a < b ? -1 : a > b ? 1 : 0;
}

export const absolute = ({ n, d }: Exact): Exact => (n < 0 ? { n: -n, d } : { n, d });
export const same = (left: Exact, right: Exact): boolean => compare(left, right) === 0;

/** As a fraction in its lowest terms: `200/3`. */
export function asFraction({ n, d }: Exact): string {
  const lowest = lowestTerms(BigInt(n), BigInt(d));
  return `${lowest.n}/${lowest.d}`;
}

/** The product of two plain numbers, null where a plain number does not hold it exactly. */
function small(left: number | bigint, right: number | bigint): number | null {
  if (typeof left !== 'number' || typeof right !== 'number') return null;
  const product = left * right;
  return Number.isSafeInteger(product) ? product : null;
}

function lowestTerms(n: bigint, d: bigint): Exact {
  let [a, b] = [n < 0n ? -n : n, d];
  while (b !== 0n) [a, b] = [b, a % b];
  const by = a === 0n ? 1n : a;
  return { n: plain(n / by), d: plain(d / by) };
}

function plain(value: bigint): number | bigint {
  const number = Number(value);
  return Number.isSafeInteger(number) ? number : value;
}
