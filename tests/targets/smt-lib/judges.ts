import { spawnSync } from 'node:child_process';
import type { TestContext } from 'vitest';
import { hasSolver, solvers } from '../../../.config/solvers.mjs';

/** A solver that judges questions. */
export interface Judge {
  readonly name: string;
  /** Its answers to scripts, in their order: `sat`, `unsat` or `unknown` for each `(check-sat)`. A test without the solver ends here, as skipped. */
  readonly ask: (scripts: readonly string[], test: TestContext) => readonly string[];
}

/** Each test asks all of them. What is skipped is counted, and named by `npm test` at its end. */
export const judges: readonly Judge[] = solvers.map(({ name, args }) => ({
  name,
  ask: (scripts, { skip }) => {
    if (!hasSolver({ name, args })) skip(`there is no ${name} here to judge`);
    return answersOf(name, args, scripts);
  },
}));

/** All scripts in one process, each from a clean beginning. Anything but an answer is an error of the script. */
function answersOf(solver: string, args: readonly string[], scripts: readonly string[]): readonly string[] {
  const input = scripts.join('\n(reset)\n');
  const { stdout, stderr, error } = spawnSync(solver, args, {
    input,
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
    timeout: 50_000,
  });
  if (error) throw error;
  const answers = stdout.split('\n').filter((line) => line !== '');
  const other = answers.filter((line) => !/^(?:sat|unsat|unknown)$/.test(line));
  if (other.length > 0 || stderr !== '') throw new Error([...other.slice(0, 5), stderr].join('\n'));
  const asked = [...input.matchAll(/^\(check-sat\)$/gm)].length;
  if (answers.length !== asked) throw new Error(`${solver}: ${answers.length} answers to ${asked} questions`);
  return answers;
}
