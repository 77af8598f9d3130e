import type * as File from '../shape/generated/types.ts';
import type { Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { reporter, type Finding, type Problem, type Report } from '../problems/problem.ts';
import type { Path } from '../problems/place.ts';
import { nearestOf } from '../protocol/names.ts';
import type { Series } from '../series/series.ts';
import { checkShape } from '../shape/check-shape.ts';
import type { Ward } from '../ward/ward.ts';
import { wardOutcomeOf } from '../ward/series-to-ward-outcome.ts';
import type { Expectation } from './case.ts';
import type { CaseResult, Difference } from './case-result.ts';
import { readStory } from './document-to-cases.ts';
import { readExpectation, readExpectedLevel, yesNo } from './read-expectation.ts';
import { compare, differencesOf } from './run-case.ts';

/** One case of a ward policy, read. */
interface WardCase {
  readonly name: string;
  readonly series: Series;
  readonly expect: File.WardExpect;
  readonly level: Expectation['level'];
  /** By the name of the protocol. */
  readonly protocols: ReadonlyMap<string, Expectation>;
  readonly path: Path;
}

/** How a case of a ward policy came out, with what was observed and what the ward says of it. */
export interface WardCaseResult extends CaseResult {
  readonly series: Series;
  readonly outcome: File.WardOutcome;
}

/** Reads the cases of a ward policy and runs them; a case with a mistake is told of and not run. */
export function runWardCases(
  document: Document,
  ward: Ward,
): { results: readonly WardCaseResult[]; problems: readonly Problem[] } {
  const { value: file, problems } = checkShape('ward_cases', document);
  if (!file) return { results: [], problems };
  const findings: Finding[] = [];
  const report = reporter(findings);
  if (file.ward !== ward.name)
    report('case_of_another_protocol', ['ward'], { name: file.ward, protocol: ward.name });
  const seen = new Set<string>();
  const inSets: Problem[] = [];
  const results = file.cases.flatMap((each, index): WardCaseResult[] => {
    const path = ['cases', index];
    if (seen.has(each.case)) report('case_twice', [...path, 'case'], { name: each.case });
    seen.add(each.case);
    const before = findings.length;
    const { series, problems: inSet } = readStory(each, path, document, ward.vocabulary, report);
    inSets.push(...inSet);
    const expected = readExpected(each, [...path, 'expect'], ward, report);
    if (!series || findings.length > before) return [];
    const read: WardCase = {
      name: each.case,
      series,
      expect: each.expect,
      ...expected,
      path: [...path, 'expect'],
    };
    const outcome = wardOutcomeOf(ward, series);
    return [{ name: read.name, series, outcome, differences: differencesOfWard(ward, read, outcome) }];
  });
  const found = [...problems, ...findingsToProblems(document, findings), ...inSets];
  return {
    results,
    problems: found.toSorted((left, right) => left.line - right.line || left.column - right.column),
  };
}

function readExpected(
  { source, expect }: File.WardCase,
  path: Path,
  ward: Ward,
  report: Report,
): Pick<WardCase, 'level' | 'protocols'> {
  if (source !== undefined && !ward.sources.has(source)) {
    const nearMiss = nearestOf(source, ward.sources.keys());
    report('unknown_source', [...path.slice(0, -1), 'source'], { name: source }, { nearMiss });
  }
  const levels = ward.ladder.levels.map(({ name }) => name);
  const { in_force: inForce } = expect;
  if (inForce !== undefined && inForce !== 'none' && !levels.includes(inForce))
    report(
      'unknown_level',
      [...path, 'in_force'],
      { name: inForce, levels },
      { nearMiss: nearestOf(inForce, levels) },
    );
  const protocols = new Map(ward.members.map(({ protocol }) => [protocol.name, protocol]));
  const read = Object.entries(expect.protocols ?? {}).flatMap(([name, each]): [string, Expectation][] => {
    const protocol = protocols.get(name);
    const at = [...path, 'protocols', name];
    if (protocol) return [[name, readExpectation(each, at, protocol, report)]];
    report(
      'ward_protocol_not_found',
      at,
      { name },
      { part: 'key', nearMiss: nearestOf(name, protocols.keys()) },
    );
    return [];
  });
  return {
    level: readExpectedLevel(expect.level ?? {}, [...path, 'level'], ward.ladder, report),
    protocols: new Map(read),
  };
}

function differencesOfWard(
  ward: Ward,
  { series, expect, level, protocols, path }: WardCase,
  found: File.WardOutcome,
): Difference[] {
  const yesOrNo = (yes: boolean | null | undefined): string | null =>
    yes === null || yes === undefined ? null : yes ? 'yes' : 'no';
  const told = found.response?.tell.map(({ who }) => who).join(', ') ?? 'nobody';
  return [
    ...compare('the level at least', level.atLeast, found.level?.at_least ?? 'none', [
      ...path,
      'level',
      'at_least',
    ]),
    ...compare('the level that it could be', level.couldBe, found.level?.could_be ?? 'none', [
      ...path,
      'level',
      'could_be',
    ]),
    ...compare('settled', yesOrNo(level.settled), yesOrNo(found.level?.settled ?? false) ?? 'no', [
      ...path,
      'level',
      'settled',
    ]),
    ...compare('who is told', expect.tell?.join(', ') ?? null, told, [...path, 'tell']),
    ...compare('the plan', expect.plan ?? null, found.plan?.plan ?? 'none', [...path, 'plan']),
    ...compare('the level in force', expect.in_force ?? null, found.in_force?.level ?? 'none', [
      ...path,
      'in_force',
    ]),
    ...compare(
      'whether to step down may be agreed',
      yesOrNo(yesNo(expect.may_step_down)),
      found.in_force?.may_step_down ? 'yes' : 'no',
      [...path, 'may_step_down'],
    ),
    ...ward.members.flatMap((compiled) => {
      const { name } = compiled.protocol;
      const expected = protocols.get(name);
      return expected ? differencesOf(compiled, series, expected, [...path, 'protocols', name]) : [];
    }),
  ];
}
