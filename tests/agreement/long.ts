import { drawFrom, type Draw } from './draw.ts';
import { askAll, askVariants, drawBench, drawSetFor, type Asked, type Bench } from './bench.ts';
import { keep } from './found.ts';
import type { Example } from './generators.ts';
import type { Plain } from './protocols.ts';
import { drawAgain, noting, smallest, wholeFrom, type Drawn } from './seeded.ts';
import { countProtocol, countSet, noShares, shortfalls, shown } from './shares.ts';
import { batchApart } from './targets.ts';

/** What to compare, and whom to tell. */
export interface LongRun {
  readonly seed: number;
  readonly protocols: number;
  /** Of each protocol. */
  readonly sets: number;
  print(text: string): void;
  /** Milliseconds, from whenever. */
  clock(): number;
  /** Where a counterexample is kept. */
  readonly folder?: string;
  /** How long a counterexample is made smaller, in seconds. */
  readonly shrinkFor?: number;
  /** Finds fault with what was asked beside all else: for the test that a fault is found. */
  readonly also?: (bench: Bench, set: Plain) => readonly string[];
}

/** One set in so many is asked in other words too, and counted for the shares. */
const variantsEvery = 10;
const secondsBetweenLines = 20;

/** The seed of one protocol of a run: a protocol can be asked again without those before it. */
const seedOf = (seed: number, protocol: number): number => (seed + Math.imul(protocol + 1, 0x85ebca6b)) >>> 0;

interface Findings {
  readonly asked: Asked;
  readonly wrong: readonly string[];
}

function askOne({ also }: LongRun, bench: Bench, set: Plain, draw: Draw, variants: boolean): Findings {
  const asked = askAll(bench, set);
  const more = variants ? askVariants(bench, set, draw) : [];
  return { asked, wrong: [...asked.wrong, ...more, ...(also?.(bench, set) ?? [])] };
}

/** The example of the smallest draws that still fail: without the targets, where it fails without them, because that is quicker. */
async function smaller(run: LongRun, drawn: readonly Drawn[], variants: boolean): Promise<Example | null> {
  let found: Example | null = null;
  const failsWith = (targets: boolean) => async (draw: Draw) => {
    const bench = await drawBench(draw, targets);
    const set = drawSetFor(draw, bench);
    if (askOne(run, bench, set, draw, variants).wrong.length === 0) return false;
    found = { made: bench.made, sets: [set] };
    return true;
  };
  const asDrawn = drawAgain(drawn.map(({ value }) => value));
  const needsTargets = !(await failsWith(false)(asDrawn));
  await smallest(drawn, failsWith(needsTargets), run.shrinkFor ?? 120);
  return found;
}

/** Says what is wrong, makes it small and keeps it. */
function tell(run: LongRun, name: string, wrong: readonly string[], example: Example): void {
  const path = keep(example, name, run.folder);
  run.print(`Kept in ${path}\n${[...wrong, example.made.text, JSON.stringify(example.sets)].join('\n')}\n`);
}

/** One protocol with all of its sets; false when something differs. */
async function askProtocol(run: LongRun, index: number, state: State): Promise<boolean> {
  const seed = seedOf(run.seed, index);
  const name = `seed_${run.seed}_protocol_${index}`;
  const [whole, protocolDraws] = [wholeFrom(seed), [] as Drawn[]];
  const bench = await drawBench(drawFrom(noting(whole, protocolDraws)), true);
  countProtocol(state.shares, bench);
  const packed: NonNullable<Asked['packed']>[] = [];
  for (let count = 0; count < run.sets; count += 1) {
    const draws = [...protocolDraws];
    const draw = drawFrom(noting(whole, draws));
    const set = drawSetFor(draw, bench);
    const variants = count % variantsEvery === 0;
    const { asked, wrong } = askOne(run, bench, set, draw, variants);
    if (wrong.length > 0) {
      const example = { made: bench.made, sets: [set] };
      run.print(`${name}, set ${count}: ${wrong.join('\n')}\nMaking it smaller.\n`);
      tell(run, name, wrong, (await smaller(run, draws, variants)) ?? example);
      return false;
    }
    if (asked.packed) packed.push(asked.packed);
    if (asked.excused) state.excused += 1;
    if (variants) countSet(state.shares, bench, set, asked.verdict);
    progress(run, state, index, count);
  }
  const batch = bench.targets ? batchApart(bench.targets, packed) : [];
  if (batch.length > 0) tell(run, name, batch, { made: bench.made, sets: [] });
  return batch.length === 0;
}

interface State {
  readonly shares: ReturnType<typeof noShares>;
  readonly start: number;
  excused: number;
  told: number;
}

function progress(run: LongRun, state: State, protocol: number, set: number): void {
  const now = run.clock();
  if (now - state.told < 1000 * secondsBetweenLines) return;
  state.told = now;
  run.print(`${line(run, state, protocol * run.sets + set + 1, now)}\n`);
}

function line({ sets }: LongRun, { start, excused }: State, asked: number, now: number): string {
  const perSecond = Math.round((1000 * asked) / Math.max(1, now - start));
  return `${Math.floor(asked / sets)} protocols, ${asked} sets, ${perSecond} sets a second, ${excused} excused`;
}

/**
 * Protocol by protocol, in the memory of one: the judge, the evaluator, the generated module in its three ways and json-logic-js must
 * say the same of each set, and a share of the sets is asked in other words. True when nothing differs and nothing of the language is lacking.
 */
export async function longRun(run: LongRun): Promise<boolean> {
  const start = run.clock();
  const state: State = { shares: noShares(), start, excused: 0, told: start };
  for (let index = 0; index < run.protocols; index += 1)
    if (!(await askProtocol(run, index, state))) return false;
  const asked = run.protocols * run.sets;
  run.print(`${shown(state.shares)}${line(run, state, asked, run.clock())}\n`);
  // Shares are of many protocols: of fewer, one that is rare may be lacking by chance.
  if (run.protocols < 200) return true;
  const often = state.excused / asked < 0.01 ? [] : [`${state.excused} sets of ${asked} excused`];
  const lacking = [...shortfalls(state.shares), ...often];
  for (const each of lacking) run.print(`${each}\n`);
  return lacking.length === 0;
}
