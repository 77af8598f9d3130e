import { timeInWords } from '../outcome/time-in-words.ts';
import type { EditionFile } from '../shape/generated/types.ts';

/** What a record says of a moment, as far as a handbook tells it. */
export type SaidInForce =
  | { readonly kind: 'none' }
  | { readonly kind: 'withdrawn'; readonly because: string; readonly instead: string }
  | {
      readonly kind: 'put';
      readonly edition: number;
      /** RFC 3339. */
      readonly from: string;
      readonly by: string;
      readonly because: string;
      /** Whether it is the edition that the handbook is of, with all that was sealed. */
      readonly isThis: boolean;
    };

/** Stands in a handbook whose record cannot be relied on. */
export const notKnownInForce =
  'Its record does not hold: whether it is in force is not known. Use the paper policy.';

/** Since when an edition is in force, or that it is not, as of a moment in RFC 3339. */
export function inForceInWords({ sealed }: EditionFile, said: SaidInForce, now: string): string {
  if (sealed === 'protocol') return 'A protocol is in force only through a ward policy that reads with it.';
  const asOf = `as of ${timeInWords(now)}`;
  switch (said.kind) {
    case 'none':
      return `Nothing is in force for this ward, ${asOf}: use the paper policy.`;
    case 'withdrawn':
      return `WITHDRAWN, ${asOf}: ${said.because} Instead: ${said.instead}`;
    case 'put':
      return said.isThis
        ? `In force since ${timeInWords(said.from)}, ${asOf}; put in force by ${said.by}: ${said.because}`
        : `NOT in force, ${asOf}: edition ${said.edition} is.`;
  }
}
