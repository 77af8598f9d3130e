import { asFraction, same, type Exact } from './exact.ts';

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
export const decimal = (value: Exact, places: number): string => rounded(value, places).text;

/** The same, with the number that the text stands for. */
export function rounded(value: Exact, places: number): Written {
  const { n, d } = value;
  if (d === 1) return { text: String(n), shown: value };
  const far = n < 0 ? -n : n;
  const units = smallUnits(far, d, places);
  if (units !== null) {
    const power = powers[places] as number;
    return { text: unitsAsText(units, power, places, n < 0), shown: { n: n < 0 ? -units : units, d: power } };
  }
  const text = largeAsText(BigInt(far), BigInt(d), places, n < 0);
  return { text, shown: fromDecimal(text) };
}

/** `n / d` in units of the last decimal place; null where a plain number does not hold that exactly. */
function smallUnits(n: number | bigint, d: number | bigint, places: number): number | null {
  const power = powers[places];
  if (typeof n !== 'number' || typeof d !== 'number' || power === undefined) return null;
  const twice = 2 * n * power + d;
  const isExact = Number.isSafeInteger(twice) && Number.isSafeInteger(2 * d);
  return isExact ? Math.floor(twice / (2 * d)) : null;
}

/** So many units of the last decimal place, as a decimal text. */
function unitsAsText(units: number, power: number, places: number, isBelow: boolean): string {
  const rest = units % power;
  const whole = `${isBelow && units !== 0 ? '-' : ''}${(units - rest) / power}`;
  return rest === 0 ? whole : `${whole}.${String(rest).padStart(places, '0').replace(/0+$/, '')}`;
}

function largeAsText(n: bigint, d: bigint, places: number, isBelow: boolean): string {
  const units = (2n * n * 10n ** BigInt(places) + d) / (2n * d);
  const digits = String(units).padStart(places + 1, '0');
  const whole = `${isBelow && units !== 0n ? '-' : ''}${digits.slice(0, digits.length - places)}`;
  const rest = places === 0 ? '' : digits.slice(-places).replace(/0+$/, '');
  return rest === '' ? whole : `${whole}.${rest}`;
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

/** As JSON carries it: a number of at most six decimals, and the fraction where that is not all of it. */
export function inJson(value: Exact): { readonly number: number; readonly exact: string | null } {
  if (value.d === 1) return { number: Number(value.n), exact: null };
  const { text, shown } = rounded(value, 6);
  return { number: Number(text), exact: same(shown, value) ? null : asFraction(value) };
}
