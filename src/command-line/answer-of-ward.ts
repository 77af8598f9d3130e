import type { Series } from '../series/series.ts';
import { wardOutcomeOf } from '../ward/series-to-ward-outcome.ts';
import type { Ward } from '../ward/ward.ts';
import { jsonText } from './json-text.ts';
import type { Shown } from './page.ts';
import { showWard } from './show-ward.ts';

/** The outcome of a ward policy, as JSON or in words. */
export function answerOfWard(ward: Ward, series: Series, asJson: boolean, shown: Shown): string {
  const outcome = wardOutcomeOf(ward, series);
  return asJson ? jsonText(outcome) : showWard(outcome, ward, shown);
}
