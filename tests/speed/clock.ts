/** Something to be measured: does its work once and returns how many pieces that were. */
export interface Contest {
  readonly name: string;
  readonly run: () => number;
}

const least = 150;
const rounds = 7;

/** Pieces per second while the work is repeated for a while. */
function rate({ run }: Contest): number {
  const start = performance.now();
  let pieces = 0;
  let now = start;
  do {
    pieces += run();
    now = performance.now();
  } while (now - start < least);
  return (1000 * pieces) / (now - start);
}

/** The median rate of each, in pieces per second. They take turns, so that a busy machine slows all of them. */
export function measure(contests: readonly Contest[]): ReadonlyMap<string, number> {
  for (const contest of contests) rate(contest);
  const rates = new Map(contests.map(({ name }) => [name, [] as number[]]));
  for (let round = 0; round < rounds; round += 1)
    for (const contest of contests) rates.get(contest.name)?.push(rate(contest));
  return new Map(
    [...rates].map(([name, all]) => [name, all.toSorted((a, b) => a - b)[Math.floor(rounds / 2)] ?? NaN]),
  );
}

/** Milliseconds of the quickest of a few runs. */
export function quickest(run: () => void, times = 5): number {
  const all = Array.from({ length: times }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return Math.min(...all);
}
