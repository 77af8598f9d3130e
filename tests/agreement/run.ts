import { spawnSync } from 'node:child_process';
import { randomInt } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { longRun } from './long.ts';

/**
 * `npm run agreement`: the comparison of the judge, the closures and the built targets, from a new seed each time. With --long a loop of its
 * own over 1,000 protocols of 1,000 sets each; other numbers after --protocols and --sets. With a number after --seed, from that seed.
 */
function asked(): { readonly long: boolean; readonly seed: number; protocols: number; sets: number } | null {
  try {
    const options = {
      seed: { type: 'string' },
      protocols: { type: 'string' },
      sets: { type: 'string' },
    } as const;
    const { values } = parseArgs({ options: { long: { type: 'boolean' }, ...options } });
    const { long = false, seed = String(randomInt(2 ** 31)), protocols = '1000', sets = '1000' } = values;
    const numbers = [seed, protocols, sets];
    if (!numbers.every((each) => /^\d{1,10}$/.test(each))) return null;
    if (!long && (values.protocols ?? values.sets) !== undefined) return null;
    return { long, seed: Number(seed), protocols: Number(protocols), sets: Number(sets) };
  } catch {
    return null;
  }
}

/** The tests of this folder, from a seed. */
function runTests(seed: number): number {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const vitest = fileURLToPath(new URL('../../node_modules/vitest/vitest.mjs', import.meta.url));
  const { status } = spawnSync(
    process.execPath,
    [vitest, 'run', '--config', '.config/vitest.config.ts', 'tests/agreement'],
    { cwd: root, stdio: 'inherit', env: { ...process.env, AGREEMENT_SEED: String(seed) } },
  );
  return status ?? 1;
}

const run = asked();
if (!run) {
  process.stderr.write(
    'npm run agreement -- [--long [--protocols NUMBER] [--sets NUMBER]] [--seed NUMBER]\n',
  );
  process.exit(2);
}
process.stdout.write(`Seed ${run.seed}\n`);
const print = (text: string): void => void process.stdout.write(text);
process.exitCode = run.long
  ? (await longRun({ ...run, print, clock: () => performance.now() }))
    ? 0
    : 1
  : runTests(run.seed);
