import type { LinearSum } from '../../diagrams/linear-sum.ts';

/** How much a sum grows with a look back, both ends of it together. */
export function turnOf({ terms }: LinearSum, isIt: (owner: string) => boolean): number {
  let turn = 0;
  for (const [{ of, owner }, factor] of terms) if (of === 'look_back' && isIt(owner)) turn += factor;
  return turn;
}

/** Whether a comparison is taken at the ends that make it hold most easily, or least; null where at neither. */
export function widerOf({ terms }: LinearSum): 'certain' | 'possible' | null {
  const ends = new Set(
    [...terms]
      .filter(([{ of }, factor]) => of === 'look_back' && factor !== 0)
      .map(([{ part }, factor]) => (part === 'high') === factor > 0),
  );
  const [only] = ends;
  return ends.size !== 1 || only === undefined ? null : only ? 'possible' : 'certain';
}
