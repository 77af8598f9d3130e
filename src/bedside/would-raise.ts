import type { Compiled } from '../outcome/compile.ts';
import type { Series } from '../series/series.ts';
import { changeableBy, type Standing } from './changeable.ts';
import { above, below, wouldChange, type Change } from './would-change.ts';

/**
 * What would raise the level. What would lower it is not said at the bedside: there it invites measuring again until it passes.
 *
 * `wouldRaise(compiled, series)[0]?.number?.away` is how many steps the nearest value is away.
 */
export function wouldRaise(compiled: Compiled, series: Series): readonly Change[] {
  return raisesOf(changeableBy(compiled, series));
}

const raisesOf = ({ now, asked }: Standing): readonly Change[] => (now ? wouldChange(asked, above(now)) : []);

/** What would lower the level: for teaching, and for whoever reviews a protocol. */
export const lowersOf = ({ now, asked }: Standing): readonly Change[] =>
  now && (now.atLeast ?? 0) > 0 ? wouldChange(asked, below(now)) : [];
