import { answersOf, type LevelAnswer, type State } from '../outcome/answers.ts';
import type { Compiled } from '../outcome/compile.ts';
import { gapsOf } from '../outcome/gaps.ts';
import type { Path } from '../problems/place.ts';
import type { Ladder } from '../protocol/protocol.ts';
import type { Series } from '../series/series.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Case, Expectation } from './case.ts';
import type { Asked, CaseResult, Difference } from './case-result.ts';
import { truthDifferences } from './truth-differences.ts';
import { measureDifference } from './measure-difference.ts';

/** Asks a protocol about a case, and compares. */
export function runCase(compiled: Compiled, each: Case): CaseResult {
  return compareCase(askCase(compiled, each), each);
}

/** Puts a case to its protocol. */
export const askCase = (compiled: Compiled, { series, path }: Case): Asked =>
  ask(compiled, series, [...path, 'expect']);

/** How a case that was asked differs from what it expects. */
export const compareCase = (asked: Asked, { name, expect }: Case): CaseResult => ({
  name,
  differences: differencesIn(asked, expect),
});

function ask(compiled: Compiled, series: Series, path: Path): Asked {
  const bounds = seriesToBounds(compiled.protocol, series);
  return { compiled, bounds, answers: answersOf(compiled, bounds), path };
}

/** What one protocol says otherwise of a series than is expected at a path. */
export function differencesOf(
  compiled: Compiled,
  series: Series,
  expect: Expectation,
  path: Path,
): Difference[] {
  return differencesIn(ask(compiled, series, path), expect);
}

function differencesIn(asked: Asked, expect: Expectation): Difference[] {
  const { compiled, path } = asked;
  return [
    ...levelDifferences(expect.level, asked.answers.level, compiled.protocol.ladder, path),
    ...compare('whether it applies', expect.applies, asked.answers.applies, [...path, 'applies']),
    ...stateDifferences(expect, asked),
    ...listDifferences(expect, asked),
    ...truthDifferences(expect, asked),
    ...[...expect.measures].flatMap(([measure, value]) => measureDifference(measure, value, asked)),
  ];
}

/** What of a level is otherwise than expected. */
function levelDifferences(
  expected: Expectation['level'],
  found: LevelAnswer | null,
  { levels }: Ladder,
  path: Path,
): Difference[] {
  const name = (index: number | null | undefined): string =>
    index === null || index === undefined ? 'none' : (levels[index]?.name ?? 'none');
  const yesNo = (yes: boolean): string => (yes ? 'yes' : 'no');
  const settled = expected.settled === null ? null : yesNo(expected.settled);
  const at = (key: string): Path => [...path, 'level', key];
  return [
    compare('the level at least', expected.atLeast, name(found?.atLeast), at('at_least')),
    compare('the level that it could be', expected.couldBe, name(found?.couldBe), at('could_be')),
    compare('settled', settled, yesNo(found?.settled ?? false), at('settled')),
  ].flat();
}

export function compare(what: string, expected: string | null, found: string, path: Path): Difference[] {
  return expected === null || expected === found ? [] : [{ what, expected, found, path }];
}

const stateWords: Readonly<Record<State, string>> = {
  met: 'met',
  not_met: 'not met',
  undecided: 'undecided',
};

function stateDifferences(expect: Expectation, { answers, path }: Asked): Difference[] {
  const states = new Map(answers.rules.map(({ rule, state }) => [rule.name, state]));
  const named = (rules: readonly string[], state: State): Difference[] =>
    rules.flatMap((rule, index) => {
      const found = states.get(rule);
      return compare(`the rule "${rule}"`, stateWords[state], found ? stateWords[found] : 'none', [
        ...path,
        state,
        index,
      ]);
    });
  const also = answers.rules.filter(({ rule, state }) => state === 'met' && !expect.met.includes(rule.name));
  return [
    ...named(expect.met, 'met'),
    ...named(expect.notMet, 'not_met'),
    ...named(expect.undecided, 'undecided'),
    ...(expect.nothingElseMet && also.length > 0
      ? [
          {
            what: 'that nothing else is met',
            expected: 'none',
            found: also.map(({ rule }) => rule.name).join(', '),
            path: [...path, 'nothing_else_met'],
          },
        ]
      : []),
  ];
}

/** Outside its scope a protocol asks for nothing. */
const nothingToTake = { takeFirst: [], askFirst: [] };

function listDifferences(expect: Expectation, asked: Asked): Difference[] {
  const { compiled, bounds, answers, path } = asked;
  const explained = answers.rules.filter((each) => each.explained).map(({ rule }) => rule.name);
  const notReliable = answers.rules.filter((each) => each.notReliable).map(({ rule }) => rule.name);
  const faults = bounds.facts.faults.map(({ fault }) => fault);
  const observed = (remarks: readonly { readonly observation: string | null }[]): string[] =>
    remarks.flatMap(({ observation }) => observation ?? []);
  const differences = [
    missingFrom(expect.explained, explained, 'explained', [...path, 'explained']),
    missingFrom(expect.faults, faults, 'a fault that is there', [...path, 'faults']),
    missingFrom(expect.notReliable, notReliable, 'not reliable', [...path, 'not_reliable']),
    missingFrom(expect.refused, observed(bounds.facts.refused), 'refused', [...path, 'refused']),
    missingFrom(expect.questioned, observed(bounds.facts.questioned), 'questioned', [...path, 'questioned']),
  ].flat();
  if (expect.takeFirst.length === 0 && expect.askFirst.length === 0) return differences;
  const { takeFirst, askFirst } = answers.level ? gapsOf({ compiled, bounds, answers }) : nothingToTake;
  const begins = expect.takeFirst.join(', ');
  const found = takeFirst.slice(0, expect.takeFirst.length).join(', ');
  return [
    ...differences,
    ...missingFrom(expect.askFirst, askFirst, 'to be asked first', [...path, 'ask_first']),
    ...compare('what to take first', begins, found, [...path, 'take_first']),
  ];
}

function missingFrom(
  expected: readonly string[],
  found: readonly string[],
  what: string,
  path: Path,
): Difference[] {
  return expected.flatMap((name, index) =>
    found.includes(name)
      ? []
      : [{ what: `"${name}" ${what}`, expected: 'yes', found: 'no', path: [...path, index] }],
  );
}
