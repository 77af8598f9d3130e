import { asFraction, type Exact } from './exact.ts';

/** A number as it is shown, and the number that the shown text stands for. */
export interface Written {
  readonly text: string;
  readonly shown: Exact;
}

const powers = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9] as const;

/**
 * A number with at most so many decimals, rounded to the nearest, halves away from zero, without zeros at the end.
 *
 * `decimal(200/3, 2)` is `66.67`; `decimal(65, 2)` is `65`.
 */
export function decimal({ n, d }: Exact, places: number): string {
  if (d === 1) return String(n);
  const far = n < 0 ? -n : n;
  const digits = nearest(far, d, places).padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  const rest = places === 0 ? '' : digits.slice(-places).replace(/0+$/, '');
  const shown = rest === '' ? whole : `${whole}.${rest}`;
  return n < 0 && /[1-9]/.test(shown) ? `-${shown}` : shown;
}

/** `n / d` in units of the last decimal place, as digits. */
function nearest(n: number | bigint, d: number | bigint, places: number): string {
  const power = powers[places];
  if (typeof n === 'number' && typeof d === 'number' && power !== undefined) {
    const twice = 2 * n * power + d;
    if (Number.isSafeInteger(twice) && Number.isSafeInteger(2 * d))
      return String(Math.floor(twice / (2 * d)));
  }
  const bottom = BigInt(d);
  return String((2n * BigInt(n) * 10n ** BigInt(places) + bottom) / (2n * bottom));
}

/** The number that a decimal text stands for. */
export function fromDecimal(text: string): Exact {
  const [, sign = '', whole = '', decimals = ''] = /^(-?)([0-9]+)(?:\.([0-9]+))?$/.exec(text) ?? [];
  const top = Number(whole + decimals);
  const bottom = powers[decimals.length];
  if (bottom !== undefined && Number.isSafeInteger(top)) return { n: sign === '-' ? -top : top, d: bottom };
  const digits = BigInt(whole + decimals);
  return { n: sign === '-' ? -digits : digits, d: 10n ** BigInt(decimals.length) };
}

/** Whether a decimal text says all of a number. */
function saysAll(text: string, { n, d }: Exact): boolean {
  const shown = fromDecimal(text);
  return BigInt(shown.n) * BigInt(d) === BigInt(n) * BigInt(shown.d);
}

/** As JSON carries it: a number of at most six decimals, and the fraction where that is not all of it. */
export function inJson(value: Exact): { readonly number: number; readonly exact: string | null } {
  if (value.d === 1) return { number: Number(value.n), exact: null };
  const text = decimal(value, 6);
  return { number: Number(text), exact: saysAll(text, value) ? null : asFraction(value) };
}
