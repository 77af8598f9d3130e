import type { Diagram } from '../../diagrams/diagrams.ts';
import type { Whole } from './calls.ts';

/** Whether some truths hold together for no values at all. They are put together one by one, because often a few are enough. */
export function noneTogether({ space: { store } }: Whole, truths: readonly Diagram[]): boolean {
  let all = store.yes;
  return truths.some((each) => {
    all = store.and(all, each);
    return all === store.no;
  });
}

/** Whether some truths hold together in no set. `valid`: what more must hold for it to be a set, or a pair of sets. */
export const holdsNowhere = (
  whole: Whole,
  truths: readonly Diagram[],
  valid: readonly Diagram[] = [],
): boolean => noneTogether(whole, [...truths, ...whole.space.valid, ...valid]);
