// Finds the solvers that judge questions in SMT-LIB 2, and installs them where that can be done. Node's built-ins only: this runs
// before anything is installed.

import { spawnSync } from 'node:child_process';
import { run, say } from './house.mjs';

/** Each by the name of its program and of its Debian package, with what makes it read a script on standard input. */
export const solvers = [
  { name: 'z3', args: ['-smt2', '-in'] },
  { name: 'cvc5', args: ['--lang=smt2', '--incremental', '-'] },
];

/** Whether a solver is there: it tells its version. */
export const hasSolver = ({ name }) => spawnSync(name, ['--version']).status === 0;

/** Installs the solvers that are lacking, as root where apt-get is. Returns the names of those that are then still not there. */
export function lackingSolvers() {
  const lacking = () => solvers.filter((each) => !hasSolver(each)).map(({ name }) => name);
  const before = lacking();
  if (before.length === 0) return [];
  if (process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0) {
    say(`Not there: ${before.join(', ')}. Installing them, as judges of questions in SMT-LIB (apt-get).`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    run('apt-get', ['update', '-qq'], { env });
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...before], { env });
  }
  return lacking();
}
