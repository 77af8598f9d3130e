/** Something to be measured: does its work once and returns how many pieces that were. */
export interface Contest {
  readonly name: string;
  readonly run: () => number;
}

const least = 60;
const rounds = 21;

/** Milliseconds of the processor that this program has used: what other programs do meanwhile does not count. */
function used(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Pieces per second of the processor, while the work is repeated for a while. */
function rate({ run }: Contest): number {
  const start = used();
  let pieces = 0;
  let now = start;
  do {
    pieces += run();
    now = used();
  } while (now - start < least);
  return (1000 * pieces) / (now - start);
}

/** What was measured of all contests. */
export interface Measured {
  /** The median rate, in pieces per second. */
  readonly rate: (name: string) => number;
  /** The median, over the rounds, of how many times as quick one was as another in the same round. */
  readonly ratio: (name: string, to: string) => number;
}

/** They take turns in many short rounds, so that a busy machine slows all of them, and a burst of other work spoils single rounds. */
export function measure(contests: readonly Contest[]): Measured {
  for (const contest of contests) rate(contest);
  const rates = new Map(contests.map(({ name }) => [name, [] as number[]]));
  for (let round = 0; round < rounds; round += 1)
    for (const contest of contests) rates.get(contest.name)?.push(rate(contest));
  const of = (name: string): readonly number[] => rates.get(name) ?? [];
  return {
    rate: (name) => median(of(name)),
    ratio: (name, to) => median(of(name).map((each, round) => each / (of(to)[round] ?? NaN))),
  };
}

const median = (all: readonly number[]): number =>
  all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)] ?? NaN;

/** Milliseconds of the quickest of a few runs. */
export function quickest(run: () => void, times = 5): number {
  const all = Array.from({ length: times }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return Math.min(...all);
}
