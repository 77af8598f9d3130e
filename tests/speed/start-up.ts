import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Figure } from './figure.ts';

/** How often each program is started; the two take turns, so that a busy machine slows both. */
const rounds = 25;

/** How many times as long as an empty Node program the command line may take to answer. */
const allowed = 3;

const main = fileURLToPath(new URL('../../dist/main.js', import.meta.url));
const empty = ['-e', '0'];
const calls = {
  'vitalwright --help': [main, '--help'],
  'vitalwright read of one set': [
    main,
    'read',
    'protocols/lessons/one_threshold',
    '--set',
    '{"systolic":104}',
  ],
};

/** Milliseconds until a Node program has ended. Throws when it does not end well: a failure must not count as quick. */
function time(args: readonly string[]): number {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return performance.now() - start;
}

/** The median over all rounds of how many times as long a call takes as an empty program just before it. */
function ratioOf(args: readonly string[]): number {
  const ratios = Array.from({ length: rounds }, () => {
    const base = time(empty);
    return time(args) / base;
  });
  return ratios.toSorted((a, b) => a - b)[Math.floor(rounds / 2)] ?? NaN;
}

/** How long the command line takes to start and answer, beside a Node program that does nothing. */
export function measureStartUp(): readonly Figure[] {
  return Object.entries(calls).map(([name, args]) => {
    const ratio = ratioOf(args);
    return {
      what: `${name}, start and answer`,
      found: `${ratio.toFixed(2)} times an empty Node program`,
      aim: `at most ${allowed} times`,
      reached: ratio <= allowed,
    };
  });
}
