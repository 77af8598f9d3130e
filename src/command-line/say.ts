import type { Problem } from '../problems/problem.ts';
import { showProblem } from '../problems/show-problem.ts';
import { UnreadableFile } from './files.ts';
import { exit, type Exit, type Terminal } from './terminal.ts';

/** Says each problem, with an empty line after it. */
export function sayProblems(problems: readonly Problem[], terminal: Terminal): void {
  for (const problem of problems) terminal.err(`${showProblem(problem)}\n\n`);
}

/** Runs a call; a file that cannot be read or written is said, and ends it. */
export async function orUnreadable(run: () => Promise<Exit>, terminal: Terminal): Promise<Exit> {
  try {
    return await run();
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (!(error instanceof UnreadableFile) && code === undefined) throw error;
    terminal.err(`${(error as Error).message}\n`);
    return exit.couldNotAsk;
  }
}

/** Says why a call could not be asked. */
export function cannotAsk(why: string, terminal: Terminal): Exit {
  terminal.err(`${why}\n`);
  return exit.couldNotAsk;
}
