import { randomInt } from 'node:crypto';
import { expect, test } from 'vitest';
import { chanceOf } from './chance.ts';
import { keep, kept } from './kept.ts';
import { mutated } from './mutations.ts';
import { judged, kinds, readers } from './readers.ts';
import { search } from './search.ts';

const size = 300;

test(`${size} changed texts get problems or are taken, and nothing else`, { timeout: 300_000 }, () => {
  const seed = randomInt(2 ** 31);
  for (const { tried, found } of search(seed)) {
    const where =
      found &&
      `Seed ${seed}, kept in ${keep(found, `seed_${seed}_${tried}`)}
${found.says}`;
    expect(where).toBeNull();
    if (tried === size) break;
  }
});

test.each(kinds.flatMap((kind) => readers[kind].seeds.map((text, index) => [kind, index, text] as const)))(
  'the text of kind %s, number %i, that a run begins with shows no problem of the search itself',
  (kind, _, text) => {
    expect(judged(kind, text).traits.length).toBeGreaterThan(0);
  },
);

test('every kind begins with a text that is taken', () => {
  for (const kind of kinds)
    expect([kind, readers[kind].seeds.some((text) => judged(kind, text).whole)]).toEqual([kind, true]);
});

test('one seed makes the same texts again, another one others', () => {
  const texts = (seed: number): string[] => {
    const chance = chanceOf(seed);
    const material = { texts: readers.ladder.seeds, words: ['levels'] };
    return Array.from({ length: 50 }, () => mutated(material.texts[0] ?? '', chance, material));
  };
  expect(texts(7)).toEqual(texts(7));
  expect(texts(7)).not.toEqual(texts(8));
  expect(new Set(texts(7)).size).toBeGreaterThan(45);
});

test('every text that was found stands by now', () => {
  expect(kept().length).toBeGreaterThan(0);
  for (const [name, { kind, text }] of kept()) {
    expect([name, judged(kind, text).traits.length > 0]).toEqual([name, true]);
  }
});
