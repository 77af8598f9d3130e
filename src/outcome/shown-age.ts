import { decimal, fromDecimal, type Written } from './decimal.ts';
import { absolute, compare, over, times, type Exact } from './exact.ts';

const monthsInYear = over(12, 1);
const daysInYear = over(1461, 4);
const fewDays = over(1, 4);
const fewMonths = over(2, 1);

/**
 * A number of years as an age is said: `58 y`, `15 y 11 mo`, `7 mo`, `12 d`; what is none of these whole, with decimals.
 */
export function inYears(value: Exact, places: number): Written {
  if (value.d === 1 && value.n !== 0) return { text: `${value.n} y`, shown: value };
  const months = times(value, monthsInYear);
  const days = times(value, daysInYear);
  const far = absolute(value);
  if (isWhole(months) && !isZero(months)) return { text: inMonths(whole(months)), shown: value };
  if (compare(far, fewDays) < 0) return scaled(days, daysInYear, 'd', places);
  if (compare(far, fewMonths) < 0) return scaled(months, monthsInYear, 'mo', places);
  return scaled(value, over(1, 1), 'y', places);
}

const isZero = ({ n }: Exact): boolean => Number(n) === 0;
const isWhole = ({ n, d }: Exact): boolean => BigInt(n) % BigInt(d) === 0n;
const whole = ({ n, d }: Exact): number => Number(BigInt(n) / BigInt(d));

function inMonths(months: number): string {
  const [years, rest] = [Math.trunc(months / 12), months % 12];
  if (rest === 0) return `${years} y`;
  return Math.abs(months) < 24 ? `${months} mo` : `${years} y ${Math.abs(rest)} mo`;
}

function scaled(value: Exact, perYear: Exact, unit: string, places: number): Written {
  const text = decimal(value, places);
  return { text: `${text} ${unit}`, shown: times(fromDecimal(text), over(perYear.d, perYear.n)) };
}
