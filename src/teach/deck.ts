/** One showing of a case. */
export interface Card {
  readonly name: string;
  /** 1 the first time, then 2 and 3. */
  readonly showing: 1 | 2 | 3;
}

/** The cards that are still to come, the present one first. */
export type Deck = readonly Card[];

/** So many others come before a case that was missed comes back, while there are as many. */
export const othersBetween = 3;

/**
 * A deck of cases in an order that gives nothing away: cases stand in their file beside those that are nearly the same. One seed always
 * gives one order.
 */
export function deckOf(names: readonly string[], seed: number): Deck {
  const cards = names.map((name): Card => ({ name, showing: 1 }));
  let state = seed >>> 0;
  for (let last = cards.length - 1; last > 0; last -= 1) {
    // The numbers of a generator that is known to be good enough for shuffling; chance itself comes from outside, as the seed.
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    const other = Math.floor((state / 2 ** 32) * (last + 1));
    const [here, there] = [cards[last], cards[other]];
    if (here && there) [cards[last], cards[other]] = [there, here];
  }
  return cards;
}

/**
 * The deck after the present card was answered. A case that was missed comes back after three others, and once more at the end; no case is
 * shown more than three times, so every deck ends.
 */
export function afterAnswer([present, ...rest]: Deck, missed: boolean): Deck {
  if (!present || !missed || present.showing === 3) return rest;
  const { name } = present;
  if (present.showing === 2) {
    return rest.some((card) => card.name === name) ? rest : [...rest, { name, showing: 3 }];
  }
  const soon: Card = { name, showing: 2 };
  const back = [...rest.slice(0, othersBetween), soon, ...rest.slice(othersBetween)];
  // Right after itself it would teach nothing.
  return back.at(-1) === soon ? back : [...back, { name, showing: 3 }];
}
