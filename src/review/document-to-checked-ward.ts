import type { Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { hasErrors, reporter, type Finding, type Problem } from '../problems/problem.ts';
import { documentToWard, type WardSurroundings } from '../ward/document-to-ward.ts';
import type { Ward } from '../ward/ward.ts';
import { reportTogether } from './report-together.ts';

interface Checked {
  readonly ward: Ward | null;
  readonly problems: readonly Problem[];
}

/** A ward policy after the first half of its check. */
interface Begun {
  /** For what it asks to be entered, and for nothing else: no outcome is told before `finish`. Null when it has errors already. */
  readonly unfinished: Ward | null;
  readonly problems: readonly Problem[];
  /** The other half: what only all possible sets of all its protocols can show. */
  readonly finish: () => Checked;
}

/** The whole check of a ward policy: what can be seen in its file, then what only all possible sets of all its protocols can show. */
export const documentToCheckedWard = (document: Document, surroundings: WardSurroundings): Checked =>
  beginWard(document, surroundings).finish();

/** The first half of the check at once, the other when it is asked for. */
export function beginWard(document: Document, surroundings: WardSurroundings): Begun {
  const { ward, problems } = documentToWard(document, surroundings);
  const finish = (): Checked => {
    if (!ward) return { ward, problems };
    const found = [...problems, ...findingsToProblems(document, togetherIn(ward))];
    return { ward: hasErrors(found) ? null : ward, problems: found };
  };
  return { unfinished: ward, problems, finish };
}

/** Actions that must never be advised together, and can be. */
function togetherIn({ members, neverTogether }: Ward): Finding[] {
  const findings: Finding[] = [];
  const report = reporter(findings);
  const rules = members.flatMap((compiled) => compiled.protocol.rules.map((rule) => ({ compiled, rule })));
  for (const { pair, path } of neverTogether)
    reportTogether({ first: pair[0], second: pair[1], path }, rules, report);
  return findings;
}
