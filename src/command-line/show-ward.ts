import { wardOutcomeToSheet } from '../bedside/outcome-to-sheet.ts';
import type { WardOutcome } from '../shape/generated/types.ts';
import type { Ward } from '../ward/ward.ts';
import type { Shown } from './page.ts';
import { showSheet } from './show-sheet.ts';

/** The outcome of a ward policy as plain words for a nurse, wrapped to the terminal. */
export const showWard = (whole: WardOutcome, ward: Ward, shown: Shown): string =>
  showSheet(wardOutcomeToSheet(whole, ward), shown);
