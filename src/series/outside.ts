import { spanFor, type Span } from './ranges.ts';
import { outsideInWords, type End } from './sentences.ts';
import type { ReadObservation } from './read-observation.ts';

/**
 * Why an end of what was given is not possible, or not plausible, at the age; null when it is inside, ends
 * included.
 */
export function whyOutside(
  end: End,
  read: ReadObservation,
  which: 'possible' | 'plausible',
  age: Span | null,
): string | null {
  const range = read[which];
  if (!range) return null;
  const span = spanFor(range, age);
  if (end.steps >= span.low && end.steps <= span.high) return null;
  return outsideInWords(end, read.entry, which, span, age);
}
