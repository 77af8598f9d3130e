import type { Protocol } from '../protocol/protocol.ts';
import type { Box } from './box.ts';
import { contradicts, halve, ordinaryPoint, paired } from './halve.ts';

/** What is looked for, of every set of a box: it holds for each, for none, or that is open. */
export type Asked = 'yes' | 'no' | 'open';

/** A search: where it begins, by what boxes are cut, and what is asked of each. */
export interface Search {
  readonly protocol: Protocol;
  readonly start: Box;
  /** Where answers can change, by observation. */
  readonly cuts: ReadonlyMap<string, readonly number[]>;
  /** The observations that the answer can depend on; those of the first group are cut before those of the next. */
  readonly reads: readonly ReadonlySet<string>[];
  readonly ask: (box: Box) => Asked;
  /** So many boxes are looked into, and no more. */
  readonly most: number;
}

/** What came of a search, and how many boxes it looked into. `open`: there is none but single sets that stayed open. */
export type Searched = { readonly looked: number } & (
  { readonly kind: 'found'; readonly set: Box } | { readonly kind: 'none' | 'open' | 'too_large' }
);

/**
 * Looks for a set by halving: a box of sets for which the answer is open is cut in two, the half nearer to ordinary values
 * first. Exact, because an answer about a box holds for every set in it. Contradictory sets are no sets.
 */
export function searchBoxes({ protocol, start, cuts, reads, ask, most }: Search): Searched {
  const open: Box[] = [start];
  let left = false;
  for (let looked = 0; looked < most; looked += 1) {
    const box = open.pop();
    if (!box) return { kind: left ? 'open' : 'none', looked };
    const contradiction = contradicts(box, protocol);
    if (contradiction === 'yes') continue;
    const answer = ask(box);
    if (answer === 'no') continue;
    if (answer === 'yes' && contradiction === 'no')
      return { kind: 'found', set: ordinaryPoint(box, protocol), looked };
    const groups = answer === 'yes' ? [paired(protocol)] : reads;
    const halves = groups.reduce<[Box, Box] | null>(
      (found, group) => found ?? halve(box, protocol, cuts, group),
      null,
    );
    if (halves) open.push(...halves);
    else if (answer === 'yes') return { kind: 'found', set: box, looked };
    else left = true;
  }
  return { kind: 'too_large', looked: most };
}
