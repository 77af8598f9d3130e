import { durationInWords, timeInWords } from '../outcome/time-in-words.ts';
import type { OutcomeInForce } from '../shape/generated/types.ts';

/** How far the sets have come towards stepping down from a level of earlier sets that is still in force. */
export function inForceInWords(found: OutcomeInForce): string[] {
  const by = found.agreed_by ?? 'whoever is responsible';
  return [
    `Called for since ${timeInWords(found.since)}, last at ${timeInWords(found.last_at)}.`,
    ...(found.sets_asked === undefined
      ? []
      : [
          `Better sets in a row: ${found.sets_below} of ${found.sets_asked}; better for ${minutes(found.minutes)} of ${minutes(found.minutes_asked ?? 0)}.`,
        ]),
    'If nobody has come yet, call again now. Whoever came decides about stepping down.',
    found.may_step_down
      ? `The sets now allow stepping down. It holds until this is agreed by: ${by}.`
      : `It may not be stepped down yet. Then it is agreed by: ${by}.`,
  ];
}

const minutes = (count: number): string => (count === 0 ? '0 min' : durationInWords(count * 60_000));
