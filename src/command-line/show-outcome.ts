import { outcomeToSheet } from '../bedside/outcome-to-sheet.ts';
import type { Protocol } from '../protocol/protocol.ts';
import type { Outcome } from '../shape/generated/types.ts';
import type { Shown } from './page.ts';
import { showSheet } from './show-sheet.ts';

/** An outcome as plain words for a nurse, wrapped to the terminal. */
export const showOutcome = (outcome: Outcome, protocol: Protocol, shown: Shown): string =>
  showSheet(outcomeToSheet(outcome, protocol), shown);
