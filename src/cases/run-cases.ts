import type { Document } from '../document/document.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Problem } from '../problems/problem.ts';
import { caseProblems } from './case-problems.ts';
import type { CaseResult } from './case-result.ts';
import { documentToCases } from './document-to-cases.ts';
import { runCase } from './run-case.ts';

/** Runs the cases of a document. One that does not come out as expected is a problem at the line that expects otherwise. */
export function casesIn(
  document: Document,
  protocol: Compiled,
): { readonly results: readonly CaseResult[]; readonly problems: readonly Problem[] } {
  const { cases, problems } = documentToCases(document, protocol.protocol);
  const results = cases.map((each) => runCase(protocol, each));
  const failed = results.flatMap((result) => caseProblems(result, document));
  return { results, problems: [...problems, ...failed] };
}
