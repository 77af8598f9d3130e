import type { Report } from '../../problems/problem.ts';
import type { Check } from './check.ts';

export const reviewDate: Check = ({ file, today }, report) => reportReviewDate(file.review_by, today, report);

/**
 * The day of the next review, of a protocol or a ward policy, is a day of the calendar, and not past. On the day itself the review is
 * not yet overdue; with no `today`, nobody asks.
 */
export function reportReviewDate(written: string | undefined, today: string | null, report: Report): void {
  if (written === undefined) return;
  if (!isDay(written)) report('not_a_day', ['review_by'], { written });
  else if (today !== null && written < today) report('review_overdue', ['review_by'], { review_by: written });
}

function isDay(written: string): boolean {
  const [year, month, day] = written.split('-').map(Number) as [number, number, number];
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}
