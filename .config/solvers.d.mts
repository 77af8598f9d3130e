/** A solver that judges questions in SMT-LIB 2: its program, and what makes it read a script on standard input. */
export interface Solver {
  readonly name: string;
  readonly args: readonly string[];
}
export const solvers: readonly Solver[];
/** Whether it is there. */
export function hasSolver(solver: Solver): boolean;
