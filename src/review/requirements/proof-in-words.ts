import type { Because } from './proof.ts';

/** Stands beside every answer. */
export const ofTheRules = 'True of the rules as written, not of patients.';

/** Why a requirement is not settled. */
export function whyNotSettled(because: Because, looked: number): string {
  switch (because) {
    case 'about_no_set':
      return 'No possible set of a patient whom this is for is as it says under where, so it would hold of nothing.';
    case 'too_large':
      return `After ${looked} groups of sets, the most that a question may take, it was still open.`;
    case 'earlier_sets':
      return "It depends on earlier sets, or on a patient's age, in a way that one set does not show, and no example was confirmed.";
    case 'average':
      return 'It is read with an average over earlier sets. An average may lie between two steps, where nothing is looked at; no example was found on the steps.';
    case 'numbers_too_large':
      return 'A number in it could grow past what is exact.';
    case 'cancelled':
      return 'It was cancelled.';
  }
}
