import { wardOutcomeToSheet } from '../bedside/outcome-to-sheet.ts';
import { banners } from '../editions/said-of-policy.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import type { WardOutcome } from '../shape/generated/types.ts';
import type { Ward } from '../ward/ward.ts';
import { Page, type Shown } from './page.ts';
import { showSheet } from './show-sheet.ts';

/** The outcome of a ward policy as plain words for a nurse, wrapped to the terminal; what must be said of one that is in force comes first. */
export function showWard(whole: WardOutcome, ward: Ward, shown: Shown): string {
  const sheet = wardOutcomeToSheet(whole, ward);
  const { policy } = whole;
  if (!policy) return showSheet(sheet, shown);
  const edition = `${sheet.edition}, in force since ${timeInWords(policy.in_force_from)}`;
  const said = banners(policy);
  const above = new Page(shown);
  above.list('About this policy', said);
  return `${said.length > 0 ? `${above.toString()}\n` : ''}${showSheet({ ...sheet, edition }, shown)}`;
}
