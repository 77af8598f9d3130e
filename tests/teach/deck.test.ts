import fc from 'fast-check';
import { expect, test } from 'vitest';
import { afterAnswer, deckOf, othersBetween, type Card, type Deck } from '../../src/teach/deck.ts';

/** Goes through a deck; `misses` says of each showing whether it was missed. */
function goThrough(deck: Deck, misses: (card: Card, at: number) => boolean): Card[] {
  const shown: Card[] = [];
  let left = deck;
  for (let card = left[0]; card; card = left[0]) {
    if (shown.length > 3 * deck.length) throw new Error('the deck does not end');
    left = afterAnswer(left, misses(card, shown.length));
    shown.push(card);
  }
  return shown;
}

const names = fc.uniqueArray(fc.string({ minLength: 1, maxLength: 6 }), { maxLength: 12 });

test('a missed case comes back after three others, and once more at the end', () => {
  const deck: Deck = ['a', 'b', 'c', 'd', 'e', 'f'].map((name) => ({ name, showing: 1 }));
  const shown = goThrough(deck, ({ name, showing }) => name === 'a' && showing === 1);
  expect(shown.map(({ name }) => name).join('')).toBe('abcdaefa');
  expect(shown.filter(({ name }) => name === 'a').map(({ showing }) => showing)).toEqual([1, 2, 3]);
});

test('near the end of a deck it comes back once, and once more only when it is missed again', () => {
  const deck: Deck = ['a', 'b'].map((name) => ({ name, showing: 1 }));
  const once = goThrough(deck, ({ name, showing }) => name === 'a' && showing === 1);
  expect(once.map(({ name }) => name).join('')).toBe('aba');
  const twice = goThrough(deck, ({ name }) => name === 'a');
  expect(twice.map(({ name }) => name).join('')).toBe('abaa');
});

test('nothing comes back that was not missed', () => {
  const deck = deckOf(['a', 'b', 'c'], 7);
  expect(goThrough(deck, () => false)).toEqual(deck);
});

test('every deck ends, whatever is missed, and shows each case once to three times', () => {
  fc.assert(
    fc.property(names, fc.nat(), fc.infiniteStream(fc.boolean()), (cases, seed, missed) => {
      const shown = goThrough(deckOf(cases, seed), () => missed.next().value === true);
      for (const name of cases) {
        const times = shown.filter((card) => card.name === name).map(({ showing }) => showing);
        expect(times).toEqual([1, 2, 3].slice(0, times.length));
        expect(times.length).toBeGreaterThan(0);
      }
    }),
  );
});

test('a case that was missed always comes back, after three others where so many are left', () => {
  fc.assert(
    fc.property(names, fc.nat(), fc.infiniteStream(fc.boolean()), (cases, seed, stream) => {
      let deck = deckOf(cases, seed);
      for (let card = deck[0]; card; card = deck[0]) {
        const missed = stream.next().value === true;
        const before = deck.length - 1;
        deck = afterAnswer(deck, missed);
        if (!missed || card.showing !== 1) continue;
        const back = deck.findIndex(({ name }) => name === card?.name);
        expect(back).toBe(Math.min(othersBetween, before));
        expect(deck.at(-1)?.name).toBe(card.name);
      }
    }),
  );
});

test('one seed gives one order, with every case in it; another seed gives another', () => {
  const cases = Array.from({ length: 30 }, (_, index) => `case ${index}`);
  const order = (seed: number): string[] => deckOf(cases, seed).map(({ name }) => name);
  expect(order(5)).toEqual(order(5));
  expect(order(5)).not.toEqual(order(6));
  expect(order(5)).not.toEqual(cases);
  expect(order(5).toSorted()).toEqual(cases.toSorted());
});
