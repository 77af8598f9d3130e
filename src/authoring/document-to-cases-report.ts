import { caseProblems } from '../cases/case-problems.ts';
import type { Case } from '../cases/case.ts';
import type { Asked } from '../cases/case-result.ts';
import { documentToCases } from '../cases/document-to-cases.ts';
import { askCase, compareCase } from '../cases/run-case.ts';
import type { Document } from '../document/document.ts';
import type { Answers, LevelAnswer, RuleAnswer } from '../outcome/answers.ts';
import type { Compiled } from '../outcome/compile.ts';
import { decidedBy, levelCalledFor } from '../outcome/rule-to-json.ts';
import { stepsInJson } from '../outcome/steps-in-json.ts';
import type { Problem } from '../problems/problem.ts';
import type { Ladder } from '../protocol/protocol.ts';
import { linesOf, type PartLines } from './lines-of.ts';

/** A rule that decides a level, and why it is met. */
export interface DecidingRule {
  readonly rule: string;
  readonly title: string;
  /** The sentences of the outcome. */
  readonly because: readonly string[];
}

/** How one case came out, in words. */
export interface CaseReport {
  readonly name: string;
  /** Where it stands in the case file. */
  readonly lines: PartLines;
  readonly source: string | null;
  readonly passes: boolean;
  /** What came out otherwise than expected, a sentence each, with its line in the case file; empty when it passes. */
  readonly differences: readonly { readonly says: string; readonly line: number }[];
  readonly applies: Answers['applies'];
  /** Names of levels; null when the protocol is not for this patient. */
  readonly level: {
    readonly at_least: string | null;
    readonly could_be: string;
    readonly settled: boolean;
  } | null;
  /** The level in words. */
  readonly levelSays: string;
  /** The rules that call for the level; empty when no rule does. */
  readonly decided: readonly DecidingRule[];
  /** Rules by their state, in the order of the file; empty when the protocol is not for this patient. */
  readonly met: readonly string[];
  readonly notMet: readonly string[];
  readonly undecided: readonly string[];
  /** The numbers of the present set, by observation, in its own unit: from low to high, which are the same for a plain value. */
  readonly given: { readonly [observation: string]: { readonly low: number; readonly high: number } };
}

/** How the cases of a file came out; the problems are those of the command line. */
export interface CasesReport {
  readonly cases: readonly CaseReport[];
  readonly problems: readonly Problem[];
}

/** Runs the cases of a file and says of each how it came out and why. Each is asked once. */
export function documentToCasesReport(document: Document, compiled: Compiled): CasesReport {
  const { cases, problems } = documentToCases(document, compiled.protocol);
  const places = linesOf(document).cases;
  const reports = cases.map((each) => reportCase(each, compiled, document, places));
  return {
    cases: reports.map(({ report }) => report),
    problems: [...problems, ...reports.flatMap(({ failed }) => failed)],
  };
}

function reportCase(
  each: Case,
  compiled: Compiled,
  document: Document,
  places: readonly PartLines[],
): { report: CaseReport; failed: readonly Problem[] } {
  const asked = askCase(compiled, each);
  const failed = caseProblems(compareCase(asked, each), document);
  const { answers } = asked;
  const { ladder } = compiled.protocol;
  const rules = answers.level ? answers.rules : [];
  const named = (state: RuleAnswer['state']): string[] =>
    rules.filter((answer) => answer.state === state).map(({ rule }) => rule.name);
  const report: CaseReport = {
    name: each.name,
    lines: placeOf(each, places),
    source: each.source,
    passes: failed.length === 0,
    differences: failed.map(({ says, line }) => ({ says, line })),
    applies: answers.applies,
    level: levelNames(answers.level, ladder),
    levelSays: levelInWords(answers, ladder),
    decided: decidingRules(asked),
    met: named('met'),
    notMet: named('not_met'),
    undecided: named('undecided'),
    given: givenNumbers(asked),
  };
  return { report, failed };
}

function placeOf({ path, name }: Case, places: readonly PartLines[]): PartLines {
  const found = places.find((place) => place.path[1] === path[1]);
  if (!found) throw new Error(`the case "${name}" has no place`);
  return found;
}

function levelNames(level: LevelAnswer | null, { levels }: Ladder): CaseReport['level'] {
  if (!level) return null;
  const name = (index: number): string => levels[index]?.name ?? '';
  const { atLeast, couldBe, settled } = level;
  return { at_least: atLeast === null ? null : name(atLeast), could_be: name(couldBe), settled };
}

/** Never what it is at least without what it could be. */
export function levelInWords(
  { applies, level }: Pick<Answers, 'applies' | 'level'>,
  { levels }: Ladder,
): string {
  if (!level) return 'Not for this patient: no level.';
  const title = (index: number): string => levels[index]?.title ?? '';
  const unsure = applies === 'unsure' ? ' Whether the protocol is for this patient is not known.' : '';
  const { atLeast, couldBe, settled } = level;
  if (settled) return `${title(couldBe)}; settled.`;
  if (atLeast === null) return `Not settled: no level yet; it could be: ${title(couldBe)}.${unsure}`;
  const up = atLeast === couldBe ? 'no higher' : `it could be: ${title(couldBe)}`;
  return `At least: ${title(atLeast)}; not settled, ${up}.${unsure}`;
}

/** The rules that call for the level; none when no rule does. */
export function decidingAnswers({ level, rules }: Answers): RuleAnswer[] {
  if (!level || level.atLeast === null) return [];
  return rules
    .filter((answer) => answer.state === 'met' || answer.counts)
    .filter((answer) => levelCalledFor(answer) === level.atLeast);
}

function decidingRules({ compiled, bounds, answers }: Asked): DecidingRule[] {
  const situation = { compiled, bounds, answers };
  return decidingAnswers(answers).map((answer) => ({
    rule: answer.rule.name,
    title: answer.rule.title,
    because: decidedBy(answer, situation) ?? [],
  }));
}

/** The numbers of the present set of a case that was asked. */
export function givenNumbers({ compiled, bounds }: Asked): CaseReport['given'] {
  const found: Record<string, { low: number; high: number }> = {};
  for (const [name, { state, range }] of bounds.facts.present) {
    const observation = compiled.protocol.observations.get(name);
    if (!observation || !range || (state !== 'given' && state !== 'standing')) continue;
    const [low, high] = range;
    found[name] = { low: stepsInJson(low, observation), high: stepsInJson(high, observation) };
  }
  return found;
}
