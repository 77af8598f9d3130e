import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inOrder } from '../../src/protocol/in-order.ts';

const reading =
  (graph: Record<string, string[]>) =>
  (name: string): string[] =>
    graph[name] ?? [];

test('each name stands after those that it reads', () => {
  const { order, circles } = inOrder(['c', 'b', 'a'], reading({ c: ['a', 'b'], b: ['a'] }));
  expect(order).toEqual(['a', 'b', 'c']);
  expect(circles).toEqual([]);
});

test('a circle is named once, round to its start, and its names are left out', () => {
  const { order, circles } = inOrder(['a', 'b', 'c', 'd'], reading({ a: ['b'], b: ['c'], c: ['a'] }));
  expect(circles).toEqual([['a', 'b', 'c', 'a']]);
  expect(order).toEqual(['d']);
});

test('a name that reads itself is a circle', () => {
  expect(inOrder(['a'], reading({ a: ['a'] })).circles).toEqual([['a', 'a']]);
});

test('a chain of any length is ordered', () => {
  const names = Array.from({ length: 50_000 }, (_, index) => `n${index}`);
  const { order } = inOrder(names, (name) => [`n${Number(name.slice(1)) + 1}`]);
  expect(order[0]).toBe('n49999');
  expect(order).toHaveLength(50_000);
});

test('whatever is read without a circle stands before', () => {
  const graphs = fc.array(fc.array(fc.nat({ max: 30 }), { maxLength: 5 }), { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(graphs, (graph) => {
      // Reading only lower numbers leaves no circle.
      const reads = (name: string): string[] =>
        (graph[Number(name)] ?? []).filter((each) => each < Number(name)).map(String);
      const names = graph.map((_, index) => String(index));
      const { order, circles } = inOrder([...names].reverse(), reads);
      expect(circles).toEqual([]);
      for (const name of names)
        for (const read of reads(name)) expect(order.indexOf(read)).toBeLessThan(order.indexOf(name));
    }),
  );
});
