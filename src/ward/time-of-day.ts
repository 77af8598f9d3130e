import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';

/** Reports a time zone that the time zone database does not have. */
export function checkTimeZone(zone: string, path: Path, report: Report): void {
  if (!formatFor(zone)) report('unknown_time_zone', path, { zone });
}

/** Minutes since midnight in a time zone: 495 for 08:15. */
export function minuteOfDay(at: number, zone: string): number {
  const text = formatFor(zone)?.format(at) ?? '00:00';
  const [hour = 0, minute = 0] = text.split(':').map(Number);
  return (hour % 24) * 60 + minute;
}

function formatFor(timeZone: string): Intl.DateTimeFormat | null {
  try {
    return new Intl.DateTimeFormat('en-GB', {
      hour: '2-digit',
      minute: '2-digit',
      hourCycle: 'h23',
      timeZone,
    });
  } catch {
    return null;
  }
}

/** Whether a time of day lies between two, the first included, the second not; they may go round midnight. Equal ones: all day. */
export function isBetween(minute: number, from: string, to: string): boolean {
  const [first, last] = [from, to].map((text) => {
    const [hours = 0, minutes = 0] = text.split(':').map(Number);
    return hours * 60 + minutes;
  }) as [number, number];
  if (first === last) return true;
  return first < last ? minute >= first && minute < last : minute >= first || minute < last;
}
