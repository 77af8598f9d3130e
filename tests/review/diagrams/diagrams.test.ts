import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Diagrams, type Diagram } from '../../../src/review/diagrams/diagrams.ts';
import { DoneTable } from '../../../src/review/diagrams/done-table.ts';
import { higher, minus, plus } from '../../../src/review/diagrams/pairwise.ts';
import { seed } from '../../agreement/settings.ts';

/** Three questions with five pieces each: 125 sets. */
const pieces = 5;
const sets = Array.from({ length: pieces ** 3 }, (_, at) => [
  at % pieces,
  Math.floor(at / pieces) % pieces,
  Math.floor(at / pieces ** 2),
]);

/** A function by its value for each set, as a diagram. */
function drawn(store: Diagrams, values: readonly number[]): Diagram {
  const below = (variable: number, from: number): Diagram => {
    if (variable === 3) return store.leaf(values[from] as number);
    const all = [...Array(pieces).keys()];
    return store.node(
      variable,
      all,
      all.map((piece) => below(variable + 1, from + piece * pieces ** variable)),
    );
  };
  return below(0, 0);
}

function valueFor(store: Diagrams, diagram: Diagram, set: readonly number[]): number {
  let at = diagram;
  while (store.variableOf(at) < 3) at = store.at(at, set[store.variableOf(at)] as number);
  return store.valueOf(at);
}

const numbers = fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 125, maxLength: 125 });
const truths = fc.array(fc.integer({ min: 0, max: 1 }), { minLength: 125, maxLength: 125 });

test('what is put together is so for every set, and what is equal is one and the same', () => {
  fc.assert(
    fc.property(numbers, numbers, truths, truths, (a, b, p, q) => {
      const store = new Diagrams();
      const [da, db, dp, dq] = [a, b, p, q].map((each) => drawn(store, each)) as [
        number,
        number,
        number,
        number,
      ];
      const made: [Diagram, (at: number) => number][] = [
        [store.pair(plus, da, db), (at) => (a[at] ?? 0) + (b[at] ?? 0)],
        [store.pair(minus, da, db), (at) => (a[at] ?? 0) - (b[at] ?? 0)],
        [store.pair(higher, da, db), (at) => Math.max(a[at] ?? 0, b[at] ?? 0)],
        [store.and(dp, dq), (at) => (p[at] ?? 0) * (q[at] ?? 0)],
        [store.or(dp, dq), (at) => Math.max(p[at] ?? 0, q[at] ?? 0)],
        [store.not(dp), (at) => 1 - (p[at] ?? 0)],
        [store.differ(da, db), (at) => Number(a[at] !== b[at])],
        [store.choose(dp, da, db), (at) => (p[at] === 1 ? a : b)[at] ?? 0],
      ];
      for (const [diagram, of] of made) {
        expect(sets.map((set) => valueFor(store, diagram, set))).toEqual(sets.map((_, at) => of(at)));
        expect(
          drawn(
            store,
            sets.map((_, at) => of(at)),
          ),
        ).toBe(diagram);
      }
    }),
    { numRuns: 40, seed },
  );
});

test('a function that is shifted is asked of the piece so many further on', () => {
  fc.assert(
    fc.property(numbers, fc.constantFrom(-1, 1), fc.constantFrom(0, 1, 2), (a, by, along) => {
      const store = new Diagrams();
      const moved = store.shifted(drawn(store, a), along, by, pieces - 1);
      for (const [at, set] of sets.entries()) {
        const piece = (set[along] as number) + by;
        if (piece < 0 || piece >= pieces) continue;
        expect(valueFor(store, moved, set)).toBe(a[at + by * pieces ** along]);
      }
    }),
    { numRuns: 60, seed },
  );
});

test('a full table forgets, and never gives the result of something else', () => {
  const table = new DoneTable();
  const made = (at: number): number => (at * 7 + 1) % 1_000_003;
  const count = 2_500_000;
  for (let at = 0; at < count; at += 1) table.set(at % 5, at, at ^ 12_345, made(at));
  let known = 0;
  for (let at = 0; at < count; at += 1) {
    const found = table.get(at % 5, at, at ^ 12_345);
    if (found !== -1 && found !== made(at)) throw new Error(`${at} was answered with another result`);
    if (found !== -1) known += 1;
  }
  expect(known).toBeGreaterThan(100_000);
  expect(known).toBeLessThan(count);
});
