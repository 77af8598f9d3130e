import { lettersOf, wordsOf } from '../../vocabulary/words.ts';
import type { Offer } from './offer.ts';

/**
 * The offers that begin like what is half-typed, the nearest first: by the label itself, by a word of it, by letters inside it, by what it is also
 * called. All of them, in their own order, while nothing is typed.
 *
 * `rate` finds `rate_slowing_medicine` before `heart_rate`, and `hr` finds `heart_rate`.
 */
export function rankedOffers(offers: readonly Offer[], typed: string): readonly Offer[] {
  const wanted = typed.trim().toLowerCase();
  if (wanted === '') return offers;
  const found = offers.flatMap((offer) => {
    const rank = rankOf(offer, wanted);
    return rank === null ? [] : [{ offer, rank }];
  });
  return found.sort((left, right) => left.rank - right.rank).map(({ offer }) => offer);
}

function rankOf({ label, alsoCalled = [] }: Offer, wanted: string): number | null {
  const name = label.toLowerCase();
  if (name.startsWith(wanted)) return 0;
  const letters = lettersOf(wanted);
  if (letters === '') return name.includes(wanted) ? 2 : null;
  if (beginsInside(wordsOf(label), letters)) return 1;
  if (name.includes(wanted)) return 2;
  return alsoCalled.some((each) => beginsInside(wordsOf(each), letters)) ? 3 : null;
}

/** Whether some words, written together from one of them on, begin with some letters: `resprate` begins `resp`. */
const beginsInside = (words: readonly string[], letters: string): boolean =>
  words.some((_, index) => words.slice(index).join('').startsWith(letters));
