import type { Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { hasErrors, reporter, type Finding, type Problem } from '../problems/problem.ts';
import { documentToWard, type WardSurroundings } from '../ward/document-to-ward.ts';
import type { Ward } from '../ward/ward.ts';
import { reportTogether } from './report-together.ts';

/** The whole check of a ward policy: what can be seen in its file, then what only all possible sets of all its protocols can show. */
export function documentToCheckedWard(
  document: Document,
  surroundings: WardSurroundings,
): { ward: Ward | null; problems: readonly Problem[] } {
  const { ward, problems } = documentToWard(document, surroundings);
  if (!ward) return { ward, problems };
  const findings: Finding[] = [];
  const report = reporter(findings);
  const rules = ward.members.flatMap((compiled) =>
    compiled.protocol.rules.map((rule) => ({ compiled, rule })),
  );
  for (const { pair, path } of ward.neverTogether)
    reportTogether({ first: pair[0], second: pair[1], path }, rules, report);
  const found = [...problems, ...findingsToProblems(document, findings)];
  return { ward: hasErrors(found) ? null : ward, problems: found };
}
