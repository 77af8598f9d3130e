/** Chance that is the same for the same seed: all that happens in a run follows from it. */
export interface Chance {
  /** A whole number from 0, below `end`. */
  below(end: number): number;
  pick<Item>(items: readonly [Item, ...Item[]] | readonly Item[]): Item;
}

export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (end: number): number => Math.floor(next() * Math.max(1, end));
  return { below, pick: (items) => items[below(items.length)] as (typeof items)[number] };
}
