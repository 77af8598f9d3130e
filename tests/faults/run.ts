import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { faults, type Fault } from './faults.ts';

// Puts each fault into the evaluator in turn and runs the tests that guard it. No file is changed: the fault is put in while the
// module is loaded (tests/faults/plugin.ts). `npm run faults -- stale` runs those whose name has the word.

const root = fileURLToPath(new URL('../..', import.meta.url));
const suites = [
  'tests/series',
  'tests/logic',
  'tests/cases',
  'tests/outcome',
  'tests/agreement',
  'tests/targets',
  'tests/published',
];

function isPlaced({ file, find }: Fault): boolean {
  return readFileSync(`${root}/src/${file}`, 'utf8').split(find).length === 2;
}

/** Whether a test turns red with the fault in place; without one, whether any is red already. */
function turnsRed(name: string): boolean {
  const run = spawnSync(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--config',
      '.config/vitest.config.ts',
      '--bail',
      '1',
      '--reporter',
      'dot',
      ...suites,
    ],
    { cwd: root, env: { ...process.env, FAULT: name, AGREEMENT_RUNS: '40' }, encoding: 'utf8' },
  );
  // A run that was stopped from outside says nothing of the fault.
  if (run.status === null) throw new Error(`The tests were stopped (${run.signal ?? 'no reason given'}).`);
  return run.status !== 0 && /failed/.test(run.stdout);
}

// A test that is red without a fault would take every fault for noticed.
if (turnsRed('')) {
  process.stdout.write('A test is red before any fault is put in: npm run unit says which.\n');
  process.exit(1);
}
const asked = faults.filter(({ name }) => name.includes(process.argv[2] ?? ''));
let missed = 0;
for (const fault of asked) {
  const result = isPlaced(fault) ? (turnsRed(fault.name) ? 'noticed' : 'NOT NOTICED') : 'NOT PLACED';
  if (result !== 'noticed') missed += 1;
  process.stdout.write(`${result.padEnd(12)} ${fault.name} (src/${fault.file})\n`);
}
process.stdout.write(`${asked.length - missed} of ${asked.length} faults turn a test red\n`);
process.exitCode = missed === 0 ? 0 : 1;
