import { levelFrom, type LevelAnswer } from '../../outcome/answers.ts';
import { mergeLevels } from '../../ward/merge-levels.ts';
import type { Tightened } from './tightened.ts';

/** A protocol with its result for a node. The result is its own until the protocol is asked again. */
export interface Result {
  readonly asked: Tightened;
  readonly result: Float64Array;
}

/** The one level of all sets of a node; null when no protocol is for these patients; or what is still open. */
export type LevelFound =
  | { readonly kind: 'found'; readonly level: LevelAnswer | null }
  | { readonly kind: 'open'; readonly applies: Tightened | null; readonly above: number };

/**
 * The level of several protocols over a node. `applies` of an answer that is open: the protocol of which it has to be known whether it is
 * for the patient; else a rule above the level `above` is open.
 */
export function levelFound(results: readonly Result[]): LevelFound {
  let [low, high] = [0, 0];
  let sureAt = -1;
  let [certain, unsure]: [number, Tightened | null] = [0, null];
  for (const { asked, result } of results) {
    const { applies, levels } = asked;
    if (applies.possible(result) === 0) continue;
    const top = Math.max(levels.raised(result), levels.could(result), 0);
    high = Math.max(high, top);
    if (applies.certain(result) === 0) {
      if (!unsure || top >= high) unsure = asked;
      continue;
    }
    certain += 1;
    const floor = Math.max(levels.floor(result), 0);
    low = Math.max(low, floor);
    if (floor === top) sureAt = Math.max(sureAt, floor);
  }
  if (certain === 0 && !unsure) return { kind: 'found', level: null };
  const settledAbove = low === high && low > 0 && sureAt === low;
  const settledLowest = low === high && low === 0 && !unsure && certain > 0;
  if (settledAbove || settledLowest)
    return { kind: 'found', level: { atLeast: low, couldBe: low, settled: true } };
  return { kind: 'open', applies: unsure, above: low };
}

/** The level of a single set, where every comparison is settled or has no number. */
export function levelOfPoint(results: readonly Result[]): LevelAnswer | null {
  return mergeLevels(
    results.map(({ asked, result }) =>
      asked.applies.possible(result) === 0 ? null : levelFrom(asked, result, result),
    ),
  );
}
