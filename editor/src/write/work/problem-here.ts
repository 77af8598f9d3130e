import { mendsOf, type Problem } from '../../../../src/index.ts';
import type { ProblemHere } from '../messages.ts';
import type { Part, Texts } from '../parts.ts';

/** A problem as the page shows it, with what certainly mends it. */
export const problemHere = (part: Part, problem: Problem, texts: Texts): ProblemHere => ({
  severity: problem.severity,
  part,
  line: problem.line,
  column: problem.column,
  length: problem.length,
  says: problem.says,
  expected: problem.expected,
  nearMiss: problem.near_miss,
  mends: mendsOf(problem, texts[part]).map(({ title, splices }) => ({ title, part, splices })),
});
