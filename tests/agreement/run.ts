import { spawnSync } from 'node:child_process';
import { randomInt } from 'node:crypto';
import { fileURLToPath } from 'node:url';

/**
 * `npm run agreement`: the comparison of the judge, the closures and the built targets, from a new seed each time. With --long over 1,000
 * protocols of 1,000 sets each, which takes hours; with a number after --seed, from that seed.
 */
const args = process.argv.slice(2);
const at = args.indexOf('--seed');
const seed = at === -1 ? randomInt(2 ** 31) : Number(args[at + 1]);
const known = args.every(
  (arg, index) => arg === '--long' || arg === '--seed' || (at !== -1 && index === at + 1),
);
if (!known || !Number.isSafeInteger(seed)) {
  process.stderr.write('npm run agreement -- [--long] [--seed NUMBER]\n');
  process.exit(2);
}
const size = args.includes('--long') ? { AGREEMENT_RUNS: '1000', AGREEMENT_SETS: '1000' } : {};
process.stdout.write(`Seed ${seed}\n`);
const root = fileURLToPath(new URL('../..', import.meta.url));
const vitest = fileURLToPath(new URL('../../node_modules/vitest/vitest.mjs', import.meta.url));
const { status } = spawnSync(
  process.execPath,
  [vitest, 'run', '--config', '.config/vitest.config.ts', 'tests/agreement'],
  { cwd: root, stdio: 'inherit', env: { ...process.env, ...size, AGREEMENT_SEED: String(seed) } },
);
process.exitCode = status ?? 1;
