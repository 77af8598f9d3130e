/** Names in an order in which each stands after those that it reads, and the circles that stand in the way. */
export interface InOrder {
  readonly order: readonly string[];
  /** Each circle once, from its first name in the given order round to itself again. */
  readonly circles: readonly (readonly string[])[];
}

/**
 * Orders names by what they read. `inOrder(['b', 'a'], (name) => (name === 'b' ? ['a'] : []))` gives `['a', 'b']`.
 *
 * Without recursion, so that a chain of any length is ordered. A name in a circle is left out of the order.
 */
export function inOrder(names: readonly string[], reads: (name: string) => readonly string[]): InOrder {
  const known = new Set(names);
  const state = new Map<string, 'open' | 'done'>();
  const order: string[] = [];
  const circles: string[][] = [];
  const inCircle = new Set<string>();
  for (const start of names) {
    if (state.has(start)) continue;
    const trail: { name: string; rest: string[] }[] = [];
    const enter = (name: string): void => {
      state.set(name, 'open');
      trail.push({ name, rest: reads(name).filter((each) => known.has(each)) });
    };
    enter(start);
    while (trail.length > 0) {
      const top = trail[trail.length - 1] as (typeof trail)[number];
      const next = top.rest.pop();
      if (next === undefined) {
        state.set(top.name, 'done');
        if (!inCircle.has(top.name)) order.push(top.name);
        trail.pop();
      } else if (state.get(next) === 'open') {
        const circle = trail.slice(trail.findIndex((each) => each.name === next)).map((each) => each.name);
        circles.push([...circle, next]);
        for (const name of circle) inCircle.add(name);
      } else if (!state.has(next)) enter(next);
    }
  }
  return { order, circles };
}
