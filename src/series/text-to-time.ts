/** Why a text is no time that a set can carry. */
export type TimeFault = 'unreadable' | 'without_offset' | 'too_fine' | 'impossible' | 'leap_second';

const pattern = /^(\d{4})-(\d{2})-(\d{2})[Tt](\d{2}):(\d{2}):(\d{2})(?:\.(\d+))?([Zz]|[+-]\d{2}:\d{2})?$/;

/**
 * Reads a time as RFC 3339 writes it, offset included, with at most three decimals of a second; milliseconds
 * since 1970.
 *
 * `textToTime('2026-03-02T17:50:00+05:45')` and `textToTime('2026-03-02T12:05:00Z')` are both 1772453100000;
 * `textToTime('2026-02-30T08:00:00Z')` is `'impossible'`. A leap second is refused: the other clocks on a
 * ward do not know it.
 */
export function textToTime(text: string): number | TimeFault {
  const found = pattern.exec(text);
  if (!found) return 'unreadable';
  const [year, month, day, hour, minute, second] = found.slice(1, 7).map(Number) as Six;
  const [, , , , , , , decimals = '', offset] = found;
  if (offset === undefined) return 'without_offset';
  if (decimals.length > 3) return 'too_fine';
  if (second === 60) return 'leap_second';
  const minutes = offsetMinutes(offset);
  const real = month >= 1 && month <= 12 && day >= 1 && day <= daysOf(year, month);
  if (!real || hour > 23 || minute > 59 || second > 59 || minutes === null) return 'impossible';
  const thousandths = Number(decimals.padEnd(3, '0'));
  const clock = ((hour * 60 + minute - minutes) * 60 + second) * 1000 + thousandths;
  return daysSince1970(year, month, day) * 86_400_000 + clock;
}

type Six = [number, number, number, number, number, number];

/** Minutes east of Greenwich; null when no clock is so far off. */
function offsetMinutes(offset: string): number | null {
  if (offset === 'Z' || offset === 'z') return 0;
  const [hours, minutes] = [Number(offset.slice(1, 3)), Number(offset.slice(4, 6))];
  if (hours > 23 || minutes > 59) return null;
  return (offset.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
}

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

function daysOf(year: number, month: number): number {
  if (month === 2) return isLeap(year) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Whole days from 1 January 1970, in the calendar of today for all years. */
function daysSince1970(year: number, month: number, day: number): number {
  const past = year - 1;
  const leapDays = Math.floor(past / 4) - Math.floor(past / 100) + Math.floor(past / 400);
  const leapNow = month > 2 && isLeap(year) ? 1 : 0;
  return past * 365 + leapDays + (daysBefore[month - 1] ?? 0) + leapNow + day - 1 - 719_162;
}
