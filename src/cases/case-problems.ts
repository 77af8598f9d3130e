import type { Document } from '../document/document.ts';
import { findingToProblem } from '../document/finding-to-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { CaseResult } from './case-result.ts';

/** The differences of a case as problems, each at the line that expects otherwise. */
export function caseProblems({ name, differences }: CaseResult, document: Document): Problem[] {
  return differences.map(({ path, ...facts }) =>
    findingToProblem(document, {
      code: 'case_fails',
      facts: { name, ...facts },
      path,
      part: 'value',
      nearMiss: null,
    }),
  );
}
