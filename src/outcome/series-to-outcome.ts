import type { Outcome } from '../shape/generated/types.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Series } from '../series/series.ts';
import { levelOf } from './answers.ts';
import { outcomeOf } from './bounds-to-outcome.ts';
import type { Compiled } from './compile.ts';
import { inForce } from './in-force.ts';
import { inForceToJson } from './in-force-to-json.ts';
import { levelsOverTime } from './levels-over-time.ts';

/** What a protocol says about a set in its series, with a higher level of earlier sets that is still in force. */
export function seriesToOutcome(compiled: Compiled, series: Series): Outcome {
  const bounds = seriesToBounds(compiled.protocol, series);
  const outcome = outcomeOf(compiled, bounds);
  if (series.sets.length < 2) return outcome;
  const { ladder } = compiled.protocol;
  const now = levelOf(compiled, bounds);
  return { ...outcome, ...inForceToJson(inForce(levelsOverTime(compiled, series), now, ladder), ladder) };
}
