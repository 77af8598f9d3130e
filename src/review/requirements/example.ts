import type { LevelAnswer } from '../../outcome/answers.ts';
import type { Requirement } from '../../protocol/requirements/requirement.ts';
import { givenLines } from '../examples/case-in-yaml.ts';
import { textToYaml } from '../examples/node-to-yaml.ts';
import type { Evaluated, Reads } from './asked.ts';
import type { Example } from './proof.ts';
import type { Given } from './witness.ts';

/** A set, or a pair, with what is said of it, as cases and in a sentence. */
export function exampleOf(
  requirement: Requirement,
  reads: Reads,
  givens: readonly Given[],
  found: readonly Evaluated[],
): Example {
  const names = givens.length === 1 ? [''] : sidesOf(requirement);
  const cases = givens.map((given, index) =>
    caseInYaml(
      `To be reviewed: ${requirement.name}${names[index] ?? ''}`,
      given,
      found[index] as Evaluated,
      reads,
    ),
  );
  return { yaml: cases.join(''), says: sentence(requirement, reads, found) };
}

const sidesOf = ({ asks }: Requirement): readonly string[] =>
  asks.kind === 'nothing_hides'
    ? [', everything given', ', something blank']
    : asks.kind === 'fault_never_lowers'
      ? [', without a fault', ', with one']
      : [', before', ', getting worse'];

function caseInYaml(name: string, given: Given, found: Evaluated, { ladder, kind }: Reads): string {
  const [only] = found.each;
  const level = found.level
    ? [
        `level: ${levelWords(
          found.level,
          ladder.levels.map((each) => each.name),
        )}`,
      ]
    : [];
  const applies = found.level || kind === 'ward' || !only ? [] : [`applies: ${only.applies}`];
  const expect = [...level, ...applies];
  return [
    `  - case: ${textToYaml(name)}`,
    ...givenLines({ key: isSeries(given) ? 'series' : 'given', node: given }),
    '    expect:',
    ...expect.map((line) => `      ${line}`),
    '',
  ].join('\n');
}

const isSeries = ({ entries }: Given): boolean => entries.some(({ key }) => key === 'sets');

function levelWords({ atLeast, couldBe, settled }: LevelAnswer, levels: readonly string[]): string {
  const name = (index: number | null): string => (index === null ? 'none' : (levels[index] ?? 'none'));
  return `{ at_least: ${name(atLeast)}, could_be: ${name(couldBe)}, settled: ${settled ? 'yes' : 'no'} }`;
}

/** What breaks it, in words. */
function sentence({ asks }: Requirement, { ladder }: Reads, found: readonly Evaluated[]): string {
  const title = (index: number | null | undefined): string =>
    index === null || index === undefined ? 'none' : `"${ladder.levels[index]?.title ?? ''}"`;
  const [first, second] = found.map(({ level }) => level);
  const at = title(first?.atLeast);
  switch (asks.kind) {
    case 'level_at_least':
      return `The level of this set is ${at}; at least ${title(asks.level)} is required.`;
    case 'level_at_most':
      return `The level of this set is ${at} and could be ${title(first?.couldBe)}; at most ${title(asks.level)} is required.`;
    case 'rule_met':
      return `The rule "${asks.rule}" is not met in this set.`;
    case 'never_together':
      return `These rules are all met in this set: ${asks.rules.join(', ')}.`;
    case 'no_level':
      return `This set gets a level: ${at}.`;
    case 'always_some_advice':
      return 'No rule that says, asks or does something is met in this set.';
    case 'nothing_hides':
      return `With everything given the level is ${at}; with something blank it could be ${title(second?.couldBe)} and no more.`;
    case 'fault_never_lowers':
      return `Without a fault the level is ${at}; with one it is ${title(second?.atLeast)}.`;
    case 'getting_worse_never_lowers':
      return `One step worse, the level falls from ${at} to ${title(second?.atLeast)}.`;
  }
}
