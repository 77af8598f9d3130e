import type { ObservationEntry } from '../protocol/protocol.ts';
import { stepsAsText, withUnit, type Stepped } from './given-words.ts';
import type { Span } from './ranges.ts';
import type { Unit } from '../vocabulary/units.ts';

/** Steps in the trade's words: `42 mmHg`. */
export function inWords(steps: number, of: Stepped & { readonly unit: Unit | null }): string {
  return withUnit(stepsAsText(steps, of), of.unit?.word ?? null);
}

/** Steps as JSON carries them: `36.7 Cel`. */
export function inUcum(steps: number, of: Stepped & { readonly unit: Unit | null }): string {
  return withUnit(stepsAsText(steps, of), of.unit?.ucum ?? null);
}

/** One end of what was given, in steps, and which end it is. */
export interface End {
  readonly steps: number;
  readonly which: 'value' | 'low' | 'high' | 'above' | 'below';
}

const before: Readonly<Record<End['which'], string>> = {
  value: '',
  low: 'as low as ',
  high: 'as high as ',
  above: 'above ',
  below: 'below ',
};

/** `systolic 42 mmHg`; `systolic as low as 42 mmHg`; `systolic above 250 mmHg`. */
function endInWords(end: End, entry: ObservationEntry): string {
  const shown = end.which === 'above' ? end.steps - 1 : end.which === 'below' ? end.steps + 1 : end.steps;
  return `${entry.title} ${before[end.which]}${inWords(shown, entry)}`;
}

/**
 * Why a value is questioned or refused. The age is null when it is unknown; it is spoken of where the range
 * changes with it.
 *
 * `systolic 42 mmHg is lower than 50, the lowest that is plausible at this age; it is used`
 */
export function outsideInWords(
  end: End,
  entry: ObservationEntry,
  which: 'possible' | 'plausible',
  range: Span,
  age: Span | null,
): string {
  const isLow = end.steps < range.low;
  const edge = stepsAsText(isLow ? range.low : range.high, entry);
  const compared = isLow ? `lower than ${edge}, the lowest` : `higher than ${edge}, the highest`;
  const atAge = entry[which].length < 2 ? '' : age ? ' at this age' : ' at any age';
  const then = which === 'plausible' ? 'it is used' : 'it is refused and counts as missing';
  return `${endInWords(end, entry)} is ${compared} that is ${which}${atAge}; ${then}`;
}

/** Why statements of one instant are refused. */
export function clashInWords(title: string, texts: readonly string[]): string {
  return `${title} was given differently for the same time (${texts.join(' | ')}); none of it is used, it counts as missing`;
}
