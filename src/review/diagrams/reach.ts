import { atEnd, type Diagram } from './diagrams.ts';
import type { Space } from './space.ts';

/** From the first to the last piece, both included, of each variable, by its place. */
export type Reach = readonly (readonly [first: number, last: number])[];

/**
 * How far the pieces of each variable reach in the sets for which a truth holds: outside of it, it does not hold for any. Null when it holds for none.
 */
export function reachOf(truth: Diagram, { store, variables }: Space): Reach | null {
  if (truth === store.no) return null;
  const [firsts, lasts] = [variables.map(() => Infinity), variables.map(() => -1)];
  const may = (variable: number, first: number, last: number): void => {
    firsts[variable] = Math.min(firsts[variable] as number, first);
    lasts[variable] = Math.max(lasts[variable] as number, last);
  };
  // What is not asked on a way may be anything there.
  const mayAll = (from: number, before: number): void => {
    for (let variable = from; variable < Math.min(before, variables.length); variable += 1)
      may(variable, 0, Infinity);
  };
  mayAll(0, store.variableOf(truth));
  const seen = new Set([truth]);
  for (const next of seen) {
    const variable = store.variableOf(next);
    if (variable === atEnd) continue;
    let first = 0;
    for (const end of store.endsOf(next)) {
      const kid = store.at(next, end);
      if (kid !== store.no) {
        if (variable < variables.length) may(variable, first, end);
        mayAll(variable + 1, store.variableOf(kid));
        seen.add(kid);
      }
      first = end + 1;
    }
  }
  return firsts.map((first, variable) => [first, lasts[variable] as number] as const);
}
